import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { addItem, type Plan, removeItem, setField, settle } from '../../src/plan'
import { addBase, kitOnTrip, linesFrom, putOnShelf } from '../../src/plan/shelf'
import { reckon } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { SideBySideScreen } from '../../src/screens/side-by-side'
import { actions, newId, openTrip, shelf, tripList } from '../../src/store'
import { demoDraft, plain } from './compare-packs'

const rows = () =>
  [...document.querySelectorAll('tbody tr')].map(row =>
    [...row.children].map(cell => plain(cell.textContent ?? '')),
  )
const row = (name: string) => rows().find(([first]) => first === name)

beforeEach(() => {
  for (const { id } of tripList.value) actions.removeTrip(id)
  const draft = demoDraft()
  const [tarp, , ...rest] = draft.gear
  actions.createTrip({ ...draft, name: 'Ridge' })
  actions.createTrip({
    ...setField({ ...draft, gear: [{ ...tarp!, massKg: 1.79 }, ...rest] }, 'carrier/massKg', 60),
    name: 'Moor',
  })
})
afterEach(cleanup)

test('two trips are told by their figures, their answers, and what is in one list alone or otherwise in both', () => {
  render(<SideBySideScreen />)
  fireEvent.change(screen.getByLabelText('This trip'), { target: { value: tripList.value[0]!.id } })
  expect(row('Base weight')).toEqual(['Base weight', '6.5 kg', '7.4 kg', '+0.9 kg'])
  expect(row('Worn')?.at(-1)).toBe('same')
  expect(screen.getByText(/^\d+ set-ups? with the same answer for both\.$/)).toBeTruthy()
  expect(screen.getByText('Only in Ridge').closest('section')?.textContent).toContain('Pegs and lines')
  expect(screen.queryByText('Only in Moor')).toBeNull()
  expect(plain(screen.getByText('Changed').closest('section')?.textContent ?? '')).toMatch(
    /Ridge tarp with inner: mass 790 g → 1\.79 kg/,
  )
})

test('no chance is told where litres are missing, and no figures where nothing is taken', () => {
  const draft = demoDraft()
  const [first] = tripList.value
  const { unmount } = render(<SideBySideScreen />)
  expect(row('Enough in 9 of 10 cases')).toBeTruthy()
  unmount()
  actions.createTrip({
    ...draft,
    name: 'Fen',
    gear: [...draft.gear, { id: 'bag', name: 'Bag of bits', massKg: 0.4 }],
  })
  actions.createTrip({ ...draft, name: 'Bare', gear: [] })
  const idOf = (name: string) => tripList.value.find(trip => trip.draft.name === name)!.id
  render(<SideBySideScreen />)
  fireEvent.change(screen.getByLabelText('This trip'), { target: { value: first!.id } })
  fireEvent.change(screen.getByLabelText('and that one'), { target: { value: `trip/${idOf('Fen')}` } })
  expect(row('Main body')).toBeTruthy()
  expect(row('Enough in 9 of 10 cases')).toBeUndefined()
  expect(
    screen.getByText((_, node) => node?.textContent === 'Fen: 1 item without litres is not in it.'),
  ).toBeTruthy()
  fireEvent.change(screen.getByLabelText('and that one'), { target: { value: `trip/${idOf('Bare')}` } })
  expect(rows()).toEqual([])
  expect(screen.getByText((_, node) => node?.textContent === 'Bare: no gear yet.')).toBeTruthy()
})

test('one trip alone, never changed, asks for something to compare it with', () => {
  act(() => actions.removeTrip(tripList.value[1]!.id))
  render(<SideBySideScreen />)
  expect(screen.getByText(/^Nothing to compare it with yet/)).toBeTruthy()
})

const options = (group: string) =>
  [...document.querySelectorAll(`optgroup[label="${group}"] option`)].map(it => it.textContent)
const against = (value: RegExp) => {
  const select = screen.getByLabelText<HTMLSelectElement>('and that one')
  const option = [...select.options].find(it => value.test(it.text))!
  fireEvent.change(select, { target: { value: option.value } })
}

test('a trip and a kit: the kit is told as if it were all that the trip takes', () => {
  const both = { draft: tripList.value[1]!.draft, shelf: shelf.value }
  const made = putOnShelf(
    both,
    both.draft.gear.slice(0, 3).map(({ id }) => id),
    { newId, now: 1 },
  )
  actions.editBoth('Put on the shelf', () => made)
  actions.editShelf('Make a kit', it =>
    addBase(it, newId, { name: 'Summer kit', lines: linesFrom(made.draft, it).toReversed() }),
  )
  render(<SideBySideScreen />)
  expect(options('Kits')).toEqual(['Summer kit'])
  against(/^Summer kit/)
  const names = made.draft.gear.map(({ name }) => name!)
  const list = screen.getByText('Only in Moor').closest('section')!
  expect([...list.querySelectorAll('li')].map(it => it.textContent)).toEqual(names.slice(3))
  expect(screen.queryByText('Only in Summer kit')).toBeNull()
  expect(screen.queryByText('Changed')).toBeNull()
  const draft = kitOnTrip(openTrip.value!.draft, shelf.value, shelf.value.bases[0]!)
  const alone = settle({ ...openTrip.value!.draft, gear: made.draft.gear.slice(0, 3) }).plan
  const kit = settle(draft).plan
  expect(needOf(kit).bodyLitres).toBeCloseTo(needOf(alone).bodyLitres, 9)
  expect(row('Main body')![2]).toBe(plain(formatsIn('metric').litres(needOf(alone).bodyLitres)))
})

test('a trip and its own past: what each step since has changed, from then to now', () => {
  const moor = openTrip.value!.draft
  const [tarp, second] = moor.gear
  actions.setField(`gear/${tarp!.id}/massKg`, 2.79, null)
  actions.edit('Delete chair', draft => removeItem(draft, second!.id))
  actions.edit('Add a cup', draft =>
    addItem(draft, newId, { with: { name: 'Cup', massKg: 0.1, litres: 0.5 } }),
  )
  render(<SideBySideScreen />)
  expect(options('Earlier states of this trip').map(it => it!.replace(/, \d.*/, ''))).toEqual([
    'before “Add a cup”',
    'before “Delete chair”',
    `before “${tarp!.name}, mass”`,
  ])
  against(/mass”/)
  const items = (title: string) =>
    [...screen.getByText(title).closest('section')!.querySelectorAll('li')].map(it => plain(it.textContent!))
  expect(items('Taken away since')).toEqual([second!.name])
  expect(items('Added since')).toEqual(['Cup'])
  expect(items('Changed')[0]).toMatch(/mass 1\.79 kg → 2\.79 kg/)
  const [then, now] = [settle(moor).plan, settle(openTrip.value!.draft).plan].map(needOf)
  expect(row('Main body')!.slice(1, 3)).toEqual(
    [then, now].map(need => plain(formatsIn('metric').litres(need!.bodyLitres))),
  )
  actions.undo()
  cleanup()
  render(<SideBySideScreen />)
  expect(options('Earlier states of this trip')).toHaveLength(2)
})

function needOf(plan: Plan) {
  const found = reckon(plan)
  if (!found.ok) throw new Error(found.problem.said)
  return found.reckoning.need
}
