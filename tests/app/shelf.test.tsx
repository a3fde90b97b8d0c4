// Long because the screens of the shelf share their set-up.
// The shelf: found, kept, chosen and packed; and the trip that packed from it, which is offered what has changed.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { act } from 'preact/test-utils'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { itemFacts } from '../../src/components/item-words'
import type { DraftItem } from '../../src/plan'
import { addThing, type Shelf, setThings, type ThingFacts } from '../../src/plan/shelf'
import { GearScreen } from '../../src/screens/gear'
import { ShelfScreen } from '../../src/screens/shelf'
import { chosen, entriesOf, found, ordered, view } from '../../src/screens/shelf/view'
import { actions, library, openTrip, shelf } from '../../src/store'

const gear = () => openTrip.value!.draft.gear
const things = () => shelf.value.things
const thing = (name: string) => things().find(({ item }) => item.name === name)!
const names = () =>
  [...document.querySelectorAll('.rows .row > .summary .name')].map(name => name.textContent)
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))
const tick = (name: string | RegExp) => fireEvent.click(screen.getByRole('checkbox', { name }))
const type = (label: string | RegExp, text: string) =>
  fireEvent.input(screen.getByLabelText(label), { target: { value: text } })

const unfold = (details: HTMLDetailsElement) =>
  act(() => {
    details.open = true
    details.dispatchEvent(new Event('toggle'))
  })

const tripWith = (...items: DraftItem[]) =>
  act(
    () =>
      void actions.createTrip({
        name: 'Ford walk',
        carrier: {},
        trip: { stops: [] },
        gear: items,
        packs: [],
      }),
  )

const put = (...facts: ThingFacts[]) =>
  act(() =>
    actions.editShelf('Set up', before =>
      facts.reduce<Shelf>(
        (made, item, i) => addThing(made, { newId: () => `t${i}`, now: 1 }, { with: item }),
        {
          ...before,
          things: [],
          bases: [],
          typed: {},
        },
      ),
    ),
  )

function openShelf(detail: string | null = null) {
  act(() => actions.setPlace({ screen: 'shelf', detail, scrollY: 0 }))
  return render(<ShelfScreen onClose={() => undefined} />)
}

const MUG: ThingFacts = { name: 'Mug', group: 'Kitchen', massKg: 0.06, litres: 0.4 }
const POT: ThingFacts = { name: 'Pot', group: 'Kitchen', massKg: 0.13, litres: 0.8 }
const TENT: ThingFacts = { name: 'Tent', group: 'Shelter', massKg: 1.5, litres: 6, stow: 'strapped-on' }

beforeEach(() => {
  actions.setSystem('metric')
  view.value = { sought: '', order: 'group', withRetired: false }
  chosen.value = new Set()
  tripWith()
  put(MUG, TENT, POT)
})
afterEach(cleanup)

describe('the list', () => {
  test('is by group, each with mass, litres, place and how well it is known', () => {
    act(() =>
      actions.editShelf('Set', s =>
        setThings(s, ['t1'], { note: 'Seams sealed', weighedOn: '2026-03-04' }, 2),
      ),
    )
    openShelf()
    expect(screen.getAllByRole('heading', { level: 3 }).map(h => h.textContent)).toEqual([
      'Kitchen',
      'Shelter',
    ])
    expect(names()).toEqual(['Mug', 'Pot', 'Tent'])
    const day = new Date(2026, 2, 4).toLocaleDateString(undefined, { dateStyle: 'medium' })
    expect(screen.getByText(new RegExp(`1\\.50.kg, 6\\.0.L, strapped on, weighed ${day}`))).toBeTruthy()
    expect(screen.getByText('Seams sealed')).toBeTruthy()
  })

  test('is searched by every word in name, group and note, whatever the accents', () => {
    act(() => actions.editShelf('Set', s => setThings(s, ['t0'], { note: 'Für Tee' }, 2)))
    openShelf()
    const search = /Search/
    type(search, 'KITCH fur')
    expect(names()).toEqual(['Mug'])
    expect(screen.getByText('1 of 3 items')).toBeTruthy()
    type(search, 'nothing like it')
    expect(screen.getByText(/^No item has all of these words/)).toBeTruthy()
    press('Clear')
    expect(names()).toHaveLength(3)
  })

  test('adds what was sought and not found, by that name', () => {
    openShelf()
    type(/Search/, 'Lantern')
    press('Add “Lantern”')
    expect(thing('Lantern')).toBeTruthy()
    expect(library.value.place.detail).toBe(`thing/${thing('Lantern').id}`)
  })

  test('shows retired things only when asked', () => {
    act(() => actions.editShelf('Set', s => setThings(s, ['t1'], { retired: true }, 2)))
    openShelf()
    expect(names()).toEqual(['Mug', 'Pot'])
    press('Sort')
    tick('Show 1 retired')
    expect(names()).toEqual(['Mug', 'Pot', 'Tent'])
    expect(screen.getByText('Retired')).toBeTruthy()
  })

  test.each([
    ['name', ['Mug', 'Pot', 'Tent']],
    ['mass', ['Tent', 'Pot', 'Mug']],
    ['litres', ['Tent', 'Pot', 'Mug']],
    ['group', ['Mug', 'Pot', 'Tent']],
  ] as const)('is in order by %s', (order, wanted) => {
    expect(ordered(things(), order).map(({ item }) => item.name)).toEqual(wanted)
  })

  test('has longest not weighed those first that never were', () => {
    const weighed = setThings(shelf.value, ['t0'], { weighedOn: '2026-01-01' }, 2)
    expect(ordered(weighed.things, 'weighed').at(-1)!.item.name).toBe('Mug')
  })

  test('has no headings where nothing has a group', () => {
    put({ name: 'A' }, { name: 'B' })
    expect(
      entriesOf(found(things(), view.value), 'group').every(({ heading }) => heading === undefined),
    ).toBe(true)
  })

  test('says of several that mass and litres are of each', () => {
    const socks = { name: 'Socks', count: 2, massKg: 0.08, litres: 0.3 }
    const said = (item: typeof socks) => itemFacts(item, 'metric').join(', ').replace(/\s/g, ' ')
    expect(said(socks)).toBe('80 g each, 0.3 L each')
    expect(said({ ...socks, count: 1, litres: 0 })).toBe('80 g')
  })

  test('says in how many trips a thing is used', () => {
    tripWith({ id: 'a', name: 'Mug', shelf: { id: 't0', at: 5 } })
    act(() => void actions.duplicateTrip(openTrip.value!.id))
    openShelf()
    expect(screen.getByText('In this trip and 1 other')).toBeTruthy()
  })
})

describe('a thing', () => {
  test('is edited with the fields of an item, in one step for what is typed on', () => {
    openShelf('thing/t0')
    type(/^Mass/, '7')
    type(/^Mass/, '75')
    expect(thing('Mug').item.massKg).toBeCloseTo(0.075)
    expect(thing('Mug').changed.massKg).toBeGreaterThan(1)
    type('Note', 'Dented')
    type('Note', 'Dented rim')
    expect(thing('Mug').note).toBe('Dented rim')
    act(() => actions.undo())
    expect(thing('Mug').note).toBeUndefined()
    act(() => actions.undo())
    expect(thing('Mug').item.massKg).toBe(0.06)
  })

  test('keeps text that cannot be read, and says so', () => {
    openShelf('thing/t0')
    const mass = screen.getByLabelText(/^Mass/)
    fireEvent.focus(mass)
    type(/^Mass/, '7x')
    fireEvent.blur(mass)
    expect(shelf.value.typed['t0/massKg']).toBe('7x')
    expect(screen.getByText(/"7x"/)).toBeTruthy()
  })

  test('is weighed today with one tap', () => {
    openShelf('thing/t0')
    press('Today')
    expect(thing('Mug').weighedOn).toMatch(/^\d{4}-\d\d-\d\d$/)
  })

  test('may not ride inside another, which only a trip knows', () => {
    put({ name: 'Box', holdsLitres: 8 }, MUG)
    openShelf('thing/t1')
    expect(screen.queryByLabelText('Carried inside')).toBeNull()
  })

  test('is moved by its grip with the arrow keys, also into the next group', () => {
    openShelf()
    fireEvent.keyDown(screen.getByRole('button', { name: 'Move Mug' }), { key: 'ArrowDown' })
    expect(names()).toEqual(['Pot', 'Mug', 'Tent'])
    fireEvent.keyDown(screen.getByRole('button', { name: 'Move Mug' }), { key: 'ArrowDown' })
    expect(thing('Mug').item.group).toBe('Shelter')
    expect(names()).toEqual(['Pot', 'Mug', 'Tent'])
    act(() => actions.undo())
    expect(thing('Mug').item.group).toBe('Kitchen')
  })

  test('stays where it is while it is edited, and goes where it belongs once it is closed', () => {
    const drawn = openShelf('thing/t0')
    type('Group', 'S')
    type('Group', 'Shelter')
    expect(names()).toEqual(['Mug', 'Pot', 'Tent'])
    expect(screen.getAllByRole('heading', { level: 3 }).map(h => h.textContent)).toEqual([
      'Kitchen',
      'Shelter',
    ])
    act(() => actions.setPlace({ screen: 'shelf', detail: null, scrollY: 0 }))
    drawn.rerender(<ShelfScreen onClose={() => undefined} />)
    expect(names()).toEqual(['Mug', 'Tent', 'Pot'])
  })

  test('has no grip where the order is not its own', () => {
    openShelf()
    type(/Search/, 'mug')
    expect(screen.queryByRole('button', { name: 'Move Mug' })).toBeNull()
  })

  test('is duplicated and deleted, and comes back by undo', () => {
    openShelf('thing/t0')
    press('Duplicate Mug')
    expect(names()).toEqual(['Mug', 'Mug (copy)', 'Pot', 'Tent'])
    press('Delete Mug')
    expect(names()).toEqual(['Mug (copy)', 'Pot', 'Tent'])
    act(() => actions.undo())
    expect(names()).toContain('Mug')
  })
})

describe('several things', () => {
  test('are chosen, also over several searches', () => {
    openShelf('choose')
    type(/Search/, 'mug')
    press('Choose all of these')
    type(/Search/, 'tent')
    tick(/^Tent/)
    expect([...chosen.value]).toEqual(['t0', 't1'])
    type(/Search/, '')
    press('Choose all of these')
    press('Choose none of these')
    expect(chosen.value.size).toBe(0)
  })

  test.each([
    [
      'Pocket',
      () =>
        things()
          .slice(0, 2)
          .map(({ item }) => item.stow),
      ['outside-pocket', 'outside-pocket'],
    ],
    ['Retire', () => things().map(({ retired }) => retired), [true, true, undefined]],
    ['Delete', () => things().map(({ id }) => id), ['t2']],
  ])('are changed by %s in one step', (button, read, wanted) => {
    openShelf('choose')
    tick(/^Mug/)
    tick(/^Tent/)
    press('Change')
    const before = shelf.value.things
    press(button)
    expect(read()).toEqual(wanted)
    expect(chosen.value.size).toBe(0)
    act(() => actions.undo())
    expect(shelf.value.things).toEqual(before)
  })

  test('are put in a group', () => {
    openShelf('choose')
    tick(/^Mug/)
    tick(/^Tent/)
    press('Change')
    type('Group', 'Hut trips')
    press('Set the group')
    expect(things().map(({ item }) => item.group)).toEqual(['Hut trips', 'Hut trips', 'Kitchen'])
    expect(screen.getByText('2 items put in Hut trips.')).toBeTruthy()
  })

  test.each([
    ['Enter', () => fireEvent.keyDown(screen.getByLabelText('Group'), { key: 'Enter' }), 1],
    ['another action', () => press('Pocket'), 2],
    ['a kit made of them', () => press('Make the kit'), 2],
  ])('are put in the group that is typed by %s', (_by, go, steps) => {
    openShelf('choose')
    tick(/^Mug/)
    tick(/^Tent/)
    press('Change')
    const before = things()
    type('Group', 'Hut trips')
    go()
    expect(things().map(({ item }) => item.group)).toEqual(['Hut trips', 'Hut trips', 'Kitchen'])
    expect(document.activeElement?.textContent).toMatch(/^2 items put in Hut trips\./)
    for (let step = 0; step < steps; step++) act(() => actions.undo())
    expect(things()).toEqual(before)
  })

  test('have the focus go with what is done to them', () => {
    openShelf('choose')
    tick(/^Mug/)
    press('Change')
    expect(document.activeElement?.textContent).toBe('Change 1 item')
    press('Make the kit')
    expect(document.activeElement?.textContent).toBe('Kit 1 is a kit now.')
  })

  test('are packed with a count and a place of this trip, and stay linked', () => {
    openShelf('choose')
    tick(/^Mug/)
    tick(/^Tent/)
    press('Pack')
    type('How many of Mug', '2')
    fireEvent.change(screen.getByLabelText('Where Tent rides'), { target: { value: 'main-body' } })
    press('Pack 2 items')
    expect(gear().map(({ name, count, stow, shelf }) => [name, count, stow, shelf?.id])).toEqual([
      ['Mug', 2, 'main-body', 't0'],
      ['Tent', 1, 'main-body', 't1'],
    ])
    expect(screen.getByText('2 items packed into Ford walk.')).toBeTruthy()
    expect(thing('Tent').item.stow).toBe('strapped-on')
  })

  test('wait while a count cannot be read', () => {
    openShelf('choose')
    tick(/^Mug/)
    press('Pack')
    type('How many of Mug', 'two')
    expect(screen.getByText(/write a whole number from 0 to 1000/)).toBeTruthy()
    expect((screen.getByRole('button', { name: 'Pack 1 item' }) as HTMLButtonElement).disabled).toBe(true)
  })

  test('that are in the trip already are said so, and not packed twice unasked', () => {
    tripWith({ id: 'a', name: 'Mug', shelf: { id: 't0', at: 5 } })
    openShelf('choose')
    tick(/^Mug/)
    tick(/^Pot/)
    press('Pack')
    expect((screen.getByRole('checkbox', { name: /Mug/ }) as HTMLInputElement).checked).toBe(false)
    expect(screen.getByText('in this trip already')).toBeTruthy()
    press('Pack 1 item')
    expect(gear().map(({ name }) => name)).toEqual(['Mug', 'Pot'])
  })
})

describe('bases', () => {
  test('are made of chosen things, named, changed and packed whole', () => {
    openShelf('choose')
    tick(/^Mug/)
    tick(/^Tent/)
    press('Change')
    type('Its name', 'Three-season kit')
    press('Make the kit')
    fireEvent.click(screen.getByRole('radio', { name: '1 kit' }))
    press(/^Three-season kit/)
    type('Name', 'Summer base')
    type('How many of Mug', '3')
    expect(shelf.value.bases[0]).toMatchObject({
      name: 'Summer base',
      lines: [{ thing: 't0', count: 3 }, { thing: 't1' }],
    })
    press('Pack into this trip: Summer base')
    press('Pack 2 items')
    expect(gear().map(({ name, count }) => [name, count])).toEqual([
      ['Mug', 3],
      ['Tent', 1],
    ])
  })

  test('are made of the trip, whose gear goes on the shelf in the same step', () => {
    tripWith({ id: 'a', name: 'Mug', count: 2 }, { id: 'b', name: 'Lamp' })
    openShelf('bases')
    press('Save this trip’s gear as a kit')
    expect(shelf.value.bases[0]).toMatchObject({ name: 'Ford walk', lines: [{ thing: 't0', count: 2 }, {}] })
    expect(thing('Lamp')).toBeTruthy()
    act(() => actions.undo())
    expect(shelf.value.bases).toEqual([])
    expect(things()).toHaveLength(3)
    expect(gear().every(item => item.shelf === undefined)).toBe(true)
  })
})

describe('the trip’s gear', () => {
  const noDetail = { detail: null, onDetail: () => undefined }
  const linked = (over: Partial<DraftItem> = {}): DraftItem => ({
    ...MUG,
    id: 'a',
    shelf: { id: 't0', at: 5 },
    ...over,
  })
  const changeMug = () =>
    act(() =>
      actions.editShelf('Weigh', s => setThings(s, ['t0', 't2'], { item: { massKg: 0.07 } }, Date.now())),
    )

  test('is put on the shelf all at once, linked by name where a thing is there', () => {
    tripWith({ id: 'a', name: 'mug', massKg: 0.05 }, { id: 'b', name: 'Lamp' })
    render(<GearScreen {...noDetail} />)
    press('Put all on the shelf')
    expect(things()).toHaveLength(4)
    expect(gear()[0]!.shelf?.id).toBe('t0')
    expect(
      screen.getByText('1 item put on the shelf; 1 were there by name already and are linked.'),
    ).toBeTruthy()
    expect(screen.queryByRole('button', { name: /Put .* on the shelf/ })).toBeNull()
  })

  test('is offered what changed on the shelf, from and to, and nothing happens until it is taken', () => {
    tripWith(linked(), { ...POT, id: 'b', shelf: { id: 't2', at: 5 } })
    render(<GearScreen {...noDetail} />)
    expect(screen.queryByText(/changed on the shelf/)).toBeNull()
    changeMug()
    expect(gear()[0]!.massKg).toBe(0.06)
    const details = screen.getByText('2 items changed on the shelf').closest('details')!
    unfold(details)
    expect(within(details).getByText(/mass: from 60.g to/)).toBeTruthy()
    press('Take over Mug')
    expect(gear()[0]!.massKg).toBe(0.07)
    expect(screen.getByText('Took over Mug.')).toBeTruthy()
    press('Keep as it is: Pot')
    expect(gear()[1]!.massKg).toBe(0.13)
    expect(screen.queryByText(/changed on the shelf/)).toBeNull()
    act(() => actions.undo())
    expect(screen.getByText('1 item changed on the shelf')).toBeTruthy()
  })

  test('takes all that is offered in one step', () => {
    tripWith(linked(), { ...POT, id: 'b', shelf: { id: 't2', at: 5 } })
    changeMug()
    render(<GearScreen {...noDetail} />)
    const details = screen.getByText('2 items changed on the shelf').closest('details')!
    unfold(details)
    press('Take over all 2')
    expect(gear().map(({ massKg }) => massKg)).toEqual([0.07, 0.07])
    act(() => actions.undo())
    expect(gear().map(({ massKg }) => massKg)).toEqual([0.06, 0.13])
  })

  test('says in words where an item differs from the shelf, and either can follow the other', () => {
    tripWith(linked({ massKg: 0.08, stow: 'outside-pocket' }))
    render(<GearScreen detail="gear/a" onDetail={() => undefined} />)
    const list = screen.getByText(/Only in this trip/).parentElement!
    expect(list.textContent).toMatch(/mass: 80.g \(on the shelf: 60.g\)/)
    expect(list.textContent).toContain('place: pocket (on the shelf: main body)')
    press('Change the shelf too')
    expect(thing('Mug').item).toMatchObject({ massKg: 0.08, stow: 'outside-pocket' })
    expect(screen.getByText(/the same here as there/)).toBeTruthy()
    act(() => actions.undo())
    press('Update from the shelf')
    expect(gear()[0]).toMatchObject({ massKg: 0.06 })
    expect(gear()[0]!.stow).toBeUndefined()
  })

  test('links an item to the thing of its name, or makes it another', () => {
    tripWith({ id: 'a', name: 'Mug', massKg: 0.05 })
    render(<GearScreen detail="gear/a" onDetail={() => undefined} />)
    press('Put on the shelf as another')
    expect(things()).toHaveLength(4)
    act(() => actions.undo())
    press('It is Mug of the shelf')
    expect(things()).toHaveLength(3)
    expect(gear()[0]!.shelf?.id).toBe('t0')
    expect(gear()[0]!.massKg).toBe(0.05)
  })

  test('is moved by grip and by button alike, into the group it comes under', () => {
    tripWith(
      { id: 'a', name: 'Mug', group: 'Kitchen' },
      { id: 'b', name: 'Tent', group: 'Shelter' },
      { id: 'c', name: 'Pegs', group: 'Shelter' },
    )
    render(<GearScreen detail="gear/a" onDetail={() => undefined} />)
    press('Move down Mug')
    expect(gear().map(({ name, group }) => [name, group])).toEqual([
      ['Mug', 'Shelter'],
      ['Tent', 'Shelter'],
      ['Pegs', 'Shelter'],
    ])
    fireEvent.keyDown(screen.getByRole('button', { name: 'Move Mug' }), { key: 'End' })
    expect(gear().map(({ name }) => name)).toEqual(['Tent', 'Pegs', 'Mug'])
    expect(screen.getByRole('button', { name: 'Move Mug' }).getAttribute('aria-describedby')).toBeTruthy()
  })
})
