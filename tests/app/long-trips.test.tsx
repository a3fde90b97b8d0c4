// The longest trip and the most packs that are let in: of each only a part is drawn, and the rest is one press away.

import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { type Draft, emptyDraft, quickTrip } from '../../src/plan'
import { Trips } from '../../src/screens/more/Trips'
import { NeedScreen } from '../../src/screens/need'
import { PacksScreen } from '../../src/screens/packs'
import { SheetScreen } from '../../src/screens/sheet'
import { TripScreen } from '../../src/screens/trip'
import { actions } from '../../src/store'
import { counter, wholeDraft } from '../plan/drafts'
import { openDetails } from './details'

afterEach(cleanup)

const [pack] = wholeDraft().packs
const longest = (): Draft => ({ ...wholeDraft(), ...quickTrip(emptyDraft(), { days: 401 }, counter('s')) })
const drawn = (selector: string) => document.querySelectorAll(selector).length

test('the days and the table of a trip of 401 days are drawn in portions, after the answer and the pictures', async () => {
  actions.createTrip({ ...longest(), gear: wholeDraft().gear })
  render(<NeedScreen />)
  screen.getByRole('heading', { name: 'Heaviest load' })
  expect([drawn('.load-line'), drawn('.days')]).toEqual([0, 0])
  const days = await screen.findByText('Day by day')
  expect(drawn('*')).toBeLessThan(1200)
  openDetails(days)
  screen.getByText(/50 of 401 days are shown/)
  expect(drawn('.days tbody')).toBe(50)
  expect([drawn('.load-line'), drawn('.load-line tbody tr')]).toEqual([1, 0])
  expect(drawn('*')).toBeLessThan(3000)
  fireEvent.click(screen.getByRole('button', { name: 'Show 50 more days' }))
  expect(drawn('.days tbody')).toBe(100)
})

test('the sheet of a trip of 401 days is drawn in steps, and printed when it is whole', async () => {
  actions.createTrip({ ...longest(), gear: wholeDraft().gear })
  render(<SheetScreen onClose={() => {}} />)
  expect(drawn('.sheet-days tbody tr')).toBe(100)
  expect(screen.queryByRole('button', { name: 'Print' })).toBeNull()
  for (const days of [200, 300, 401])
    await waitFor(() => expect(drawn('.sheet-days tbody tr')).toBeGreaterThanOrEqual(days))
  await screen.findByRole('button', { name: 'Print' })
  expect(drawn('.sheet-days tbody tr')).toBe(401)
})

test('the sheet of very many things lays out the first of each place, and has all of them for the paper', async () => {
  const [item] = wholeDraft().gear
  const gear = Array.from({ length: 450 }, (_, i) => ({
    ...item!,
    id: `i${i}`,
    name: `Item ${i}`,
    stow: 'worn' as const,
  }))
  actions.createTrip({ ...wholeDraft(), gear })
  render(<SheetScreen onClose={() => {}} />)
  expect(drawn('.places tbody tr')).toBe(100)
  for (const things of [200, 300, 400, 450])
    await waitFor(() => expect(drawn('.places tbody tr')).toBeGreaterThanOrEqual(things))
  await screen.findByRole('button', { name: 'Print' })
  expect(drawn('.places tbody tr')).toBe(450)
  expect(drawn('.places tbody:not(.on-paper-only) tr')).toBe(300)
  screen.getByText('Here the first 300 items of each place are shown. All are printed.')
})

test('of very many trips More draws the first, and the open one', () => {
  for (let i = 1; i <= 120; i++) actions.createTrip({ ...emptyDraft(), name: `Many ${i}` })
  render(<Trips onClose={() => {}} />)
  expect(drawn('.trips > .row')).toBe(51)
  screen.getByRole('button', { name: 'Duplicate trip Many 120' })
  fireEvent.click(screen.getByRole('button', { name: 'Show 50 more trips' }))
  expect(drawn('.trips > .row')).toBe(101)
})

test('of 402 stops and 1,000 packs those near the window are drawn', () => {
  const packs = Array.from({ length: 1000 }, (_, i) => ({ ...pack!, id: `p${i}`, name: `Pack ${i}` }))
  actions.createTrip({ ...longest(), packs })
  render(<TripScreen detail={null} onDetail={() => {}} />)
  expect(drawn('.stops > .row')).toBeLessThan(60)
  cleanup()
  const { rerender } = render(<PacksScreen detail="packs/p900" />)
  expect(drawn('.row')).toBe(0)
  rerender(<PacksScreen detail={null} />)
  expect(drawn('.rows > .row')).toBeLessThan(60)
  // The way back finds the row it came from, wherever it lies.
  expect(drawn('#row-p900')).toBe(1)
  fireEvent.click(screen.getByRole('button', { name: 'Chart' }))
  expect(drawn('.pack-chart')).toBe(1)
  expect(drawn('.pack-chart *')).toBeLessThan(1000)
})
