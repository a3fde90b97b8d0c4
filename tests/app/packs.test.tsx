// Choosing among packs: what would make one do, how far it reaches, and which stand where in the list.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import fc from 'fast-check'
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { type DraftPack, settle } from '../../src/plan'
import { applyRemedy, type Change, reckon, remediesFor, type TripChange } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { comparisonOf, NOT_BEATEN, reachInWords } from '../../src/report/compare-packs'
import { PacksScreen } from '../../src/screens/packs'
import { applyRemedyToDraft } from '../../src/screens/packs/apply-remedy'
import { AS_LISTED, inOrder, ORDERS, type Order, passes, view } from '../../src/screens/packs/view'
import { actions, loadEngine } from '../../src/store'
import { demoDraft, draft, judged, openDetails, openDraft, plain, withOnePack } from './compare-packs'

const noDetail = { detail: null, onDetail: () => undefined }
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
    render(<PacksScreen {...noDetail} />)
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
    render(<PacksScreen {...noDetail} />)
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
    render(<PacksScreen {...noDetail} />)
    openDetails(screen.getByText('What would make this pack work?'))
    expect(await screen.findByText(/You would count on Goat Well, marked doubtful/)).toBeTruthy()
    expect(screen.getAllByText('WARNING').length).toBeGreaterThan(0)
  })
})

describe('a pack that is only partly known', () => {
  test('without its mass is judged by its room, and says so', () => {
    openDraft(withOnePack(42, 20))
    actions.setField('packs/p/setups/s/massKg', undefined, null)
    render(<PacksScreen {...noDetail} />)
    expect(screen.getByText('Does not')).toBeTruthy()
    expect(screen.getByText('Too small')).toBeTruthy()
    expect(screen.getByText(/its mass is missing/i)).toBeTruthy()
  })

  test('without its litres is judged by its load, and says so', () => {
    openDraft(withOnePack(42, 9))
    actions.setField('packs/p/bodyLitres', undefined, null)
    render(<PacksScreen {...noDetail} />)
    expect(screen.getByText('Overloaded')).toBeTruthy()
    expect(screen.queryByText('Too small')).toBeNull()
    expect(screen.getByText(/main body litres are missing/)).toBeTruthy()
  })
})

describe('the order of packs', () => {
  const names = () => [...document.querySelectorAll('.row .name')].map(element => element.textContent)

  test('best first puts those that do before those that do not', () => {
    openDraft(demoDraft())
    view.value = { ...AS_LISTED, order: 'best' }
    render(<PacksScreen {...noDetail} />)
    expect(names()).toEqual(['Two-way with removable frame', 'Big old carrier', 'Small frameless'])
  })

  test('by price is cheapest first, and the filter leaves out what is dearer', () => {
    openDraft(demoDraft())
    view.value = { ...AS_LISTED, order: 'price', priceText: '240' }
    render(<PacksScreen {...noDetail} />)
    expect(names()).toEqual(['Big old carrier', 'Small frameless'])
    expect(screen.getByText(/2 of 3 packs shown/)).toBeTruthy()
  })

  test('stays as it was while one of them is being edited', async () => {
    openDraft(demoDraft())
    view.value = { ...AS_LISTED, order: 'mass' }
    const carrier = draft().packs[2]!
    render(<PacksScreen detail={`packs/${carrier.id}`} />)
    const before = names()
    actions.setField(`packs/${carrier.id}/setups/${carrier.setups[0]!.id}/massKg`, 0.1, null)
    expect(await screen.findByText(/75.0 L, 100/)).toBeTruthy()
    expect(names()).toEqual(before)
    cleanup()
    render(<PacksScreen {...noDetail} />)
    expect(names()[0]).toBe('Big old carrier')
  })

  test('never loses or doubles a pack, and puts what is not known last', () => {
    openDraft(demoDraft())
    const { plan, packIds, reckoning } = judged()
    const comparisons = comparisonOf(plan, reckoning, { massG: 1 })
    const of = (id: string) => comparisons.filter(c => packIds[c.pack] === id)
    const unknown: DraftPack = { id: 'x', setups: [{ id: 'y' }] }
    const orders = Object.keys(ORDERS) as Order[]
    const shuffled = fc.shuffledSubarray([...draft().packs, unknown], { minLength: 4 })
    fc.assert(
      fc.property(shuffled, fc.constantFrom(...orders), (packs, order) => {
        const sorted = inOrder(packs, order, of)
        expect(new Set(sorted)).toEqual(new Set(packs))
        expect(sorted).toHaveLength(packs.length)
        if (order === 'listed') expect(sorted).toEqual(packs)
        else expect(sorted.at(-1)).toBe(unknown)
      }),
    )
  })
})

describe('the filter', () => {
  const pack: DraftPack = {
    id: 'p',
    price: 200,
    setups: [
      { id: 'a', frame: 'framed', massKg: 1.2 },
      { id: 'b', frame: 'frameless', massKg: 0.8 },
    ],
  }
  const none = { price: undefined, massKg: undefined }

  test('asks frame and mass of one and the same set-up', () => {
    expect(passes(pack, { ...AS_LISTED, frame: 'framed' }, { ...none, massKg: 1 })).toBe(false)
    expect(passes(pack, { ...AS_LISTED, frame: 'frameless' }, { ...none, massKg: 1 })).toBe(true)
  })

  test('leaves out what is asked about and not known', () => {
    expect(passes({ id: 'q', setups: pack.setups }, AS_LISTED, { ...none, price: 500 })).toBe(false)
    expect(passes({ id: 'q', setups: pack.setups }, AS_LISTED, none)).toBe(true)
    expect(passes(pack, { ...AS_LISTED, sealed: true }, none)).toBe(false)
  })
})

describe('side by side', () => {
  test('the set-ups that no other beats are marked in words where that tells them from most others', () => {
    openDraft(demoDraft())
    const { plan, reckoning } = judged()
    expect(comparisonOf(plan, reckoning).filter(c => c.notBeaten)).toHaveLength(
      reckoning.packs.filter(({ suffices }) => suffices).length,
    )
    render(<PacksScreen {...noDetail} />)
    // Said of every one that is suitable it would tell none from the others.
    expect(screen.queryByText(NOT_BEATEN)).toBeNull()
    cleanup()

    const draft = demoDraft()
    const best = draft.packs.at(-1)!
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
    openDraft({ ...draft, packs: [...draft.packs, ...heavier] })
    const marked = comparisonOf(judged().plan, judged().reckoning).filter(c => c.notBeaten).length
    expect(marked).toBeGreaterThan(0)
    render(<PacksScreen {...noDetail} />)
    expect(screen.getAllByText(NOT_BEATEN)).toHaveLength(marked)
  })

  test('the pictures say every set-up in their key and in their table', () => {
    openDraft(demoDraft())
    render(<PacksScreen {...noDetail} />)
    expect(document.querySelector('svg[role="img"]')).toBeNull()
    openDetails(screen.getByText('Pictures'))
    const [room, price] = [...document.querySelectorAll('figure.chart')]
    const { reckoning } = judged()
    expect(room!.querySelectorAll('tbody tr')).toHaveLength(reckoning.packs.length)
    expect(room!.querySelectorAll('.chart-key strong')).toHaveLength(reckoning.packs.length)
    expect(price!.querySelectorAll('tbody tr')).toHaveLength(reckoning.packs.filter(p => p.suffices).length)
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
    render(<PacksScreen {...noDetail} />)
    openDetails(screen.getByText('How far it reaches'))
    const { plan, reckoning } = judged()
    const reach = reachInWords(plan, reckoning, { setupIndex: 0, formats })!
    expect(document.querySelectorAll('figure.chart tbody tr')).toHaveLength(reach.points.length)
    for (const { text } of reach.runs) expect(screen.getByText(plain(text))).toBeTruthy()
  })

  test('says so when even nothing on top is too much', () => {
    openDraft(withOnePack(3, 20))
    render(<PacksScreen {...noDetail} />)
    openDetails(screen.getByText('How far it reaches'))
    expect(screen.getByText(/^Not even without food and water/)).toBeTruthy()
  })
})
