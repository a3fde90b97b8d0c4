// Choosing among packs: what would make one do, how far it reaches, and which stand where in the list.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { settle } from '../../src/plan'
import { applyRemedy, type Change, frontierOf, reckon, remediesFor, type TripChange } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { NOT_BEATEN, reachInWords, standingOut } from '../../src/report/compare-packs'
import { PacksScreen } from '../../src/screens/packs'
import { applyRemedyToDraft } from '../../src/screens/packs/apply-remedy'
import { AS_LISTED, view } from '../../src/screens/packs/view'
import { actions, loadEngine } from '../../src/store'
import { demoDraft, draft, judged, openDraft, pageOf, plain, withOnePack } from './compare-packs'
import { openDetails, openTables } from './details'

const noDetail = { detail: null }
const formats = formatsIn('metric')

beforeAll(loadEngine)
beforeEach(() => {
  view.value = AS_LISTED
})
afterEach(cleanup)

describe('a remedy carried out on the draft', () => {
  test.each([
    [42, 20],
    [41, 20],
    [42.5, 17],
    [55, 16],
    [40, 20],
  ])('makes a pack of %d L rated %d kg do as it was promised', (litres, ratedKg) => {
    const before = withOnePack(litres, ratedKg)
    const { plan } = settle(before)
    const reckoned = reckon(plan)
    if (!reckoned.ok) throw new Error('does not settle')
    const remedies = remediesFor(plan, reckoned.reckoning, 0)
    expect(remedies.length).toBeGreaterThan(0)
    for (const remedy of remedies) {
      if (remedy.kind === 'swap') throw new Error('from where?')
      const after = reckon(settle(applyRemedyToDraft(before, remedy)).plan)
      if (!after.ok) throw new Error('does not settle')
      expect(after.reckoning.packs[0]!.suffices).toBe(true)
      expect(after.reckoning.need.bodyLitres).toBeCloseTo(remedy.after.bodyLitres, 9)
      expect(after.reckoning.packs[0]!.carriedKg).toBeCloseTo(remedy.after.carriedKg, 9)
    }
  })

  const tripChanges: TripChange[] = [
    { kind: 'fewer-spare-rations', spareDays: 0.1, lessDays: 0.4 },
    { kind: 'trust-doubtful', stops: [3], caution: 'confirm-sources' },
    { kind: 'camp-at-water', from: 2, to: 1, nights: 1, longestDayHours: 9 },
    { kind: 'resupply', stop: 3, shop: false },
  ]
  test.each(tripChanges)('changes the trip as the engine does: $kind', change => {
    const before = demoDraft()
    const wanted = applyRemedy(settle(before).plan, change)
    expect(settle(applyRemedyToDraft(before, change)).plan).toEqual(wanted)
    expect(wanted).not.toEqual(settle(before).plan)
  })

  test('changes things and trip in one where both are needed', () => {
    const change: Change = { kind: 'combined', items: { move: ['jacket'], leave: [] }, trip: tripChanges[0]! }
    const gear = [{ id: 'jacket', name: 'Jacket', massKg: 1, litres: 1, inside: 'box' }]
    const after = applyRemedyToDraft({ ...demoDraft(), gear }, change)
    expect(after.gear).toEqual([
      { id: 'jacket', name: 'Jacket', massKg: 1, litres: 1, stow: 'outside-pocket' },
    ])
    expect(after.trip.meals?.spareDays).toBe(0.1)
  })

  test('changes nothing where the stop or thing is gone', () => {
    const before = demoDraft()
    expect(applyRemedyToDraft(before, { kind: 'resupply', stop: 99, shop: false })).toBe(before)
    expect(applyRemedyToDraft(before, { kind: 'leave', leave: ['nothing'], proven: true })).toBe(before)
  })
})

describe('under a set-up that fails', () => {
  test('nothing is worked out until it is asked for; then each remedy is one tap and one step back', async () => {
    openDraft(withOnePack(42, 20))
    render(<PacksScreen {...pageOf()} />)
    expect(screen.queryByText('Do it')).toBeNull()
    openDetails(screen.getByText('What would make this pack work?'))
    const first = await screen.findByRole('button', { name: /^Do it: .*leave Camp shoes at home/ })
    expect(
      screen.getByText(/^Move .*Rain jacket to pockets and leave Camp shoes at home: then /),
    ).toBeTruthy()
    fireEvent.click(first)
    expect(await screen.findByText(/^Does(,|$)/)).toBeTruthy()
    expect(screen.queryByText('What would make this pack work?')).toBeNull()
    const isHome = () => draft().gear.find(item => item.name === 'Camp shoes')?.atHome
    expect(isHome()).toBe(true)
    fireEvent.click(screen.getByText('Undo'))
    expect(await screen.findByText('Does not')).toBeTruthy()
    expect(isHome()).toBeUndefined()
  })

  test('it says what pack would do where nothing helps', async () => {
    openDraft(withOnePack(10, 3))
    render(<PacksScreen {...pageOf()} />)
    openDetails(screen.getByText('What would make this pack work?'))
    expect(
      await screen.findByText(/^No small change makes this pack work nine times in ten. Look for/),
    ).toBeTruthy()
  })

  test('the warning stands with a remedy that trusts a doubtful source', async () => {
    // Less is carried to Goat Well when it counts: a rating in between is borne only then.
    const demo = withOnePack(60, 20)
    const trip = { ...demo.trip, water: { ...demo.trip.water, campLitres: 1 } }
    const start = { ...demo, trip }
    const peak = (trustDoubtful: boolean) => {
      const found = reckon(
        settle({ ...start, trip: { ...trip, water: { ...trip.water, trustDoubtful } } }).plan,
      )
      if (!found.ok) throw new Error('does not settle')
      return found.reckoning.packs[0]!.carriedKg
    }
    expect(peak(true)).toBeLessThan(peak(false))
    const ratedKg = (peak(true) + peak(false)) / 2
    const [pack] = start.packs
    const packs = [{ ...pack!, setups: [{ ...pack!.setups[0]!, ratedKg }] }]
    openDraft({ ...start, packs })
    render(<PacksScreen {...pageOf()} />)
    openDetails(screen.getByText('What would make this pack work?'))
    expect(await screen.findByText(/You would count on Goat Well, marked doubtful/)).toBeTruthy()
    expect(screen.getAllByText('WARNING').length).toBeGreaterThan(0)
  })
})

describe('a pack that is only partly known', () => {
  test('without its mass is judged by its room, and says so', () => {
    openDraft(withOnePack(42, 20))
    actions.setField('packs/p/setups/s/massKg', undefined, null)
    render(<PacksScreen {...pageOf()} />)
    expect(screen.getByText('Does not')).toBeTruthy()
    expect(screen.getByText('Too small')).toBeTruthy()
    expect(screen.getByText(/its mass is missing/i)).toBeTruthy()
  })

  test('without its litres is judged by its load, and says so', () => {
    openDraft(withOnePack(42, 9))
    actions.setField('packs/p/bodyLitres', undefined, null)
    render(<PacksScreen {...pageOf()} />)
    expect(screen.getByText('Overloaded')).toBeTruthy()
    expect(screen.queryByText('Too small')).toBeNull()
    expect(screen.getByText(/main body litres are missing/)).toBeTruthy()
  })
})

describe('side by side', () => {
  test('the set-ups that no other beats are marked in words where that tells them from most others', () => {
    openDraft(demoDraft())
    const { plan, reckoning } = judged()
    expect(frontierOf(reckoning, plan).filter(Boolean)).toHaveLength(
      reckoning.packs.filter(({ suffices }) => suffices).length,
    )
    const marks = () =>
      draft().packs.reduce((count, _, index) => {
        const { unmount } = render(<PacksScreen {...pageOf(index)} />)
        const here = screen.queryAllByText(NOT_BEATEN).length
        unmount()
        return count + here
      }, 0)
    // Said of every one that is suitable it would tell none from the others.
    expect(marks()).toBe(0)

    const demo = demoDraft()
    const best = demo.packs.at(-1)!
    const heavier = [1, 2, 3].map(more => ({
      ...best,
      id: `heavier-${more}`,
      name: `Heavier ${more}`,
      setups: best.setups.map(setup => ({
        ...setup,
        id: `${setup.id}-${more}`,
        massKg: setup.massKg! + more / 10,
      })),
    }))
    openDraft({ ...demo, packs: [...demo.packs, ...heavier] })
    const marked = standingOut(judged().plan, judged().reckoning).filter(Boolean).length
    expect(marked).toBeGreaterThan(0)
    expect(marks()).toBe(marked)
  })

  test('the chart says every set-up in its table, and how many there are of each answer in a sentence', () => {
    openDraft(demoDraft())
    render(<PacksScreen {...noDetail} />)
    expect(document.querySelector('svg[role="img"]')).toBeNull()
    fireEvent.click(screen.getByRole('button', { name: 'Chart' }))
    const { reckoning } = judged()
    const chart = screen.getByRole('region', { name: 'Chart' })
    expect(chart.querySelectorAll('tbody tr')).toHaveLength(0)
    openTables()
    expect(chart.querySelectorAll('tbody tr')).toHaveLength(reckoning.packs.length)
    const does = reckoning.packs.filter(({ answer }) => answer === 'does').length
    expect(chart.textContent).toContain(`Of ${reckoning.packs.length} set-ups: ${does} do`)
    expect(screen.getByRole('img', { name: /This trip asks for [\d.]+.L, [\d.]+.kg/ })).toBeTruthy()
  })
})

describe('how far a set-up reaches', () => {
  test('is said for every run of its edge, and each stretch is within or beyond it', () => {
    openDraft(demoDraft())
    const { plan, reckoning } = judged()
    const reach = reachInWords(plan, reckoning, { setupIndex: 1, formats })!
    expect(reach.runs.map(run => run.text)).toEqual([
      expect.stringMatching(/^Up to 6.0.L of water: .* stopped by its rating\.$/),
    ])
    expect(reach.stretches.map(stretch => stretch.within)).toEqual([true, true])
    const small = reachInWords(plan, reckoning, { setupIndex: 0, formats })!
    expect(small.stretches.map(stretch => stretch.within)).toEqual([false, false])
  })

  test('is drawn only once it is asked for, with a row of the table for each point', () => {
    openDraft(withOnePack(55, 20))
    render(<PacksScreen {...pageOf()} />)
    openDetails(screen.getByText('How far it reaches'))
    const { plan, reckoning } = judged()
    const reach = reachInWords(plan, reckoning, { setupIndex: 0, formats })!
    openTables()
    expect(document.querySelectorAll('figure.chart tbody tr')).toHaveLength(reach.points.length)
    for (const { text } of reach.runs) expect(screen.getByText(plain(text))).toBeTruthy()
  })

  test('says so when even nothing on top is too much', () => {
    openDraft(withOnePack(3, 20))
    render(<PacksScreen {...pageOf()} />)
    openDetails(screen.getByText('How far it reaches'))
    expect(screen.getByText(/^Not even without food and water/)).toBeTruthy()
  })
})
