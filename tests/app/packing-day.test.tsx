// Packing day: ticks that stay, what may be forgotten, the scale beside what is calculated, and how full the pack is.

import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { emptyDraft, fromPlanDocument, parsePlan } from '../../src/plan'
import { formatsIn } from '../../src/report'
import { CalibrateScreen } from '../../src/screens/calibrate'
import { NeedPlace } from '../../src/screens/need'
import { PackingDayScreen } from '../../src/screens/packing-day'
import { actions, library, newId, openTrip, reckoned, shelf, trips } from '../../src/store'

const draft = () => openTrip.value!.draft
const log = () => draft().log ?? {}
const ticks = () => screen.getAllByRole('checkbox') as HTMLInputElement[]
const reckoning = () => {
  const { reckoned: result } = reckoned.value!
  if (!result.ok) throw new Error(result.problem.said)
  return result.reckoning
}
function type(label: RegExp, text: string) {
  const field = screen.getByLabelText(label)
  fireEvent.focus(field)
  fireEvent.input(field, { target: { value: text } })
  fireEvent.blur(field)
}

beforeEach(() => {
  for (const id of [...trips.value.keys()]) actions.removeTrip(id)
  if (shelf.value.packings.length > 0) actions.editShelf('None', it => ({ ...it, packings: [] }))
  actions.setSystem('metric')
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo is refused')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
  actions.setPlace({ screen: 'packing-day', detail: null, scrollY: 0 })
})
afterEach(cleanup)

test('twenty-five items are ticked with as many taps, each an undo step, and items that are gone do no harm', () => {
  actions.edit('25 items', it => ({
    ...it,
    gear: it.gear.slice(0, 25).map(({ inside: _, ...item }) => item),
  }))
  render(<PackingDayScreen />)
  const { length } = ticks()
  let taps = 0
  for (const at of Array.from({ length }, (_, i) => i)) {
    act(() => ticks()[at]!.click())
    taps += 1
  }
  expect([taps, screen.getAllByRole('status')[0]!.textContent]).toEqual([
    length,
    `${length} of ${length} packed`,
  ])
  expect(Object.keys(log().packed!).toSorted()).toEqual(
    draft()
      .gear.map(({ id }) => id)
      .toSorted(),
  )
  act(() => actions.undo())
  expect(screen.getAllByRole('status')[0]!.textContent).toBe(`${length - 1} of ${length} packed`)
  act(() => actions.edit('Delete', it => ({ ...it, gear: it.gear.slice(0, 3) })))
  expect(ticks()).toHaveLength(3)
  expect(screen.getAllByRole('status')[0]!.textContent).toMatch(/of 3 packed$/)
})

test('what stays at home is not on the list', () => {
  const { id, name } = draft().gear[0]!
  actions.setField(`gear/${id}/atHome`, true, null)
  render(<PackingDayScreen />)
  expect(screen.queryByText(name!, { selector: '.to-tick .name' })).toBeNull()
})

test('things of other trips are offered, and one tap adds one; without other trips nothing is asked', () => {
  const { unmount } = render(<PackingDayScreen />)
  expect(screen.queryByText('Forgot something?')).toBeNull()
  unmount()
  const here = openTrip.value!.id
  actions.createTrip({ ...emptyDraft(), gear: [{ id: 'w', name: 'Whistle', massKg: 0.02 }] })
  actions.openTripById(here)
  render(<PackingDayScreen />)
  fireEvent.click(screen.getByRole('button', { name: /Add Whistle/ }))
  expect(draft().gear.at(-1)).toMatchObject({ name: 'Whistle', massKg: 0.02 })
  expect(screen.queryByText('Forgot something?')).toBeNull()
})

test('a reading that cannot be read stays typed with what is wrong', () => {
  render(<PackingDayScreen />)
  type(/^It weighs/, 'about twelve')
  expect((screen.getByLabelText(/^It weighs/) as HTMLInputElement).value).toBe('about twelve')
  expect(openTrip.value!.typed['log/weighedKg']).toBe('about twelve')
  expect(screen.getByLabelText(/^It weighs/).getAttribute('aria-invalid')).toBe('true')
  expect(reckoned.value!.leftOut.map(({ path }) => path)).not.toContain('log/weighedKg')
})

test('the reading stands beside what is calculated, and is spread over the guesses in one step', () => {
  actions.edit('Guess', it => ({
    ...it,
    gear: it.gear.map(item =>
      item.use === 'daily' || item.fuel ? item : { ...item, massFrom: 'guess' as const },
    ),
  }))
  render(<PackingDayScreen />)
  const { total } = reckoning().moments[0]!.kg
  type(/^It weighs/, `${total + 0.5} kg`)
  expect(screen.getByText('0.5 kg more than calculated')).toBeTruthy()
  const before = draft()
  fireEvent.click(screen.getByRole('button', { name: /^Spread .+ over \d+ guesses$/ }))
  expect(reckoning().moments[0]!.kg.total).toBeCloseTo(total + 0.5, 9)
  expect(screen.getByText('As calculated')).toBeTruthy()
  act(() => actions.undo())
  expect(draft()).toEqual(before)
})

test('weighed without the pack, the trip still takes it', () => {
  const pack = draft().packs.at(-1)!
  const takes = { pack: pack.id, setup: pack.setups[0]!.id }
  actions.setField('takes', takes, null)
  render(<PackingDayScreen />)
  type(/^It weighs/, '12 kg')
  expect(screen.getByText(/ and the pack, /)).toBeTruthy()
  const weighedIn = screen.getByLabelText('Weighed in') as HTMLSelectElement
  const packed = weighedIn.value
  fireEvent.change(weighedIn, { target: { value: '' } })
  expect([draft().takes, log().weighedBare, weighedIn.value]).toEqual([takes, true, ''])
  expect(screen.getByText(/, without a pack\.$/)).toBeTruthy()
  fireEvent.change(weighedIn, { target: { value: packed } })
  expect([draft().takes, log().weighedBare, weighedIn.value]).toEqual([takes, undefined, packed])
})

test('the water to leave with is on the list, and in its reason', async () => {
  render(<PackingDayScreen />)
  const water = formatsIn('metric').water(reckoning().moments[0]!.kg.water)
  expect(screen.getByText(/^Water to leave with: /).textContent).toBe(`Water to leave with: ${water}.`)
  fireEvent.click(screen.getByRole('button', { name: /How much to pack/ }))
  expect((await screen.findByText('Water to leave with')).closest('div')!.textContent).toContain(water)
})

test('a reading far off is kept, and what no range explains is said', () => {
  render(<PackingDayScreen />)
  type(/^It weighs/, '60 kg')
  expect(log().weighedKg).toBe(60)
  expect(screen.getByText(/of it no range on the list explains/)).toBeTruthy()
})

test('weighed and full in at most six taps, and the trip then says measured', async () => {
  const pack = draft().packs.at(-1)!
  actions.setField('takes', { pack: pack.id, setup: pack.setups[0]!.id }, null)
  const { unmount } = render(<PackingDayScreen />)
  let taps = 0
  const tap = (element: HTMLElement) => {
    taps += 1
    fireEvent.click(element)
  }
  tap(screen.getByLabelText(/^It weighs/))
  type(/^It weighs/, '12.4')
  tap(screen.getByRole('button', { name: 'Say how full it is' }))
  expect(library.value.place.screen).toBe('calibrate')
  unmount()
  const packing = render(<CalibrateScreen />)
  tap(screen.getByLabelText('To the brim'))
  tap(screen.getByRole('button', { name: 'Add this packing' }))
  packing.unmount()
  expect(taps).toBeLessThanOrEqual(6)
  // The pack that the trip takes is the one that was said to be full.
  expect(shelf.value.packings.at(-1)).toMatchObject({ id: log().packing, pack: pack.name })
  actions.setPlace({ screen: 'need', detail: null, scrollY: 0 })
  render(<NeedPlace isDesk={false} />)
  const sure = (await screen.findByRole('heading', { name: 'How sure it is' })).closest('summary')!
  expect(sure.textContent).toMatch(/, measured$/)
})
