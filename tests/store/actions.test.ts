import { beforeEach, describe, expect, test } from 'vitest'
import { addItem, emptyDraft, removeItem } from '../../src/plan'
import { createActions } from '../../src/store/actions'
import { loadEngine } from '../../src/store/engine'
import { createState } from '../../src/store/state'
import { counter, wholeDraft } from '../plan/drafts'

let time = 0
function fresh() {
  const state = createState()
  const actions = createActions(state, { now: () => time, newId: counter('t') })
  return { state, actions }
}
let { state, actions } = fresh()
const draft = () => state.openTrip.value?.draft

beforeEach(() => {
  time = 1000
  ;({ state, actions } = fresh())
  actions.createTrip(wholeDraft())
})

// The engine is fetched on demand in the app.
await loadEngine()

test('the list of trips stays the same list while one moves about', () => {
  const list = state.tripList.value
  actions.setPlace({ screen: 'shop', detail: null, scrollY: 7 })
  expect(state.tripList.value).toBe(list)
  state.library.value = { ...state.library.value, order: [...state.library.value.order] }
  expect(state.tripList.value).toBe(list)
  actions.createTrip(emptyDraft())
  expect(state.tripList.value).toHaveLength(2)
})

describe('undo', () => {
  test('takes back an edit and redo brings it again, each by its name', () => {
    actions.edit('Add item', draft => addItem(draft, counter('i')))
    expect([state.canUndo.value, state.lastLabel.value]).toEqual([true, 'Add item'])
    const after = draft()
    actions.undo()
    expect(draft()).toEqual(wholeDraft())
    expect([state.lastLabel.value, state.canRedo.value]).toEqual(['Add trip “Ridge”', true])
    actions.redo()
    expect(draft()).toEqual(after)
    expect([state.lastLabel.value, state.canRedo.value]).toEqual(['Add item', false])
  })

  test('typing on in one field within two seconds is one step', () => {
    for (const [at, value] of [
      [1000, 1],
      [2500, 12],
      [4500, 12.5],
    ] as const) {
      time = at
      actions.setField('gear/food/massKg', value, null)
    }
    expect(state.lastLabel.value).toBe('Food, mass')
    actions.undo()
    expect(draft()).toEqual(wholeDraft())
    expect(state.lastLabel.value).toBe('Add trip “Ridge”')
  })

  test('a pause, another field, or an undo in between starts a new step', () => {
    const steps = () => state.journal.value.filter(({ undone }) => !undone).length - 1
    actions.setField('gear/food/massKg', 1, null)
    time += 2001
    actions.setField('gear/food/massKg', 2, null)
    expect(steps()).toBe(2)
    actions.setField('gear/box/massKg', 2, null)
    expect(steps()).toBe(3)
    actions.undo()
    actions.setField('gear/food/massKg', 3, null)
    expect(steps()).toBe(3)
  })

  test('a new edit makes what was undone final', () => {
    actions.setField('name', 'A', null)
    actions.undo()
    actions.edit('x', draft => ({ ...draft, name: 'B' }))
    expect(state.canRedo.value).toBe(false)
  })

  test('goes back fifty steps at most', () => {
    for (let i = 0; i < 60; i++) actions.edit(`${i}`, draft => ({ ...draft, name: `${i}` }))
    for (let i = 0; i < 60; i++) actions.undo()
    expect(draft()?.name).toBe('9')
  })

  test('an edit that changes nothing is no step', () => {
    actions.edit('nothing', draft => removeItem(draft, 'gone'))
    actions.setField('gear/food/massKg', 0.7, null)
    expect(state.lastLabel.value).toBe('Add trip “Ridge”')
  })

  test('of an edit in another trip opens that trip, and its name is in the label', () => {
    actions.setField('name', 'A', null)
    actions.createTrip(emptyDraft())
    const other = state.library.value.open!
    actions.edit('Wet', draft => ({ ...draft, trip: { ...draft.trip, wet: true } }))
    actions.openTripById('t1')
    expect(state.lastLabel.value).toBe('Wet (in “Trip”)')
    actions.undo()
    expect(state.storedOpen.value).toMatchObject({ id: other, draft: emptyDraft() })
  })
})

describe('typed text', () => {
  test('stands beside the missing value, and goes with it on undo', () => {
    actions.setField('gear/food/massKg', undefined, '7 hundred')
    expect(state.openTrip.value?.typed).toEqual({ 'gear/food/massKg': '7 hundred' })
    expect(draft()?.gear[0]).not.toHaveProperty('massKg')
    expect(state.reckoned.value?.leftOut.map(({ path }) => path)).toEqual(['gear/food/massKg'])
    actions.undo()
    expect(state.openTrip.value?.typed).toEqual({})
    expect(state.reckoned.value?.leftOut).toEqual([])
  })

  test('goes when its thing goes, and comes back with it', () => {
    actions.setField('gear/food/massKg', undefined, 'x')
    actions.edit('Remove', draft => removeItem(draft, 'food'))
    expect(state.openTrip.value?.typed).toEqual({})
    actions.undo()
    expect(state.openTrip.value?.typed).toEqual({ 'gear/food/massKg': 'x' })
  })
})

describe('trips', () => {
  test('a removed trip comes back where it was, open and with its history', () => {
    actions.setField('name', 'First', null)
    actions.createTrip(emptyDraft(), { demo: true })
    actions.openTripById('t1')
    const before = { order: state.library.value.order, trip: state.openTrip.value }
    actions.removeTrip('t1')
    expect(state.openTrip.value).toBeNull()
    expect(state.tripList.value).toHaveLength(1)
    actions.undo()
    expect({ order: [...state.library.value.order].sort(), trip: state.openTrip.value }).toEqual(before)
    expect(state.canUndo.value).toBe(true)
    expect(state.removedTrips.value).toEqual([])
  })

  test('a removed first trip goes back to the first place', () => {
    const second = actions.createTrip(emptyDraft())
    actions.removeTrip('t1')
    actions.undo()
    expect(state.library.value.order).toEqual(['t1', second])
  })

  test('a copy is a trip of its own after its original, and no demo', () => {
    const demo = actions.createTrip(emptyDraft(), { demo: true })
    const id = actions.duplicateTrip(demo)!
    actions.duplicateTrip('t1')
    expect(state.tripList.value.map(({ draft, demo }) => [draft.name, demo])).toEqual([
      ['Ridge', false],
      ['Ridge (copy)', false],
      [undefined, true],
      ['Trip (copy)', false],
    ])
    expect(state.library.value.open).toBe(demo)
    expect(actions.duplicateTrip('gone')).toBeNull()
    expect(state.trips.value.get(id)?.draft).toEqual({ ...emptyDraft(), name: 'Trip (copy)' })
  })

  test('the open trip is reckoned', () => {
    expect(state.reckoned.value?.reckoned.ok).toBe(true)
    actions.openTripById(null)
    expect(state.reckoned.value).toBeNull()
  })
})

describe('the terrain of a track', () => {
  const profile = [
    { km: 0, eleM: 400 },
    { km: 2, eleM: null },
    { km: 3, eleM: 520.5 },
  ]

  test('is kept with the open trip, changes nothing that is reckoned, and can be forgotten', () => {
    const before = { trip: state.openTrip.value!, reckoned: state.reckoned.value }
    actions.setProfile(profile)
    expect(state.openTrip.value).toEqual({
      ...before.trip,
      profile,
      changedAt: expect.any(Number),
    })
    expect(state.openTrip.value!.changedAt).toBeGreaterThan(before.trip.changedAt)
    expect(state.reckoned.value).toBe(before.reckoned)
    actions.setProfile(null)
    expect(state.openTrip.value).not.toHaveProperty('profile')
  })

  test('goes into a copy of the trip, and stays through edits and undo', () => {
    actions.setProfile(profile)
    actions.setField('name', 'A', null)
    actions.undo()
    expect(state.openTrip.value?.profile).toEqual(profile)
    const id = actions.duplicateTrip('t1')!
    expect(state.trips.value.get(id)?.profile).toEqual(profile)
  })

  test('is nothing without an open trip', () => {
    actions.openTripById(null)
    actions.setProfile(profile)
    expect(state.trips.value.get('t1')).not.toHaveProperty('profile')
  })
})
