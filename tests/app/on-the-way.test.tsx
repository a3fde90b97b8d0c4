// On the way: one tap says where one is; then the figures of the whole trip there, and each resupply skipped.

import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { formatsIn, leftLines, skipText } from '../../src/report'
import { explain } from '../../src/report/why'
import { OnTheWayScreen } from '../../src/screens/on-the-way'
import { actions, library, newId, onTheWayAt, openTrip, reckoned } from '../../src/store'

const formats = formatsIn('metric')
const stops = () => openTrip.value!.draft.trip.stops
const open = () => {
  const it = reckoned.value!
  if (!it.reckoned.ok) throw new Error(it.reckoned.problem.said)
  return { open: it, plan: it.plan, ...it.reckoned }
}
const Place = () => <OnTheWayScreen detail={library.value.place.detail} />

beforeEach(() => {
  actions.setSystem('metric')
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo is refused')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
  actions.setPlace({ screen: 'on-the-way', detail: null, scrollY: 0 })
})
afterEach(cleanup)

test('the stops between start and end are asked for, and one tap tells what should be left there', () => {
  render(<Place />)
  const names = screen.getAllByRole('listitem').map(row => row.querySelector('.name')!.textContent)
  expect(names).toEqual(
    stops()
      .slice(1)
      .map(({ name }) => name),
  )
  fireEvent.click(screen.getByRole('button', { name: /^Bare Saddle/ }))
  const left = onTheWayAt(open().open, 2)!
  const { moments } = open().reckoning
  expect([left.loadKg, left.foodKg]).toEqual([moments[4]!.kg.total, moments[4]!.kg.daily])
  const now = screen.getByRole('region', { name: 'Should be left, as you leave' })
  const told = [...now.querySelectorAll('.facts > div')].map(row => [
    row.querySelector('dt')!.textContent,
    row.querySelector('dd')!.textContent,
  ])
  expect(told).toEqual(leftLines(left, open().plan, formats).map(({ what, amount }) => [what, amount]))
  expect(told.map(([what]) => what)).toEqual(['Food', 'Gas', 'Water to leave with', 'Load', 'Main body'])
})

test('with a mass missing every load on the way is told as the least, with litres missing the body too', () => {
  actions.edit('Forget', draft => ({
    ...draft,
    gear: [...draft.gear, { id: 'rope', name: 'Rope' }],
  }))
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: /^Bare Saddle/ }))
  for (const what of ['Load', 'Main body'])
    expect(screen.getByText(what).nextElementSibling!.textContent).toMatch(/^at least /)
  const until = within(screen.getByRole('region', { name: /^On your back/ }))
  for (const row of until.getAllByRole('definition')) expect(row.textContent).toMatch(/^at least /)
})

test('the list runs to where food is bought again, and each resupply ahead says what skipping it takes', () => {
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: /^Cistern Terrace/ }))
  const until = within(screen.getByRole('region', { name: /^On your back until you resupply/ }))
  const rows = until.getAllByRole('term').map(row => row.textContent)
  expect(rows).toEqual(['Cistern Terrace', 'Bare Saddle', 'Goat Well'].map(name => `Leaving ${name}`))
  const left = onTheWayAt(open().open, 1)!
  const [chapel] = left.ifSkipped
  expect(screen.getByRole('heading', { name: /^Skip the resupply at Chapel Hut/ })).toBeTruthy()
  const skip = screen.getByRole('region', { name: /^Skip the resupply at Chapel Hut/ })
  expect(skip.querySelector('p')!.textContent).toBe(skipText(chapel!, left, formats))
  fireEvent.change(screen.getByLabelText('You are at'), { target: { value: '5' } })
  expect(screen.getByText('No resupply lies ahead.')).toBeTruthy()
  expect(screen.getByRole('heading', { name: /^On your back to the end/ })).toBeTruthy()
})

test('a stop that is gone, or has become the end, is asked for anew', () => {
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: /^Juniper Flat/ }))
  expect(screen.queryByText('You are at…')).toBeNull()
  act(() =>
    actions.edit('shorter', draft => ({
      ...draft,
      trip: { ...draft.trip, stops: draft.trip.stops.slice(0, 6).map(({ nights: _, ...stop }) => stop) },
    })),
  )
  expect(screen.getByText('You are at…')).toBeTruthy()
})

test('what is not known makes it a lower bound, and says so', () => {
  render(<Place />)
  fireEvent.click(screen.getByRole('button', { name: /^Goat Well/ }))
  expect(screen.queryByText(/^At least:/)).toBeNull()
  const { id } = openTrip.value!.draft.gear[0]!
  act(() => actions.setField(`gear/${id}/massKg`, undefined, null))
  expect(screen.getByText('At least: 1 item without a mass is not in it.')).toBeTruthy()
})

test('every figure shown is named by the reason', () => {
  const { plan, reckoning, working } = open()
  const left = onTheWayAt(open().open, 2)!
  const context = { plan, reckoning, working, formats, stopIds: stops().map(({ id }) => id) }
  const reasons = JSON.stringify(explain({ kind: 'on-the-way', left }, context))
  for (const { amount } of leftLines(left, plan, formats))
    expect(reasons).toContain(JSON.stringify(amount).slice(1, -1))
  for (const skipped of left.ifSkipped)
    expect(reasons).toContain(JSON.stringify(skipText(skipped, left, formats)).slice(1, -1))
})
