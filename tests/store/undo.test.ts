// Undo and redo over the open trip, the shelf and the list of trips together.

import fc from 'fast-check'
import { beforeEach, describe, expect, test } from 'vitest'
import { addItem, emptyDraft, mark, moveItem, removeItem } from '../../src/plan'
import { addThing, moveThing, packThings, removeThings, setThing, shelveItems } from '../../src/plan/shelf'
import { createActions } from '../../src/store/actions'
import { loadEngine } from '../../src/store/engine'
import { isNote } from '../../src/store/journal'
import { createState } from '../../src/store/state'
import { counter, wholeDraft } from '../plan/drafts'

let time = 0
let newId = counter('t')
// The words of fields come with it.
await loadEngine()

function fresh() {
  time = 1000
  newId = counter('t')
  const state = createState()
  return { state, actions: createActions(state, { now: () => time, newId }) }
}
let { state, actions } = fresh()
beforeEach(() => {
  ;({ state, actions } = fresh())
})

/** All that undo is to bring back, without what counts or dates it. */
function data() {
  const { things, bases, packings, typed } = state.shelf.value
  const trips = state.tripList.value.map(({ changedAt: _at, revision: _revision, ...trip }) => trip)
  return structuredClone({ trips, things, bases, packings, typed })
}
const names = () => state.tripList.value.map(({ draft }) => draft.name)
const thingNames = () => state.shelf.value.things.map(({ item }) => item.name)
const shelve = (name: string) =>
  actions.editShelf(`Add ${name}`, shelf => addThing(shelf, { newId, now: time }, { with: { name } }))
const undoAll = () => {
  for (let i = 0; i < 60 && state.canUndo.value; i++) actions.undo()
}
const redoAll = () => {
  for (let i = 0; i < 60 && state.canRedo.value; i++) actions.redo()
}

/** One thing a reader might do, chosen by numbers; what cannot be done now does nothing. */
function act(kind: number, n: number) {
  const pick = <T>(list: readonly T[]) => list[n % Math.max(1, list.length)]
  const gear = state.openTrip.value?.draft.gear ?? []
  const thing = pick(state.shelf.value.things)
  const trip = pick(state.tripList.value)
  const outside = { newId, now: time }
  const doings = [
    () => actions.createTrip({ ...wholeDraft(), name: `Trip ${n}` }),
    () => actions.edit('Add item', draft => addItem(draft, newId, { with: { name: `Item ${n}` }, at: n })),
    () => actions.edit('Remove item', draft => removeItem(draft, pick(gear)?.id ?? '')),
    () => actions.edit('Move item', draft => moveItem(draft, pick(gear)?.id ?? '', n % 4)),
    () => actions.setField(`gear/${pick(gear)?.id}/massKg`, n / 10, null),
    () => actions.setField(`gear/${pick(gear)?.id}/massKg`, undefined, `${n} stones`),
    () => shelve(`Thing ${n}`),
    () => actions.editShelf('Remove', shelf => removeThings(shelf, thing ? [thing.id] : [])),
    () => actions.editShelf('Move', shelf => moveThing(shelf, thing?.id ?? '', n % 3)),
    () => actions.editShelf('Note', shelf => setThing(shelf, thing?.id ?? '', { note: `${n}` }, time)),
    () => actions.setThingField(thing?.id ?? '', 'litres', n, null),
    () => actions.setThingField(thing?.id ?? '', 'massKg', undefined, `${n} stones`),
    () =>
      actions.editBoth('Shelve', ({ draft, shelf }) => ({
        draft: removeItem(draft, pick(gear)?.id ?? ''),
        shelf: shelveItems(shelf, gear.slice(0, 1), outside).shelf,
      })),
    () => actions.edit('Pack', draft => packThings(draft, thing ? [thing] : [], outside)),
    () => trip && actions.duplicateTrip(trip.id),
    () => trip && actions.removeTrip(trip.id),
    () => state.removedTrips.value[0] && actions.restoreTrip(state.removedTrips.value[0].trip.id),
    () => trip && actions.moveTrip(trip.id, n % 3),
    () => actions.openTripById(trip?.id ?? null),
    () => {
      time += n * 300
    },
  ]
  doings[kind % doings.length]!()
}

describe('one undo for all', () => {
  test('any doings in trips, shelf and list: all undone give the start, all redone the end', () => {
    const doing = fc.tuple(fc.nat(19), fc.nat(12))
    fc.assert(
      fc.property(fc.array(doing, { maxLength: 50 }), doings => {
        ;({ state, actions } = fresh())
        const start = data()
        for (const [kind, n] of doings) act(kind, n)
        const end = data()
        undoAll()
        expect(data()).toEqual(start)
        redoAll()
        expect(data()).toEqual(end)
        undoAll()
        expect(data()).toEqual(start)
      }),
    )
  })

  test('takes back the latest first, wherever it was made', () => {
    actions.createTrip({ ...emptyDraft(), name: 'Ridge' })
    actions.setField('name', 'Valley', null)
    shelve('Tent')
    actions.setField('trip/wet', true, null)
    const labels: (string | null)[] = []
    for (; state.canUndo.value; actions.undo()) labels.push(state.lastLabel.value)
    expect(labels).toEqual(['Trip, rain', 'Add Tent', 'Trip, name', 'Add trip “Ridge”'])
    expect(state.redoLabel.value).toBe('Add trip “Ridge”')
  })

  test('a tap that changes trip and shelf is one step', () => {
    actions.createTrip(wholeDraft())
    const before = data()
    actions.editBoth('Put on the shelf', ({ draft, shelf }) => ({
      draft: removeItem(draft, 'food'),
      shelf: shelveItems(shelf, draft.gear, { newId, now: time }).shelf,
    }))
    expect(thingNames()).toHaveLength(3)
    actions.undo()
    expect(data()).toEqual(before)
  })

  test('typing on in one field of a thing is one step; back to the start is none', () => {
    shelve('Tent')
    const { id } = state.shelf.value.things[0]!
    for (const value of [1, 12, 12.5]) {
      time += 1500
      actions.setThingField(id, 'massKg', value, null)
    }
    expect(state.lastLabel.value).toBe('Tent, mass (on the shelf)')
    expect(state.shelf.value.things[0]).toMatchObject({ item: { massKg: 12.5 }, changed: { massKg: time } })
    actions.undo()
    expect(state.shelf.value.things[0]!.item).toEqual({ name: 'Tent' })
    expect(state.lastLabel.value).toBe('Add Tent')

    actions.createTrip(wholeDraft())
    actions.setField('name', 'Ridges', null)
    actions.setField('name', 'Ridge', null)
    expect(state.lastLabel.value).toBe('Add trip “Ridge”')
  })

  test('unread text of a thing stands beside the missing value, and goes with its thing', () => {
    shelve('Tent')
    const { id } = state.shelf.value.things[0]!
    actions.setThingField(id, 'massKg', undefined, 'two stones')
    expect(state.shelf.value.typed).toEqual({ [`${id}/massKg`]: 'two stones' })
    actions.editShelf('Delete Tent', shelf => removeThings(shelf, [id]))
    expect(state.shelf.value.typed).toEqual({})
    actions.undo()
    expect(state.shelf.value.typed).toEqual({ [`${id}/massKg`]: 'two stones' })
  })

  test('an edit of nothing, or of a trip where none is open, is no step', () => {
    actions.editShelf('Nothing', shelf => ({ ...shelf }))
    actions.edit('Nothing', draft => draft)
    actions.editBoth('Nothing', both => both)
    actions.setThingField('gone', 'massKg', 1, null)
    actions.moveTrip('gone', 1)
    actions.removeTrip('gone')
    actions.restoreTrip('gone')
    expect(state.canUndo.value).toBe(false)
  })

  test('goes back fifty steps at most, over all', () => {
    actions.createTrip(wholeDraft())
    for (let i = 0; i < 30; i++) {
      shelve(`${i}`)
      actions.edit('Rename', draft => ({ ...draft, name: `${i}` }))
    }
    undoAll()
    expect([thingNames().length, state.openTrip.value?.draft.name]).toEqual([5, '4'])
    redoAll()
    expect([thingNames().length, state.openTrip.value?.draft.name]).toEqual([30, '29'])
  })
})

describe('steps that only note something', () => {
  const tick = (id: string) => actions.edit(`Pack ${id}`, draft => mark(draft, 'packed', id, true))
  const packed = () => Object.keys(state.openTrip.value?.draft.log?.packed ?? {}).length
  const undoAllOf = (most: number) => {
    for (let i = 0; i < most && state.canUndo.value; i++) actions.undo()
  }

  test('push out none of the fifty', () => {
    actions.createTrip(wholeDraft())
    for (let i = 0; i < 60; i++) {
      actions.edit('Rename', draft => ({ ...draft, name: `${i}` }))
      tick(`${i}`)
    }
    expect(packed()).toBe(60)
    undoAllOf(200)
    expect(state.openTrip.value?.draft.name).toBe('9')
    // Those before the first of the fifty went with the steps they were made between.
    expect(packed()).toBe(9)
  })

  test('are three hundred at most with them, the oldest first', () => {
    actions.createTrip(wholeDraft())
    for (let i = 0; i < 320; i++) tick(`${i}`)
    expect(state.journal.value).toHaveLength(300)
    undoAllOf(400)
    expect(packed()).toBe(20)
  })

  test('are no notes where they change more: the mass beside the log, or the text of a field', () => {
    actions.createTrip(wholeDraft())
    tick('food')
    actions.edit('Both', draft => mark({ ...draft, name: 'Other' }, 'packed', 'box', true))
    actions.setField('log/weighedKg', 12, null)
    actions.setField('gear/food/massKg', 0.9, null)
    expect(state.journal.value.map(isNote)).toEqual([false, true, false, true, false])
    const damaged = [null, {}, { keys: null }, { keys: [null] }, { keys: [['draft']] }, { list: null }]
    for (const patch of damaged)
      expect(isNote({ parts: [{ on: 'trip', id: 't', patch: patch as never }] })).toBe(false)
    expect(isNote({ parts: [] })).toBe(false)
  })
})

describe('removed trips', () => {
  test('the last ten are kept, the last one first, and each can be brought back, which can be undone', () => {
    const ids = Array.from({ length: 12 }, (_, i) =>
      actions.createTrip({ ...emptyDraft(), name: `Trip ${i}` }),
    )
    for (const id of ids) {
      time += 1000
      actions.removeTrip(id)
    }
    const offered = state.removedTrips.value.map(({ trip }) => trip.draft.name)
    expect(offered).toEqual([11, 10, 9, 8, 7, 6, 5, 4, 3, 2].map(n => `Trip ${n}`))
    actions.restoreTrip(ids[5]!)
    expect(names()).toEqual(['Trip 5'])
    expect(state.removedTrips.value).toHaveLength(10)
    expect(state.lastLabel.value).toBe('Bring back trip “Trip 5”')
    actions.undo()
    expect(names()).toEqual([])
  })

  test('those that undo reaches are kept longer, and are let go with their step', () => {
    const id = actions.createTrip({ ...emptyDraft(), name: 'First' })
    actions.removeTrip(id)
    for (let i = 0; i < 10; i++) actions.removeTrip(actions.createTrip(emptyDraft()))
    expect(state.removedTrips.value.some(({ trip }) => trip.id === id)).toBe(false)
    undoAll()
    redoAll()
    for (let i = 0; i < 20; i++) actions.undo()
    expect(names()).toEqual([])
    actions.undo()
    expect(names()).toEqual(['First'])
    redoAll()
    for (let i = 0; i < 50; i++) shelve(`${i}`)
    expect(state.removed.value.has(id)).toBe(false)
    expect(state.removed.value.size).toBe(10)
  })

  test('a trip whose making was undone is not among them', () => {
    actions.createTrip(emptyDraft())
    actions.undo()
    expect([names(), state.removedTrips.value]).toEqual([[], []])
    shelve('Tent')
    expect(state.removed.value.size).toBe(0)
  })

  test('undoing the making of a trip opens the one that was open before', () => {
    const first = actions.createTrip(emptyDraft())
    actions.createTrip(emptyDraft())
    actions.undo()
    expect(state.library.value.open).toBe(first)
    actions.redo()
    expect(state.library.value.open).not.toBe(first)
  })
})
