// What earlier versions of the app have stored: undo steps kept with each trip, and a page's last words of version 1.
// The records in fixtures/before-journal.json were written by that version.

import { keys, set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { contentsOf } from '../../src/store/journal'
import { difference, type Patch, patched } from '../../src/store/patch'
import { type Kind, REMOVED, readRecord, SHELF, STEP, TRIP, UNSAVED } from '../../src/store/record-kinds'
import { opened } from '../files/backups'
import { raw } from './copied'
import records from './fixtures/before-journal.json'
import { nameOf, names, newDevice, rename, startTab, type Tab, told } from './tab'

async function olderDevice() {
  const device = newDevice()
  for (const [key, value] of Object.entries(records)) await set(key, value, raw(device))
  return device
}
const draftOf = (tab: Tab, name: string) => tab.state.tripList.value.find(({ draft }) => draft.name === name)
const areas = async (tab: Tab) => new Set((await keys<string>(tab.use)).map(key => key.split('/')[0]))

describe('undo steps stored with each trip', () => {
  test.each(['at once', 'when they have been stored anew'])(
    'are steps of the one journal, all to be undone and redone by name and in order: %s',
    async when => {
      const device = await olderDevice()
      if (when !== 'at once') await startTab(device)
      const tab = await startTab(device)
      expect([names(tab), told(tab)]).toEqual([['Valley', 'Sea'], ''])
      expect(draftOf(tab, 'Sea')?.draft.trip.water).toEqual({ campLitres: 3 })
      expect(await areas(tab)).toEqual(new Set(['library', 'shelf', 'shelf-revision', 'step', 'trip']))
      const labels: (string | null)[] = []
      for (; tab.state.canUndo.value; tab.actions.undo()) labels.push(tab.state.lastLabel.value)
      expect(labels).toEqual(['Trip, name', 'Trip, name (in “Valley”)', 'Add item'])
      expect(names(tab)).toEqual(['Ridge', 'Lake'])
      expect(draftOf(tab, 'Ridge')?.draft.gear.some(({ id }) => id === 'map')).toBe(false)
      for (; tab.state.canRedo.value; tab.actions.redo()) labels.push(tab.state.redoLabel.value)
      expect(labels.slice(3).map(label => label?.replace(/ \(in.*/, ''))).toEqual([
        'Add item',
        'Trip, name',
        'Food, mass',
        'Trip, wet',
        'Trip, name',
      ])
      expect(draftOf(tab, 'Valley')).toMatchObject({
        draft: { trip: { wet: true } },
        typed: { 'gear/food/massKg': 'some' },
      })
      expect(names(tab)).toEqual(['Valley', 'Sea'])
    },
  )

  test('go on with what is done next', async () => {
    const device = await olderDevice()
    const tab = await startTab(device)
    rename(tab, 'Ocean')
    await tab.flush()
    const next = await startTab(device)
    next.actions.undo()
    next.actions.undo()
    expect(nameOf(next)).toBe('Lake')
  })

  test('two tabs that take them over at once make the same steps', async () => {
    const device = await olderDevice()
    device.channels.clear()
    const [a, b] = await Promise.all([startTab(device), startTab(device)])
    const ids = (tab: Tab) => tab.state.journal.value.map(({ id }) => id)
    expect(ids(a)).toEqual(ids(b))
    expect(ids(await startTab(device))).toEqual(ids(a))
    expect(ids(a)).toHaveLength(5)
  })
})

test('a page’s last words of version 1 are read as such of today, without shelf and steps', () => {
  const [stored] = Object.entries(records).flatMap(([key, value]) =>
    key.startsWith('parting') ? [value] : [],
  )
  const { trips } = stored as { trips: { document: object }[] }
  const climbed = trips.map(trip => ({ ...trip, document: { ...trip.document, version: 5 } }))
  expect(readRecord(UNSAVED, stored)).toEqual({
    ok: true,
    value: { ...stored, version: 6, trips: climbed, shelf: null, steps: [] },
  })
})

describe('a “no” to riding outside from before “nobody said” could be told from it', () => {
  const gear = [
    { id: 'a', mayRideOutside: false },
    { id: 'b', mayRideOutside: true },
    { id: 'c', name: 'mayRideOutside' },
  ]
  const forgotten = [{ id: 'a' }, ...gear.slice(1)]
  const draft = { ...emptyDraft(), gear }
  const trip = {
    ...{ format: 'pack-reckoner/trip', version: 1, id: 't', demo: false, changedAt: 1, revision: 1 },
    draft,
    typed: {},
  }
  const thing = { id: 'x', item: { mayRideOutside: false, massKg: 1 }, changed: { mayRideOutside: 5 } }
  const shelf = {
    ...{ format: 'pack-reckoner/shelf', version: 1, changedAt: 1, revision: 1, typed: {} },
    ...{ things: [thing], bases: [], packings: [] },
  }
  const read = <T>(kind: Kind<T>, stored: unknown): T => {
    const found = readRecord(kind, stored)
    if (!found.ok) throw new Error(found.message)
    return found.value
  }

  test('says nothing, in trips, removed trips and on the shelf', () => {
    expect(read(TRIP, trip)).toMatchObject({ version: 5, draft: { gear: forgotten } })
    const removed = { format: 'pack-reckoner/removed', version: 1, trip, at: 1, how: 'removed' }
    expect(read(REMOVED, removed)).toMatchObject({
      version: 5,
      trip: { version: 5, draft: { gear: forgotten } },
    })
    expect(read(SHELF, shelf).things[0]!.item).toEqual({ massKg: 1 })
  })

  test('leaves the steps that said it to be undone and redone', () => {
    const was = { ...draft, gear: [{ id: 'a', mayRideOutside: true }] }
    const patch = difference(
      contentsOf({ ...trip, draft: was }),
      contentsOf({ ...trip, draft: { ...was, gear: gear.slice(0, 1) } }),
    )
    const step = {
      ...{ format: 'pack-reckoner/step', version: 1, id: 's', label: 'l', at: 1, undone: false },
      parts: [{ on: 'trip', id: 't', patch }],
    }
    const { parts } = read(STEP, step)
    const climbed = { ...was, gear: [{ id: 'a' }] }
    const undone = patched(
      contentsOf({ ...trip, draft: climbed }),
      (parts[0] as { patch: Patch }).patch,
      'back',
    )
    expect(undone).toMatchObject({ draft: was })
  })

  test('is kept from now on', () => {
    expect(read(TRIP, { ...trip, version: 2 }).draft.gear).toEqual(gear)
    expect(read(SHELF, { ...shelf, version: 2 }).things[0]).toEqual(thing)
  })

  test('says nothing in an old backup either', () => {
    const backup = (version: number) => ({
      ...{ format: 'pack-reckoner/backup', version: 1, savedOn: '2026-01-01' },
      ...{ settings: { system: 'metric', theme: 'auto' }, trips: [{ ...trip, version }] },
      shelf: { ...shelf, version },
    })
    const of = (version: number) => {
      const found = opened(JSON.stringify(backup(version)))
      return [found.trips[0]!.draft.gear[0]!.mayRideOutside, found.shelf!.things[0]!.item.mayRideOutside]
    }
    expect([of(1), of(2)]).toEqual([
      [undefined, undefined],
      [false, false],
    ])
  })
})
