import fc from 'fast-check'
import { set } from 'idb-keyval'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { backupText, restored } from '../../src/files/backup'
import { backupsChanged, dueBackup, snapshotProblem } from '../../src/store/backup-signals'
import { inTurn } from '../../src/store/in-turn'
import { createBackups } from '../../src/store/lazy/backups'
import { anyContents, empty, opened } from '../files/backups'
import { wholeDraft } from '../plan/drafts'
import { fileOf, keptTab, MERGE, REPLACE, withTrips } from './kept'
import { names, newDevice, rename } from './tab'

const DAY_MS = 86_400_000

beforeEach(() => {
  dueBackup.value = null
  snapshotProblem.value = null
})

/** Ids that were made here, which differ from one time to the next. */
const withoutIds = (text: string) => text.replace(/"id\d+"/g, '"id"')

describe('a backup taken in', () => {
  test('saved, wiped, taken in and saved again is the same to the byte, also after a reload', async () => {
    const first = await withTrips()
    first.actions.editShelf('Add', shelf => ({
      ...shelf,
      things: [{ id: 't', item: { name: 'Tent', massKg: 1 }, changed: { massKg: 5 } }],
    }))
    const text = await (await first.backups.file()).text.text()
    const next = await keptTab()
    await next.backups.takeIn(opened(text), MERGE, 'Backup merged')
    expect(next.text()).toBe(first.text())
    expect(next.state.openTrip.value?.draft.name).toBe('Ridge')
    await next.flush()
    expect((await keptTab(next.device)).text()).toBe(first.text())
  })

  test('is put back as it was, names, order, settings and all, whatever came', async () => {
    const kept = await withTrips()
    const before = kept.text()
    await fc.assert(
      fc.asyncProperty(anyContents, fc.boolean(), async (other, replace) => {
        const file = opened(backupText(other, '2026-01-01'))
        const wishes = replace ? REPLACE : MERGE
        const next = restored(kept.backups.contents(), file, wishes, kept.newId)
        const taken = await kept.backups.takeIn(file, wishes, 'Backup')
        expect(withoutIds(kept.text())).toBe(withoutIds(backupText(next, '2026-01-01')))
        await taken.putBack()
        expect(kept.text()).toBe(before)
      }),
      { numRuns: 60 },
    )
    await kept.flush()
    expect((await keptTab(kept.device)).text()).toBe(before)
  })

  test('is one step to undo and to redo', async () => {
    const kept = await withTrips()
    const here = kept.backups.contents()
    const before = JSON.stringify([here.trips, here.shelf.things].map(list => list.map(({ id }) => id)))
    const other = await withTrips()
    other.actions.editShelf('Add', shelf => ({ ...shelf, things: [{ id: 't', item: {}, changed: {} }] }))
    const changed = { ...here.trips[1]!, draft: { ...here.trips[1]!.draft, name: 'Lake of old' } }
    const theirs = other.backups.contents()
    const coming = { ...theirs, trips: [changed, ...theirs.trips] }
    await kept.backups.takeIn(fileOf(coming), REPLACE, 'Everything replaced by a backup')
    expect(names(kept)).toEqual(['Lake of old', 'Ridge', 'Lake', 'Moor'])
    expect(kept.state.lastLabel.value).toMatch(/^Everything replaced by a backup/)
    kept.actions.undo()
    expect(names(kept)).toEqual(['Ridge', 'Lake', 'Moor'])
    const now = kept.backups.contents()
    expect(JSON.stringify([now.trips, now.shelf.things].map(list => list.map(({ id }) => id)))).toBe(before)
    kept.actions.redo()
    expect(names(kept)).toEqual(['Lake of old', 'Ridge', 'Lake', 'Moor'])
    expect(kept.state.shelf.value.things).toHaveLength(1)
  })

  test('leaves a trip that a newer version saved in its place', async () => {
    const kept = await withTrips()
    const [first, second, third] = kept.state.tripList.value
    const { use } = kept
    await set(`trip/${second!.id}`, { ...second, version: 9 }, use)
    const next = await keptTab(kept.device)
    const coming = next.backups.contents()
    await next.backups.takeIn(fileOf({ ...coming, trips: coming.trips.toReversed() }), REPLACE, 'Backup')
    expect(next.state.library.value.order).toEqual([third!.id, first!.id, second!.id])
  })

  test('after an undo leaves nothing to redo, and what was undone is no longer told of', async () => {
    const kept = await withTrips()
    const other = await withTrips()
    rename(kept, 'Renamed')
    kept.actions.undo()
    expect([kept.state.justUndone.value, kept.state.canRedo.value]).toEqual(['Trip, name', true])
    await kept.backups.takeIn(opened(other.text()), MERGE, 'Backup merged')
    expect([kept.state.justUndone.value, kept.state.canRedo.value]).toEqual([null, false])
  })

  test('leaves a snapshot of what was here', async () => {
    const kept = await withTrips()
    const text = await (await kept.backups.file()).text.text()
    const taken = await kept.backups.takeIn(fileOf(empty()), REPLACE, 'Backup')
    expect(taken.problem).toBeNull()
    expect(names(kept)).toEqual([])
    const [snapshot] = await kept.backups.snapshots.list()
    expect(snapshot?.head).toMatchObject({ reason: 'before', trips: 3 })
    expect(await kept.backups.snapshots.text(snapshot!.name)).toBe(text)
    expect(await (await taken.beforeAsFile()).text.text()).toBe(text)
  })

  test('goes on where no snapshot can be kept, says so, and can be put back all the same', async () => {
    const kept = await withTrips()
    kept.faults.write = () => Promise.reject(new DOMException('', 'QuotaExceededError'))
    const before = kept.text()
    const taken = await kept.backups.takeIn(fileOf(empty()), REPLACE, 'Backup')
    expect(taken.problem).toMatch(/no room left for a snapshot/)
    expect(snapshotProblem.value).toBe(taken.problem)
    await taken.putBack()
    expect(kept.text()).toBe(before)
    delete kept.faults.write
    expect(await kept.backups.snapshot('day')).toBeNull()
    expect(snapshotProblem.value).toBeNull()
  })

  test('is not held up by another tab that holds the snapshots: it is said, and the backup comes in', async () => {
    vi.stubGlobal('navigator', { locks: { request: () => new Promise(() => {}) } })
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    const kept = await withTrips()
    const backups = createBackups({
      ...kept,
      now: () => ++kept.clock.at,
      place: async () => null,
      alone: inTurn('snapshots'),
    })
    const taking = backups.takeIn(fileOf(empty()), REPLACE, 'Backup')
    await vi.advanceTimersByTimeAsync(3000)
    vi.useRealTimers()
    vi.unstubAllGlobals()
    expect((await taking).problem).toMatch(/^Another tab of the app is busy with the snapshots/)
    expect(names(kept)).toEqual([])
  })

  test('while the database does not answer is in memory, and can be saved as a file', async () => {
    const kept = await keptTab(newDevice(), {
      through: () => () => Promise.reject(new DOMException('', 'UnknownError')),
    })
    const other = await withTrips()
    await kept.backups.takeIn(opened(other.text()), MERGE, 'Backup')
    await kept.flush()
    expect(kept.state.saveState.value.kind).not.toBe('saved')
    rename(kept, 'Edited')
    expect(await (await kept.backups.file()).text.text()).toContain('"name": "Edited"')
    expect(names(kept)).toHaveLength(3)
  })
})

describe('the reminder to save a backup file', () => {
  const dueAfter = async (kept: Awaited<ReturnType<typeof keptTab>>, days: number) => {
    kept.clock.at += days * DAY_MS
    await kept.backups.remind()
    return dueBackup.value
  }

  test('comes two weeks after there was something to save, and not before', async () => {
    const kept = await withTrips()
    expect(await dueAfter(kept, 0)).toBeNull()
    expect(await dueAfter(kept, 13)).toBeNull()
    expect(await dueAfter(kept, 2)).toMatch(/No backup file has been saved yet/)
  })

  test('comes two weeks after the last file, only when things have changed since', async () => {
    const kept = await withTrips()
    await kept.backups.noteSaved(await kept.backups.file())
    expect(await dueAfter(kept, 30)).toBeNull()
    rename(kept, 'Changed')
    expect(await dueAfter(kept, 0)).toMatch(/last backup file is 30 days old, and there are changes since/)
    await kept.backups.noteSaved(await kept.backups.file())
    expect(dueBackup.value).toBeNull()
    expect(await kept.backups.lastFile()).toBe(kept.clock.at)
  })

  test('put off, rests for two weeks, also after a reload', async () => {
    const kept = await withTrips()
    await dueAfter(kept, 0)
    expect(await dueAfter(kept, 15)).not.toBeNull()
    await kept.backups.putOff()
    expect(await dueAfter(kept, 13)).toBeNull()
    await kept.flush()
    const next = await keptTab(kept.device)
    next.clock.at = kept.clock.at
    expect(await dueAfter(next, 0)).toBeNull()
    expect(await dueAfter(next, 2)).not.toBeNull()
  })

  test('never comes for the demo alone, or for nothing', async () => {
    const kept = await keptTab()
    kept.actions.createTrip(wholeDraft(), { demo: true })
    expect(await dueAfter(kept, 0)).toBeNull()
    expect(await dueAfter(kept, 100)).toBeNull()
  })

  test('changes what the screens show when a file was saved', async () => {
    const kept = await withTrips()
    const before = backupsChanged.value
    await kept.backups.noteSaved(await kept.backups.file())
    expect(backupsChanged.value).toBeGreaterThan(before)
  })
})
