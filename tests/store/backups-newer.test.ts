// A backup taken in where what is here is newer, was not read yet, or cannot be read: none of that is lost.

import { get, set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { opened } from '../files/backups'
import { wholeDraft } from '../plan/drafts'
import { keptTab, MERGE, unreadTab, withTrips } from './kept'
import { names, rename, told, turns } from './tab'

describe('what is newer than the file', () => {
  test('made or edited in another tab while the file was looked at, stays', async () => {
    const one = await keptTab()
    const two = await keptTab(one.device)
    one.actions.createTrip({ ...wholeDraft(), name: 'Ridge' })
    await one.flush()
    await turns()
    // The snapshot takes a while, and the other tab is quick.
    one.faults.write = async () => {
      two.actions.openTripById(two.state.library.value.order[0]!)
      rename(two, 'Ridge, edited')
      two.actions.createTrip({ ...wholeDraft(), name: 'Made meanwhile' })
      await two.flush()
      await turns()
    }
    await one.backups.takeIn(opened((await withTrips()).text()), MERGE, 'Backup merged')
    const all = ['Ridge, edited', 'Made meanwhile', 'Ridge', 'Lake', 'Moor']
    expect(names(one)).toEqual(all)
    await one.flush()
    expect(names(await keptTab(one.device))).toEqual(all)
  })

  test('stays when the backup is taken out again', async () => {
    const kept = await withTrips()
    const other = await keptTab()
    other.actions.createTrip({ ...wholeDraft(), name: 'Coast' })
    const taken = await kept.backups.takeIn(opened(other.text()), MERGE, 'Backup merged')
    rename(kept, 'Renamed')
    kept.actions.createTrip({ ...wholeDraft(), name: 'Made since' })
    const shelved = { id: 't', item: { name: 'Tent' }, changed: {} }
    kept.actions.editShelf('Add', shelf => ({ ...shelf, things: [shelved] }))
    kept.clock.at += 1000
    await taken.putBack()
    expect(names(kept)).toEqual(['Ridge', 'Lake', 'Renamed', 'Made since'])
    expect(kept.state.shelf.value.things).toEqual([shelved])
    expect((await kept.backups.snapshots.list()).map(({ head }) => head?.back)).toEqual([true, undefined])
  })

  test('but not read yet is waited for', async () => {
    const first = await withTrips()
    const coming = (await withTrips()).text()
    const kept = unreadTab(first.device)
    await expect(kept.backups.takeIn(opened(coming), MERGE, 'Backup merged')).rejects.toThrow(
      'still being read',
    )
    await kept.flush()
    expect(names(kept)).toEqual(['Ridge', 'Lake', 'Moor'])
  })

  test('in a database that answers late is neither replaced nor lost', async () => {
    const first = await withTrips()
    const old = first.text()
    rename(first, 'Newest')
    await first.flush()
    let isOpen = false
    const kept = await keptTab(first.device, {
      through: use => (mode, work) =>
        isOpen ? use(mode, work) : Promise.reject(new DOMException('', 'UnknownError')),
    })
    await kept.backups.takeIn(opened(old), MERGE, 'Backup merged')
    isOpen = true
    await kept.flush()
    await kept.flush()
    expect(names(kept)).toEqual(expect.arrayContaining(['Newest', 'Moor', 'Ridge', 'Lake']))
    expect(names(await keptTab(first.device))).toContain('Newest')
  })

  test('of a removed trip comes back by undo, and the file’s state by redo', async () => {
    const kept = await keptTab()
    const id = kept.actions.createTrip({ ...wholeDraft(), name: 'Old' })
    const file = opened(kept.text())
    rename(kept, 'Newest')
    kept.actions.removeTrip(id)
    await kept.backups.takeIn(file, MERGE, 'Backup merged')
    expect(names(kept)).toEqual(['Old'])
    kept.actions.undo()
    expect(names(kept)).toEqual([])
    kept.actions.undo()
    expect(names(kept)).toEqual(['Newest'])
    kept.actions.redo()
    kept.actions.redo()
    expect(names(kept)).toEqual(['Old'])
    await kept.flush()
    expect(names(await keptTab(kept.device))).toEqual(['Old'])
  })
})

test('a trip of the file whose own record is damaged or newer gets a place of its own, and is kept', async () => {
  for (const version of [1, 9]) {
    const first = await keptTab()
    const id = first.actions.createTrip({ ...wholeDraft(), name: 'Ridge' })
    const file = opened(first.text())
    await first.flush()
    first.close()
    const broken = { format: 'pack-reckoner/trip', version, id, broken: true }
    await set(`trip/${id}`, broken, first.use)
    const kept = await keptTab(first.device)
    expect(told(kept)).not.toBe('')
    await kept.backups.takeIn(file, MERGE, 'Backup merged')
    rename(kept, 'Edited')
    await kept.flush()
    expect(kept.state.saveState.value.kind).toBe('saved')
    expect(names(await keptTab(first.device))).toEqual(['Edited'])
    expect(await get(`trip/${id}`, first.use)).toEqual(broken)
  }
})
