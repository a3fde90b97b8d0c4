// On the way what is really left and the times walked; after the trip what came home: noted, kept, and taken on by one tap.

import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { TripPlace } from '../../src/screens/trip'
import { actions, library, newId, openTrip, reckoned } from '../../src/store'

const draft = () => openTrip.value!.draft
const log = () => draft().log ?? {}
const stops = () => draft().trip.stops
const Place = () => <TripPlace detail={library.value.place.detail} onDetail={() => {}} />
const hours = () => {
  const { reckoned: result } = reckoned.value!
  return result.ok ? result.reckoning.legs.map(leg => leg.hours) : []
}
function type(label: RegExp, text: string) {
  const field = screen.getByLabelText(label)
  fireEvent.focus(field)
  fireEvent.input(field, { target: { value: text } })
  fireEvent.blur(field)
}
const time = (label: RegExp, value: string) =>
  fireEvent.change(screen.getByLabelText(label), { target: { value } })

beforeEach(() => {
  actions.setSystem('metric')
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo is refused')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
  actions.setPlace({ screen: 'trip', detail: null, scrollY: 0 })
})
afterEach(cleanup)

test('skipping a resupply is told within three taps from the trip', () => {
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: 'On the way' }))
  fireEvent.click(screen.getByRole('button', { name: /^Bare Saddle/ }))
  expect(screen.getByRole('heading', { name: /^Skip the resupply at Chapel Hut/ })).toBeTruthy()
})

test('what is really left is noted by stop, told how far it lasts, and warned of where it is short', () => {
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: 'On the way' }))
  fireEvent.click(screen.getByRole('button', { name: /^Bare Saddle/ }))
  const really = () => within(screen.getByRole('region', { name: 'What will you really have as you leave?' }))
  type(/^Water \(L\)/, '1')
  expect(really().getByText(/short by 2.1 L until you reach/)).toBeTruthy()
  const sleepsHere = (stops()[2]!.nights ?? 0) > 0
  expect(Boolean(really().queryByText('Without what you still use here.'))).toBe(sleepsHere)
  expect(really().getByText('WARNING')).toBeTruthy()
  type(/^Water \(L\)/, 'some')
  expect(openTrip.value!.typed[`log/left/${stops()[2]!.id}/waterLitres`]).toBe('some')
  expect(really().queryByText('WARNING')).toBeNull()
  type(/^Water \(L\)/, '9')
  expect(really().getByText(/^Enough until you reach|to spare/)).toBeTruthy()
  expect(log().left).toEqual({ [stops()[2]!.id]: { waterLitres: 9 } })
})

test('the times of a leg give the pace walked, which one tap keeps and one undo takes back', () => {
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: 'On the way' }))
  fireEvent.click(screen.getByRole('button', { name: /^Bare Saddle/ }))
  const planned = hours()
  time(/^Left Cistern Terrace/, '07:00')
  time(/^Reached Bare Saddle/, '13:30')
  expect(log()).toMatchObject({ setOff: { [stops()[1]!.id]: 420 }, reached: { [stops()[2]!.id]: 810 } })
  const factor = 6.5 / planned[1]!
  expect(screen.getByText(new RegExp(`${factor.toFixed(2)} times the time`))).toBeTruthy()
  const before = draft()
  fireEvent.click(screen.getByRole('button', { name: 'Keep this pace' }))
  for (const [i, each] of hours().entries()) expect(each).toBeCloseTo(planned[i]! * factor, 9)
  act(() => actions.undo())
  expect(draft()).toEqual(before)
  time(/^Reached Bare Saddle/, '07:05')
  expect(screen.getByText(/^These times cannot be right/)).toBeTruthy()
})

test('notes of stops and items that are gone do no harm', () => {
  actions.edit('Old notes', it => ({
    ...it,
    log: {
      packed: { gone: true },
      unused: { gone: true },
      reached: { gone: 5 },
      left: { gone: { foodKg: 1 } },
    },
  }))
  for (const place of ['packing-day', 'on-the-way', 'after-trip']) {
    actions.setPlace({ screen: place, detail: 'trip/stops/gone', scrollY: 0 })
    const { unmount } = render(<Place />)
    expect(screen.getAllByRole('heading').length).toBeGreaterThan(0)
    unmount()
  }
  expect(reckoned.value!.reckoned.ok).toBe(true)
})

test('the end leads to what comes after: unused things, and one’s own ration by one tap and one undo', () => {
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: 'On the way' }))
  fireEvent.click(screen.getByRole('button', { name: / the end$/ }))
  expect(screen.getByRole('heading', { name: 'After the trip' })).toBeTruthy()
  const [first] = screen.getAllByRole('checkbox')
  fireEvent.click(first!)
  expect(Object.keys(log().unused!)).toHaveLength(1)
  expect(screen.getByText(/^1 item unused/).textContent).toMatch(/ only other trips will remind you of it\.$/)
  type(/^Food left over/, '0.8')
  const food = () => draft().gear.find(({ use }) => use === 'daily')!
  const { massKg } = food()
  const before = draft()
  fireEvent.click(screen.getByRole('button', { name: /^Use .+ a day from now on$/ }))
  expect(food().massKg).toBeLessThan(massKg!)
  expect(log().rationKg).toBeCloseTo(food().massKg!, 3)
  expect(screen.getByText(/^Taken on:/).textContent).toMatch(/in this list and its copies\.$/)
  const [taken, { massKg: eaten }] = [draft(), food()]
  type(/^Food left over/, '0.4')
  expect(screen.queryByText(/^Taken on:/)).toBeNull()
  fireEvent.click(screen.getByRole('button', { name: /^Use .+ a day from now on$/ }))
  expect(food().massKg).toBeGreaterThan(eaten!)
  expect(screen.getByText(/^Taken on:/)).toBeTruthy()
  for (const _ of [1, 2]) act(() => actions.undo())
  expect(draft()).toEqual(taken)
  act(() => actions.undo())
  expect(draft()).toEqual(before)
  type(/^Food left over/, '90')
  expect(screen.getByText(/no ration follows from it/)).toBeTruthy()
})
