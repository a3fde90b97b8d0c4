// From a track to what the route decides: the doors to the track reader, the terrain in the need, and what lies
// between sources.

import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact'
import { act } from 'preact/test-utils'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { emptyDraft, fromPlanDocument, parsePlan, removeStop } from '../../src/plan'
import { dryStretchesOf, reckon } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { NeedScreen } from '../../src/screens/need'
import { TripScreen } from '../../src/screens/trip'
import { actions, newId, openTrip, reckoned } from '../../src/store'

const noDetail = { detail: null, onDetail: () => undefined }
const formats = formatsIn('metric')
const need = () => render(<NeedScreen />)

function openReckoned() {
  const open = reckoned.value
  if (!open?.reckoned.ok) throw new Error('the demo does not settle')
  return { plan: open.plan, reckoning: open.reckoned.reckoning }
}

beforeEach(() => {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  act(() => void actions.createTrip(fromPlanDocument(parsed.document, newId)))
})
afterEach(cleanup)

describe('the door to the track reader', () => {
  test('stands beside the quick start while there are no stops, and opens the reader', async () => {
    act(() => void actions.createTrip(emptyDraft()))
    render(<TripScreen {...noDetail} />)
    fireEvent.click(screen.getByRole('button', { name: 'Stops from a track (GPX)' }))
    // Its code is fetched only now.
    expect(await screen.findByLabelText('Choose a track file (GPX)')).toBeTruthy()
    fireEvent.click(screen.getByText('Leave without changes'))
    expect(screen.getByRole('button', { name: 'Stops from a track (GPX)' })).toBeTruthy()
    expect(openTrip.value?.draft.trip.stops).toEqual([])
  })

  test('stands under "Start over" while there are stops', () => {
    render(<TripScreen {...noDetail} />)
    const again = screen.getByText('Start over').closest('details')!
    expect(within(again).getByText('Stops from a track (GPX)')).toBeTruthy()
    expect(screen.getAllByText('Stops from a track (GPX)')).toHaveLength(1)
  })
})

describe('the terrain in the need', () => {
  const tripKm = () => openReckoned().reckoning.moments.at(-1)!.km
  const keep = (km: number) =>
    act(() =>
      actions.setProfile([
        { km: 0, eleM: 12 },
        { km: km / 2, eleM: 988 },
        { km, eleM: 7 },
      ]),
    )
  const drawn = () => document.querySelector('.terrain') !== null

  test.each([
    [0.981, true],
    [1.0, true],
    [1.02, true],
    [1.03, false],
    [0.97, false],
  ])('is drawn when the track is %f times as long as the trip: %s', (times, is) => {
    keep(tripKm() * times)
    need()
    expect(drawn()).toBe(is)
    expect(screen.queryByText(/the stops have changed since the track was read/) !== null).toBe(!is)
  })

  test('goes when a stop at the end goes, and comes back with it', () => {
    keep(tripKm())
    need()
    const last = openTrip.value!.draft.trip.stops.at(-1)!
    act(() => actions.edit('Delete the end', draft => removeStop(draft, last.id)))
    expect(drawn()).toBe(false)
    act(() => actions.undo())
    expect(drawn()).toBe(true)
  })

  test('can be forgotten once it fits no more; without a track nothing is said of one', () => {
    keep(tripKm() * 2)
    need()
    fireEvent.click(screen.getByText('Remove this elevation profile'))
    expect(openTrip.value).not.toHaveProperty('profile')
    expect(screen.queryByText(/since the track was read/)).toBeNull()
  })
})

describe('between sources', () => {
  const section = () => screen.getByText('Water between sources').closest('details')!
  const open = () => {
    act(() => {
      section().open = true
      section().dispatchEvent(new Event('toggle'))
    })
  }
  const rows = () => [...section().querySelectorAll('.stretch')].map(row => row.textContent!)

  /** All camps are reckoned: nothing says that more are to come. */
  const done = () => waitFor(() => expect(section().textContent).not.toContain('Calculating'))

  test('says nothing before it is opened, then each stretch with what the engine finds', async () => {
    need()
    expect(rows()).toEqual([])
    open()
    expect(section().textContent).toMatch(/Calculating 2 more dry camps…$/)
    await done()
    const found = dryStretchesOf(reckon, openReckoned())
    expect(found.flatMap(({ camps }) => camps).length).toBeGreaterThan(0)
    expect(rows()).toHaveLength(found.length)
    const { stops } = openReckoned().plan.trip
    found.forEach(({ carry, km, camps }, i) => {
      expect(rows()[i]).toContain(`${stops[carry.stop]!.name} to ${stops[carry.to]!.name}`)
      expect(rows()[i]).toContain(formats.km(km))
      expect(rows()[i]).toContain(`${formats.water(carry.needLitres)} to carry out`)
      expect(rows()[i]!.includes('falls short')).toBe(carry.shortLitres > 0)
      for (const camp of camps)
        expect(rows()[i]).toContain(
          `With water at ${stops[camp.stop]!.name}: ${formats.water(camp.savesCarryLitres)} less to carry out`,
        )
    })
  })

  test('follows an edit once the typing has stopped, not with every key', async () => {
    need()
    open()
    await done()
    const before = rows()
    act(() => actions.setField('trip/water/campLitres', 9, null))
    expect(rows()).toEqual(before)
    await waitFor(() => expect(rows()).not.toEqual(before))
    const [first] = dryStretchesOf(reckon, openReckoned())
    expect(rows()[0]).toContain(`${formats.water(first!.carry.needLitres)} to carry out`)
  })

  test('says when nothing in the gear holds water', () => {
    act(() => actions.edit('No bottles', draft => ({ ...draft, gear: [] })))
    need()
    open()
    expect(section().textContent).toContain('No item in the gear holds water')
    expect(rows().some(row => row.includes('falls short'))).toBe(false)
  })
})
