// A trip of several people: kept, joined between tabs, in backups, erased with its trip; what was kept before opens, and an
// older app tells it to be newer. One hiker is reckoned as ever.

import { describe, expect, it } from 'vitest'
import { backupText } from '../../src/files/backup'
import { addPerson, type Draft, parsePlan, setField, settle, settleAny, withShared } from '../../src/plan'
import { planOfOne, reckon, reckonAsShared, reckonParty, sharedFrom } from '../../src/reckon'
import type { TripDocument } from '../../src/store/documents'
import { mergeTrips } from '../../src/store/merge-trips'
import { reckonOpen } from '../../src/store/reckoning'
import { headProblem, readRecord, TRIP } from '../../src/store/record-kinds'
import { runSharing } from '../../src/store/simulation'
import { family } from '../engine/family'
import { empty, opened } from '../files/backups'
import { wholeDraft } from '../plan/drafts'
import { newDevice, startTab } from './tab'

const tripOf = (draft: Draft, typed = {}): TripDocument => ({
  ...{ format: 'pack-reckoner/trip', version: 5, id: 'trip' },
  ...{ demo: false, changedAt: 1, revision: 1, draft: { ...draft, packs: [] }, typed },
})

const familyDraft = (): Draft => ({
  ...wholeDraft(),
  name: 'Family',
  carrier: {},
  people: family.people.map(({ pack: _pack, ...person }) => person),
  trip: { ...family.trip, stops: family.trip.stops.map((stop, i) => ({ ...stop, id: `s${i}` })) },
  gear: family.gear!.map(({ massKg, litres, ...item }) => ({
    ...item,
    ...(massKg != null && { massKg }),
    ...(litres != null && { litres }),
  })),
  packs: [],
})
const familyPlan = () => {
  const { plan } = settleAny(familyDraft())
  if (!('people' in plan)) throw new Error('no party')
  return plan
}

describe('documents', () => {
  it('of before open, and an app of before tells those of now to be newer', () => {
    const old = { ...tripOf(wholeDraft()), version: 4 }
    expect(readRecord(TRIP, old)).toEqual({ ok: true, value: { ...old, version: 5 } })
    const before = { ...TRIP, ladder: TRIP.ladder.slice(0, -1) }
    expect(headProblem(before, old)).toBeNull()
    expect(headProblem(before, tripOf(familyDraft()))).toMatchObject({ reason: 'newer' })
  })

  it('of several people come back from a backup as they were', () => {
    const trip = tripOf({ ...withShared(familyDraft(), { tent: 'bo' }), split: { by: 'cy' } })
    const found = opened(backupText({ ...empty(), trips: [trip] }, '2026-01-01'))
    expect(found.leftOut).toEqual([])
    expect(found.trips[0]!.draft).toEqual(trip.draft)
  })

  it('of two tabs are joined person by person, field by field, thing by thing', () => {
    const base = tripOf(withShared(familyDraft(), { tent: 'bo', stove: 'ada' }))
    const ours = { ...base, draft: setField(base.draft, 'people/cy/massKg', 35), changedAt: 2 }
    const theirs = {
      ...base,
      draft: addPerson(withShared(base.draft, { tent: 'cy', stove: 'ada' }), 'dee'),
      changedAt: 3,
    }
    const { trip, clashes } = mergeTrips({ base, ours, theirs })
    expect(clashes).toEqual([])
    expect(trip.draft.people!.map(({ id, massKg }) => [id, massKg])).toEqual([
      ['ada', 60],
      ['bo', 80],
      ['cy', 35],
      ['dee', undefined],
    ])
    expect(trip.draft.shared).toEqual({ tent: 'cy', stove: 'ada' })
  })

  it('are made in two tabs at once with one first person', () => {
    const base = tripOf(wholeDraft())
    const [ours, theirs] = ['x', 'y'].map(id => ({ ...base, draft: addPerson(base.draft, id), changedAt: 2 }))
    const { trip, clashes } = mergeTrips({ base, ours: ours!, theirs: theirs! })
    expect([clashes, trip.draft.people!.map(({ id }) => id)]).toEqual([[], ['first', 'x', 'y']])
  })
})

it('people are saved, and each step of them is undone and redone', async () => {
  const device = newDevice()
  const tab = await startTab(device)
  tab.actions.createTrip(wholeDraft())
  const before = tab.state.openTrip.peek()!.draft
  tab.actions.edit('Walk with somebody', draft => addPerson(draft, 'bo'))
  tab.actions.setField('people/bo/name', 'Bo', null)
  const after = tab.state.openTrip.peek()!.draft
  tab.actions.undo()
  tab.actions.undo()
  expect(tab.state.openTrip.peek()!.draft).toEqual(before)
  tab.actions.redo()
  tab.actions.redo()
  expect(tab.state.openTrip.peek()!.draft).toEqual(after)
  await tab.flush()
  expect((await startTab(device)).state.openTrip.peek()!.draft.people).toEqual(after.people)
})

describe('the open trip', () => {
  it('of one hiker is reckoned as ever, to the last bit', () => {
    const draft = wholeDraft()
    const { plan } = settle(draft)
    expect(reckonOpen(draft, {}, null)!.reckoned).toEqual(reckon(plan))
    expect(reckonOpen(draft, {}, 'nobody')).toMatchObject({ party: null, person: null })
  })

  it('of several is that of the one asked for, else of the first, with what they carry', () => {
    const draft = withShared(familyDraft(), { tent: 'bo', stove: 'cy' })
    const bo = reckonOpen(draft, {}, 'bo')!
    expect(bo.plan.gear.map(({ id }) => id)).toEqual(['bottle of bo', 'kit of bo', 'tent'])
    expect(bo.plan.carrier.massKg).toBe(80)
    expect(reckonOpen(draft, {}, 'nobody')!.person).toBe('ada')
  })

  it('tells each person the same as all together are told', () => {
    const plan = familyPlan()
    const found = reckonParty(plan)
    if (!found.ok) throw new Error('refused')
    const shared = sharedFrom(plan, found.party)
    expect(Object.keys(shared).sort()).toEqual(['food', 'rope', 'stove', 'tent'])
    const again = reckonAsShared(plan, shared)
    if (!again.ok) throw new Error('refused')
    expect(again.party.people).toEqual(found.party.people)
    for (const { id } of plan.people) {
      const open = reckonOpen(withShared(familyDraft(), shared), {}, id)!
      if (!open.reckoned.ok) throw new Error('refused')
      expect(open.reckoned.reckoning.need).toEqual(found.party.people.find(one => one.id === id)!.need)
    }
  })

  it('with each one’s own energy settles those who carry each other’s food together', () => {
    const gear = family.gear!.map(item =>
      item.use === 'daily' ? { ...item, owner: 'bo', shareable: true, kcalPerKg: 4000 } : item,
    )
    const own = { ...family, gear, trip: { ...family.trip, meals: { ration: 'energy' } } } as typeof family
    const shared = { food: 'ada', tent: 'bo', stove: 'bo', rope: 'ada' }
    const draft = withShared(
      {
        ...familyDraft(),
        gear: gear as Draft['gear'],
        trip: { ...familyDraft().trip, ...{ meals: own.trip.meals! } },
      },
      shared,
    )
    const ada = reckonOpen(draft, {}, 'ada')!
    const party = ada.party!.reckoning!
    if (!ada.reckoned.ok) throw new Error('refused')
    expect(ada.reckoned.reckoning.need).toEqual(party.people[0]!.need)
    expect(ada.reckoned.reckoning.moments[0]!.kg.daily).toBeGreaterThan(0)
  })

  it('of somebody without a body mass goes by mass', () => {
    const draft = setField(familyDraft(), 'people/cy/massKg', undefined)
    expect(reckonOpen(draft, {}, null)!.party).toMatchObject({
      withoutMass: ['cy'],
      plan: { split: { by: 'mass' } },
    })
  })
})

it('a person alone in a plan is reckoned as a lone hiker is', () => {
  const { people, gear, ...rest } = family
  const own = gear!.filter(({ owner }) => owner === 'ada' || owner === undefined)
  const one = settleAny({ ...familyDraft(), people: [people[0]!], gear: own as Draft['gear'] })
  const bare = own.map(({ owner: _owner, ...item }) => item)
  const alone = parsePlan({ ...rest, carrier: { massKg: 60, ageYears: 38 }, gear: bare })
  if (!alone.ok) throw new Error('refused')
  const [party, lone] = [reckon(planOfOne(one.plan, {})), reckon(alone.plan)]
  expect(party.ok && party.reckoning.need).toEqual(lone.ok && lone.reckoning.need)
})

it('sharing out never rejects: it says that it was cancelled, or that no worker starts', async () => {
  const aborted = new AbortController()
  aborted.abort()
  const asked = { plan: familyPlan(), signal: aborted.signal }
  expect(await runSharing(asked)).toEqual({
    ok: false,
    message: 'Cancelled: everything is carried as before.',
  })
  const startWorker = () => {
    throw new Error('none here')
  }
  const end = await runSharing({ plan: familyPlan(), signal: new AbortController().signal, startWorker })
  expect(end).toMatchObject({ ok: false, message: expect.stringMatching(/did not start/) })
})
