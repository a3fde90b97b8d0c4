// What is noted of a trip on packing day, on the way and after: kept with it, joined between tabs, in backups, and told to
// an older app by its version. Documents as they were before are read.

import { describe, expect, test } from 'vitest'
import { backupText } from '../../src/files/backup'
import { type Draft, mark, setField, toPlanDocument } from '../../src/plan'
import type { TripDocument } from '../../src/store/documents'
import { mergeTrips } from '../../src/store/merge-trips'
import { headProblem, REMOVED, readRecord, TRIP, UNSAVED } from '../../src/store/record-kinds'
import { empty, opened } from '../files/backups'
import { wholeDraft } from '../plan/drafts'
import { newDevice, startTab } from './tab'

const tripOf = (draft: Draft, typed = {}): TripDocument => ({
  ...{ format: 'pack-reckoner/trip', version: 5, id: 'trip' },
  ...{ demo: false, changedAt: 1, revision: 1, draft: { ...draft, packs: [] }, typed },
})
const tick = (draft: Draft, id: string) => mark(draft, 'packed', id, true)

describe('documents of before', () => {
  const old = { ...tripOf(wholeDraft()), version: 3 }
  const unsaved = {
    ...{ format: 'pack-reckoner/parting', version: 4, shelf: null, steps: [] },
    trips: [{ document: old, over: [1] }],
  }
  test('are read, and are of this version then', () => {
    const now = { ...old, version: 5 }
    expect(readRecord(TRIP, old)).toEqual({ ok: true, value: now })
    const removed = { format: 'pack-reckoner/removed', version: 3, trip: old, at: 5, how: 'removed' }
    expect(readRecord(REMOVED, removed)).toEqual({ ok: true, value: { ...removed, version: 5, trip: now } })
    expect(readRecord(UNSAVED, unsaved)).toEqual({
      ok: true,
      value: { ...unsaved, version: 6, trips: [{ document: now, over: [1] }] },
    })
  })
  test('an app of before tells those of now to be newer', () => {
    const before = { ...TRIP, ladder: TRIP.ladder.slice(0, -1) }
    expect(headProblem(before, { ...old, version: 4 })).toBeNull()
    expect(headProblem(before, tripOf(wholeDraft()))).toMatchObject({ reason: 'newer' })
    const parting = { ...UNSAVED, ladder: UNSAVED.ladder.slice(0, -1) }
    expect(headProblem(parting, { ...unsaved, version: 6 })).toMatchObject({ reason: 'newer' })
  })
  test('a backup of before is read', () => {
    const text = JSON.stringify({
      ...{ format: 'pack-reckoner/backup', version: 2, savedOn: '2026-01-01' },
      ...{
        settings: empty().settings,
        shelf: { format: 'pack-reckoner/shelf', version: 3, ...empty().shelf },
      },
      trips: [old],
    })
    expect([opened(text).trips[0]!.draft.name, opened(text).leftOut]).toEqual(['Ridge', []])
  })
})

describe('ticks', () => {
  test('of two tabs are both there, and none is a clash', () => {
    const base = tripOf(wholeDraft())
    const { trip, clashes } = mergeTrips({
      base,
      ours: tripOf(tick(base.draft, 'food')),
      theirs: tripOf(tick(base.draft, 'box')),
    })
    expect([trip.draft.log, clashes]).toEqual([{ packed: { food: true, box: true } }, []])
  })

  test('outlast a reload, are undone one by one, and a copy of the trip begins anew', async () => {
    const device = newDevice()
    const tab = await startTab(device)
    const id = tab.actions.createTrip(wholeDraft())
    for (const item of ['food', 'box']) tab.actions.edit(`Pack ${item}`, draft => tick(draft, item))
    await tab.flush()
    const next = await startTab(device)
    const packed = () => next.state.openTrip.value?.draft.log?.packed
    expect(packed()).toEqual({ food: true, box: true })
    next.actions.undo()
    expect(packed()).toEqual({ food: true })
    const copy = next.actions.duplicateTrip(id)!
    expect(next.state.trips.value.get(copy)?.draft.log).toBeUndefined()
    next.actions.setField('log/weighedKg', undefined, 'about twelve')
    next.actions.setField('gear/food/massKg', undefined, 'some')
    const anew = next.actions.duplicateTrip(id)!
    expect(next.state.trips.value.get(anew)?.typed).toEqual({ 'gear/food/massKg': 'some' })
  })
})

describe('what is noted', () => {
  const noted = setField(tick(wholeDraft(), 'gone'), 'log/reached/nowhere', 600)
  test('goes into no plan', () => {
    expect(toPlanDocument(noted)).toEqual(toPlanDocument(wholeDraft()))
  })

  test('comes back from a backup with its unread text, without what no note can be', () => {
    const trips = [tripOf(noted, { 'log/weighedKg': 'about twelve' })]
    const [trip] = opened(backupText({ ...empty(), trips }, '2026-01-01')).trips
    expect([trip!.draft.log, trip!.typed]).toEqual([noted.log, trips[0]!.typed])
    const bad = {
      packed: { food: 'yes', box: true },
      weighedKg: 'heavy',
      reached: { a: 5000, b: 600 },
      left: 7,
    }
    const found = opened(
      backupText({ ...empty(), trips: [tripOf({ ...noted, log: bad as never })] }, '2026-01-01'),
    )
    expect(found.trips[0]!.draft.log).toEqual({ packed: { box: true }, reached: { b: 600 } })
    expect(found.leftOut).toHaveLength(1)
  })
})
