// Long because the panels of one screen share their set-up.
// Filling the gear: kinds, a pasted list, a day's food and measures, from what is typed to what is in the trip.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { DraftItem } from '../../src/plan'
import { GearScreen } from '../../src/screens/gear'
import { FoodMixer } from '../../src/screens/gear/FoodMixer'
import { KindPicker } from '../../src/screens/gear/KindPicker'
import { Measure } from '../../src/screens/gear/Measure'
import { PasteList } from '../../src/screens/gear/PasteList'
import { actions, openTrip, reckoned } from '../../src/store'
import { openDetails } from './details'

const gear = () => openTrip.value!.draft.gear
const item = () => gear()[0]!
const type = (label: string | RegExp, text: string) =>
  fireEvent.input(screen.getByLabelText(label), { target: { value: text } })
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))

/** Draws a part that is given its item, anew after each change, as the screen does. */
function Live({ part: Part }: { part: (props: { item: DraftItem }) => unknown }) {
  const Drawn = Part as (props: { item: DraftItem }) => preact.JSX.Element | null
  return <Drawn item={item()} />
}

const tripWith = (...items: DraftItem[]) =>
  actions.createTrip({ carrier: {}, trip: { stops: [] }, gear: items, packs: [] })

beforeEach(() => {
  actions.setSystem('metric')
  sessionStorage.clear()
})
afterEach(cleanup)

describe('kinds', () => {
  test('are offered for a name and taken by a tap, in one edit that can be undone', () => {
    tripWith({ id: 'a', name: 'Rain jacket', massKg: 0.25, massFrom: 'scale' })
    render(<Live part={KindPicker} />)
    expect(item().litresRange).toBeUndefined()
    press(/^rain jacket/)
    expect(item()).toEqual({
      id: 'a',
      name: 'Rain jacket',
      massKg: 0.25,
      massFrom: 'scale',
      litresFrom: 'kind',
      litresRange: { low: 0.925, typical: 1.08, high: 1.25 },
      litresPerKg: { low: 3.7, typical: 4.33, high: 5 },
      build: 'soft',
      stow: 'main-body',
      group: 'Clothing',
    })
    expect(
      screen.getByText(/typical for its mass, our estimate, not checked against a source, not measured/),
    ).toBeTruthy()
    actions.undo()
    expect(item()).toEqual({ id: 'a', name: 'Rain jacket', massKg: 0.25, massFrom: 'scale' })
  })

  test('take away what could not be read as litres, which would have no field to be mended in', () => {
    tripWith({ id: 'a', name: 'Rain jacket', massKg: 0.25 })
    actions.setField('gear/a/litres', undefined, 'two-ish')
    render(<Live part={KindPicker} />)
    press(/^rain jacket/)
    expect(openTrip.value!.typed).toEqual({})
    expect(reckoned.value!.leftOut.filter(({ path }) => path.startsWith('gear'))).toEqual([])
  })

  test('say of every offer where its figures come from', () => {
    tripWith({ id: 'a', name: 'sleeping bag' })
    render(<Live part={KindPicker} />)
    const offers = within(screen.getByRole('list')).getAllByRole('button')
    expect(offers.length).toBeGreaterThan(1)
    expect(offers.length).toBeLessThanOrEqual(5)
    for (const offer of offers) expect(offer.textContent).toMatch(/our estimate|computed|derived|published/)
  })

  test('step back behind litres that are known, and are not offered for a name they do not fit', () => {
    tripWith({ id: 'a', name: 'Rain jacket', litres: 2 })
    render(<Live part={KindPicker} />)
    expect(document.querySelector('details')?.open).toBe(false)
    cleanup()
    tripWith({ id: 'a', name: 'Book' })
    render(<Live part={KindPicker} />)
    expect(screen.queryByRole('button')).toBeNull()
  })

  test('follow the mass that is typed, until one end of the litres is', () => {
    tripWith({ id: 'a', name: 'Quilt' })
    render(<Live part={KindPicker} />)
    press(/^down quilt, summer/)
    cleanup()
    render(<GearScreen detail="gear/a" onDetail={() => undefined} />)
    type(/^Mass, each/, '500')
    const at500 = item().litresRange!
    type(/^Mass, each/, '740')
    expect(item().litresRange).toEqual({ low: 5.79, typical: 7, high: 8.51 })
    expect(item().litresRange!.typical).toBeGreaterThan(at500.high)
    type(/At most/, '9')
    type(/^Mass, each/, '500')
    expect(item().litresRange).toEqual({ low: 5.79, typical: 7, high: 9 })
  })

  test('give a range that the row shows, and that one number can replace', () => {
    tripWith({
      id: 'a',
      name: 'Jacket',
      massKg: 0.3,
      litresFrom: 'kind',
      litresRange: { low: 0.8, typical: 1.3, high: 2.1 },
    })
    render(<GearScreen detail="gear/a" onDetail={() => undefined} />)
    expect(screen.getByText(/0.8–2.1\sL by kind/)).toBeTruthy()
    type(/At most/, '2,5')
    expect(item().litresRange?.high).toBe(2.5)
    press('Type one number of litres instead')
    expect(item()).toEqual({ id: 'a', name: 'Jacket', massKg: 0.3 })
    expect(screen.getByLabelText(/Packed volume, each/)).toBeTruthy()
  })
})

describe('a pasted list', () => {
  const LIST = 'Rain jacket 300 g\n2 x tent peg 14g\nSleeping mat 450 g\n300 g\nTotal 778 g'
  const paste = (text: string) => type('One item a line, with its mass', text)
  /** The clear lines stand in one: this opens it. */
  const openClear = () => openDetails(screen.getByText(/clear lines?/))
  const text = () => screen.getByLabelText<HTMLTextAreaElement>('One item a line, with its mass').value

  test('far too long to be drawn does not come into the field, which stays as it is', () => {
    tripWith()
    render(<PasteList />)
    type(/One item a line/, 'Mug 90 g')
    const field = screen.getByLabelText<HTMLTextAreaElement>(/One item a line/)
    const paste = (text: string) =>
      fireEvent.paste(field, { clipboardData: { getData: () => text } as unknown as DataTransfer })
    expect(paste('Spoon 10 g\n')).toBe(true)
    expect(paste('Spoon 10 g\n'.repeat(30_000))).toBe(false)
    expect(screen.getByText(/has 330 kB of text; up to 200 kB.*Nothing of it was taken/)).toBeTruthy()
    expect(field.value).toBe('Mug 90 g')
    expect(screen.getByRole('button', { name: 'Add 1 item' })).toBeTruthy()
  })

  test('shows what was understood, keeps what was not, and adds the rest in one edit', () => {
    tripWith()
    render(<PasteList />)
    paste(LIST)
    expect(screen.getByText(/1 line not understood/)).toBeTruthy()
    expect(screen.getByText(/No name: write what it is before its mass/)).toBeTruthy()
    expect(screen.getByLabelText<HTMLInputElement>(/Total/).checked).toBe(false)
    expect(screen.getByLabelText<HTMLSelectElement>('Kind of Sleeping mat').value).toBe('')
    expect(gear()).toEqual([])
    press('Add 3 items')
    expect(gear().map(({ name, count, litresFrom }) => [name, count, litresFrom])).toEqual([
      ['Rain jacket', undefined, 'kind'],
      ['tent peg', 2, 'kind'],
      ['Sleeping mat', undefined, undefined],
    ])
    expect(text()).toBe('300 g\nTotal 778 g')
    actions.undo()
    expect(gear()).toEqual([])
  })

  test('takes the reader’s word on which lines and which kinds', () => {
    tripWith()
    render(<PasteList />)
    paste(LIST)
    openClear()
    fireEvent.click(screen.getByRole('checkbox', { name: /tent peg/ }))
    fireEvent.change(screen.getByLabelText('Kind of Sleeping mat'), {
      target: { value: 'inflatable pad, rolled' },
    })
    fireEvent.change(screen.getByLabelText('Kind of Rain jacket'), { target: { value: '' } })
    press('Add 2 items')
    expect(gear().map(({ name, litresRange }) => [name, litresRange?.typical])).toEqual([
      ['Rain jacket', undefined],
      ['Sleeping mat', 1.8],
    ])
  })

  test('stays as typed when it is closed, and when what was added is undone', () => {
    tripWith()
    const { unmount } = render(<PasteList />)
    paste(LIST)
    unmount()
    render(<PasteList />)
    expect(text()).toBe(LIST)
    press('Add 3 items')
    press('Undo')
    expect(gear()).toEqual([])
    expect(text()).toBe(LIST)
  })

  test('leaves one’s own pack until it is ticked', () => {
    tripWith()
    render(<PasteList />)
    paste('Backpack 1250 g\nPack cover 90 g')
    const box = screen.getByLabelText<HTMLInputElement>(/Backpack/)
    expect(box.checked).toBe(false)
    expect(screen.getByText('Your pack? Its mass belongs under Packs, so it is left.')).toBeTruthy()
    fireEvent.click(box)
    press('Add 2 items')
    expect(gear().map(({ name }) => name)).toEqual(['Backpack', 'Pack cover'])
  })

  test('says of food that it would not be eaten, unless it is a day’s', () => {
    tripWith()
    render(<PasteList />)
    paste('Food 700 g\nFood 650 g per day\nFood bag 60 g')
    expect(screen.getAllByText(/^Comes in as gear that is not eaten/)).toHaveLength(1)
    openClear()
    expect(screen.getByText(/650\sg, a day’s food/)).toBeTruthy()
    press('Add 3 items')
    expect(gear().map(({ use }) => use)).toEqual([undefined, 'daily', undefined])
  })

  test('says once how many numbers have no unit', () => {
    tripWith()
    render(<PasteList />)
    paste('Groundsheet 150\nFleece 330\nMug 60 g')
    expect(screen.getAllByText(/without a unit/).map(({ textContent }) => textContent)).toEqual([
      '2 lines end in a number without a unit, read as the mass in grams.',
    ])
  })

  test('shows only what is in doubt, and all the rest in one line', () => {
    tripWith()
    render(<PasteList />)
    paste(
      'Sleep\nQuilt 740 g\nSleeping mat 450 g\nWorn\nShirt 180 g\nKitchen\n2 x 1 L bottle 100 g\nFood 650 g a day\nGas 25 g a night\nPot 130 g\nTotal 2500 g',
    )
    expect([...document.querySelectorAll('.pasted .name')].map(name => name.textContent)).toEqual([
      'Sleeping mat',
      'Total',
    ])
    expect(screen.getByText('6 clear lines, in 3 groups, 1 worn, 1 a day, 1 a night')).toBeTruthy()
    openClear()
    expect(screen.getByText(/100\sg each, holds 1\.0\sL, Kitchen/)).toBeTruthy()
  })

  test('keeps a line of two masses until one is chosen by a tap', () => {
    tripWith()
    render(<PasteList />)
    paste('Hat 60 g\nTent 1.2 kg (with poles 1.5 kg)')
    expect(screen.getByText(/Two masses, 1.2 kg and 1.5 kg: leave one/)).toBeTruthy()
    press('Keep 1.5 kg in line 2')
    expect(text()).toBe('Hat 60 g\nTent (with poles 1.5 kg)')
    expect(screen.queryByText(/not understood/)).toBeNull()
    press('Add 2 items')
    expect(gear().map(({ massKg }) => massKg)).toEqual([0.06, 1.5])
  })

  test('offers to put the food into a hard container by one tap', () => {
    tripWith()
    render(<PasteList />)
    paste('Bear canister 1100 g\nFood 650 g a day\nHat 60 g')
    press('Add 3 items')
    press('Put the food in Bear canister')
    const [box] = gear()
    expect(gear().map(({ name, inside }) => [name, inside])).toEqual([
      ['Bear canister', undefined],
      ['Food', box!.id],
      ['Hat', undefined],
    ])
    expect(document.activeElement?.textContent).toBe('The food is carried in Bear canister.')
    actions.undo()
    expect(gear().map(({ inside }) => inside)).toEqual([undefined, undefined, undefined])
  })

  test('that is too long says by how much, and stays', () => {
    tripWith()
    render(<PasteList />)
    const long = 'Peg 14 g\n'.repeat(2001)
    paste(long)
    expect(screen.getByText(/2002 lines; up to 2000 lines/)).toBeTruthy()
    expect(text()).toBe(long)
  })

  test('gives the need a range', () => {
    tripWith()
    render(<PasteList />)
    paste('Sleeping bag, 850')
    const before = reckoned.value!.reckoned
    press('Add 1 item')
    const after = reckoned.value!.reckoned
    if (!before.ok || !after.ok) throw new Error('the trip does not settle')
    expect(after.reckoning.need.bodyLitres).toBeGreaterThan(before.reckoning.need.bodyLitres + 6)
  })
})

describe('a day’s food', () => {
  const add = (query: string, grams: string) => {
    type('Find a food', query)
    fireEvent.click(within(screen.getByRole('list', { name: 'Foods found' })).getAllByRole('button')[0]!)
    const fields = document.querySelectorAll<HTMLInputElement>('.portion input')
    fireEvent.input(fields[fields.length - 1]!, { target: { value: grams } })
  }

  test('adds up to a daily item with mass, litres and energy', () => {
    tripWith()
    render(<FoodMixer />)
    add('couscous', '100')
    add('olive oil', '1 oz')
    press('Use as the day’s food')
    const massKg = 0.1 + 0.028349523125
    expect(item()).toMatchObject({ use: 'daily', litresFrom: 'guess', massKg: Number(massKg.toFixed(4)) })
    expect(item().litres).toBeCloseTo(1.15 * (0.1 / 0.731 + 0.028349523125 / 0.913), 2)
    expect(item().kcalPerKg).toBe(Math.round((376 + 8840 * 0.028349523125) / massKg))
  })

  test('can go into a daily item that is there', () => {
    tripWith({ id: 'a', name: 'Rations', use: 'daily', massKg: 1, litres: 3 })
    render(<FoodMixer />)
    add('couscous', '500')
    press('Put into Rations')
    expect(gear()).toHaveLength(1)
    expect(item()).toMatchObject({ name: 'Rations', massKg: 0.5, kcalPerKg: 3760 })
  })

  test('marks estimates, names the public source, and stays when it is closed', () => {
    tripWith()
    const { unmount } = render(<FoodMixer />)
    add('jerky', '30')
    unmount()
    render(<FoodMixer />)
    expect(screen.getByText(/0.45 kg\/L \(our estimate\)/)).toBeTruthy()
    expect(screen.getByText(/public domain/)).toBeTruthy()
    press('Leave out Jerky, bagged')
    expect(screen.queryByText(/our estimate\)/)).toBeNull()
  })

  test('says when no food has that name', () => {
    tripWith()
    render(<FoodMixer />)
    type('Find a food', 'pemmican')
    expect(screen.getByText('No food of that name in the table.')).toBeTruthy()
  })
})

describe('a measure', () => {
  const way = (label: string) => fireEvent.click(screen.getByLabelText(label))

  test('of a soft roll by its girth shows litres ±, and is put in by a tap', () => {
    tripWith({ id: 'a', name: 'Bag', litresFrom: 'kind', litresRange: { low: 6, typical: 8, high: 11 } })
    render(<Live part={Measure} />)
    type(/^Around it/, '50')
    type(/^Length/, '28 cm')
    expect(screen.getByText(/5.6\sL ± 0.3\sL/)).toBeTruthy()
    expect(item().litresRange).toBeTruthy()
    press(/^Use 5.6\sL/)
    expect(item()).toEqual({ id: 'a', name: 'Bag', litres: 5.57, litresFrom: 'dimensions' })
  })

  test.each([
    [
      'Box',
      [
        ['Length', '30'],
        ['Width', '20'],
        ['Height', '10'],
      ],
      6,
      'dimensions',
    ],
    [
      'Cylinder',
      [
        ['Across', '22'],
        ['Length', '300 mm'],
      ],
      11.4,
      'dimensions',
    ],
    [
      'Filled box',
      [
        ['Length of', '40'],
        ['Width of', '30'],
        ['Height it', '25'],
      ],
      30,
      'filled',
    ],
    ['In water', [['The water', '3000 ml']], 3, 'filled'],
  ] as const)('as %s comes to its litres', (label, readings, litres, litresFrom) => {
    tripWith({ id: 'a', name: 'Item', build: 'rigid' })
    render(<Live part={Measure} />)
    way(label)
    for (const [field, text] of readings) type(new RegExp(`^${field}`), text)
    press(/^Use/)
    expect(item()).toMatchObject({ litres, litresFrom })
  })

  test('of a mat laid out comes to its roll, the open middle taken as 2 cm', () => {
    tripWith({ id: 'a', name: 'Mat' })
    render(<Live part={Measure} />)
    way('Mat, laid out')
    type(/^Length/, '183')
    type(/^Width/, '51')
    type(/^Thickness/, '15 mm')
    expect(screen.getByText(/14.2\sL ± 1.0\sL/)).toBeTruthy()
    expect(screen.getByText(/The roll is 19\scm thick.*14.0\sL/)).toBeTruthy()
    press(/^Use 14.2\sL/)
    expect(item()).toEqual({ id: 'a', name: 'Mat', litres: 14.16, litresFrom: 'dimensions' })
  })

  test('gives a rigid thing its size as well, in place of the one it had', () => {
    tripWith({ id: 'a', name: 'Case', build: 'rigid', lengthCm: 9, diameterCm: 8 })
    render(<Live part={Measure} />)
    way('Box')
    type(/^Length/, '30')
    type(/^Width/, '20')
    type(/^Height/, '10.02')
    expect(screen.getByText(/Its size is put in as well/)).toBeTruthy()
    press(/^Use/)
    const { diameterCm, ...rest } = item()
    expect(diameterCm).toBeUndefined()
    expect(rest).toMatchObject({ lengthCm: 30, widthCm: 20, depthCm: 10, litresFrom: 'dimensions' })
  })

  test('says what it counts as, and counts for less where it is too small for the way', () => {
    tripWith({ id: 'a', name: 'Item' })
    render(<Live part={Measure} />)
    way('In water')
    type(/^The water/, '3')
    expect(screen.getByText(/Counts as measured by filling, good to ± 3 %\./)).toBeTruthy()
    type(/^The water/, '0.5')
    expect(screen.getByText(/Counts as from its dimensions, good to ± 10 %: it is small/)).toBeTruthy()
    type(/^The water/, '0.3')
    expect(screen.getByText(/Counts as a guess, good to ± 30 %: it is small/)).toBeTruthy()
    press(/^Use/)
    expect(item()).toMatchObject({ litres: 0.3, litresFrom: 'guess' })
  })

  test('that cannot be read says so and offers nothing', () => {
    tripWith({ id: 'a', name: 'Item' })
    render(<Live part={Measure} />)
    type(/^Around it/, '5000')
    fireEvent.blur(screen.getByLabelText(/^Around it/))
    expect(screen.getByText(/write an amount from 1.5\scm to 600\scm/)).toBeTruthy()
    expect(screen.queryByRole('button')).toBeNull()
  })

  test('of insulation gives three squeezes, the shell being the rest of the mass', () => {
    tripWith({ id: 'a', name: 'Bag', massKg: 0.85 })
    render(<Live part={Measure} />)
    way('Insulated')
    type(/^Mass of the fill/, '450')
    const offers = within(screen.getByRole('list')).getAllByRole('button')
    expect(offers).toHaveLength(3)
    fireEvent.click(offers[1]!)
    // 450 g at 69.6 g/L and 400 g at 300 g/L.
    expect(item().litresRange!.typical).toBeCloseTo(7.8, 1)
    expect(item().litresFrom).toBe('kind')
    expect(screen.getByText(/constants are our estimate/)).toBeTruthy()
  })
})
