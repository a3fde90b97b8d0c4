// Row, count, chart and table say one and the same of a pack, of one that lacks a figure too.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { formatsIn, missingOf } from '../../src/report'
import { comparisonOf } from '../../src/report/compare-packs'
import { PacksScreen } from '../../src/screens/packs'
import { markArea } from '../../src/screens/packs/chart'
import { AS_ANSWERED, order } from '../../src/screens/packs/table/order'
import { AS_LISTED, isOfATrip, ORDERS, type Order, orderFigure, view } from '../../src/screens/packs/view'
import { actions, loadEngine } from '../../src/store'
import { demoDraft, draft, judged, openDraft, plain, rowWords, withOnePack } from './compare-packs'
import { openDetails } from './details'

beforeAll(loadEngine)
beforeEach(() => {
  view.value = AS_LISTED
  order.value = AS_ANSWERED
  markArea(null)
})
afterEach(cleanup)

const [ONE] = withOnePack(60, 40).packs
const framed = { frame: 'framed' as const }
const LACKING = { id: 'open', name: 'Open', setups: [{ ...framed, id: 'o', massKg: 1, ratedKg: 5 }] }
const WEIGHTLESS = {
  ...LACKING,
  id: 'w',
  name: 'W',
  bodyLitres: 60,
  setups: [{ ...framed, id: 'v', ratedKg: 5 }],
}
const lines = () => [...document.querySelectorAll('[data-row]')].map(row => plain(row.textContent!))
const tap = (name: RegExp) =>
  fireEvent.click(within(screen.getByRole('group', { name: 'Show only' })).getByRole('button', { name }))

test('an overloaded pack without litres does not, in its row and in the table, and its count shows it', () => {
  openDraft({ ...demoDraft(), packs: [ONE!, LACKING] })
  const { unmount } = render(<PacksScreen detail={null} />)
  expect(rowWords()[1]).toMatch(/^does not: \d.* over$/)
  unmount()
  render(<PacksScreen detail={null} isDesk />)
  expect(lines()).toHaveLength(2)
  expect(lines()[1]).toMatch(/^×Open ?Does not: \d.* over/)
  tap(/1 do not$/)
  expect(lines()).toHaveLength(1)
  expect(lines()[0]).toContain('Open')
})

test('how much too heavy a pack is that nobody has weighed is told as the least', () => {
  openDraft({ ...demoDraft(), packs: [ONE!, WEIGHTLESS] })
  const { unmount } = render(<PacksScreen detail={null} />)
  expect(rowWords()[1]).toMatch(/^does not: at least \d.* over$/)
  unmount()
  render(<PacksScreen detail="packs/w" />)
  expect(plain(document.body.textContent!)).toMatch(
    /Overloaded by at least [\d.]+ kg .*: at least [\d.]+ kg of/,
  )
})

test('the table has only the set-ups that the filter asks for', () => {
  openDraft(demoDraft())
  view.value = { ...AS_LISTED, frame: 'frameless' }
  render(<PacksScreen detail={null} isDesk />)
  const frameless = draft().packs.flatMap(({ setups }) => setups.filter(({ frame }) => frame === 'frameless'))
  expect(frameless.length).toBeGreaterThan(0)
  expect(lines()).toHaveLength(frameless.length)
})

test('a count is the number of packs that its tap shows, where some are set aside', () => {
  const aside = { ...ONE!, id: 'x', name: 'Left', aside: 'too hot' }
  openDraft({ ...demoDraft(), packs: [ONE!, aside, LACKING] })
  render(<PacksScreen detail={null} />)
  tap(/1 do$/)
  expect(rowWords()).toHaveLength(1)
})

test('what is given on is what the table shows', async () => {
  openDraft({ ...demoDraft(), packs: [ONE!, { ...ONE!, id: 'small', name: 'Small', bodyLitres: 20 }] })
  render(<PacksScreen detail={null} isDesk />)
  openDetails(screen.getByText('Show a part only'))
  fireEvent.input(screen.getByRole('textbox', { name: /^Main body, from/ }), { target: { value: '50' } })
  expect(lines()).toHaveLength(1)
  fireEvent.click(screen.getByText('Give packs on'))
  expect(await screen.findByText(/^1 pack: those that are shown now/)).toBeTruthy()
})

test('the figure sorted by says what missing masses leave open, and nothing of a trip without gear', () => {
  const figures = (gear: ReturnType<typeof demoDraft>['gear']) => {
    openDraft({ ...withOnePack(60, 5), gear })
    const { plan, reckoning } = judged()
    const about = { pack: draft().packs[0]!, comparisons: comparisonOf(plan, reckoning) }
    const context = { formats: formatsIn('metric'), missing: missingOf(plan) }
    return (['spare-kg', 'carried'] as const).map(by => plain(orderFigure(by, about, context) ?? 'not known'))
  }
  const { gear } = demoDraft()
  expect(figures(gear)).toEqual([
    expect.stringMatching(/^[\d.]+ kg over$/),
    expect.stringMatching(/^[\d.]+ kg$/),
  ])
  expect(figures([...gear, { id: 'tarp', name: 'Tarp' }])).toEqual([
    expect.stringMatching(/^at least [\d.]+ kg over$/),
    expect.stringMatching(/^at least [\d.]+ kg$/),
  ])
  expect(figures([])).toEqual(['not known', 'not known'])
  expect((Object.keys(ORDERS) as Order[]).filter(isOfATrip)).toEqual(['best', 'carried', 'spare-kg'])
})

test('apart from a trip the chart and its table have no answers', () => {
  actions.editShelf('Fill', list => ({ ...list, packs: [ONE!, LACKING] }))
  actions.setPlace({ screen: 'own-packs', detail: null, scrollY: 0 })
  render(<PacksScreen detail={null} />)
  fireEvent.click(screen.getByRole('button', { name: 'Chart' }))
  const chart = plain(screen.getByRole('region', { name: 'Chart' }).textContent!)
  expect(chart).not.toMatch(/can’t|judged yet|Answer| do /)
})
