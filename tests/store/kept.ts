// A tab with backups, and snapshots that lie in memory.

import { backupText, type Contents, type Wishes } from '../../src/files/backup'
import { createBackups } from '../../src/store/lazy/backups'
import type { Place } from '../../src/store/snapshots-place'
import { opened } from '../files/backups'
import { wholeDraft } from '../plan/drafts'
import { newDevice, openTab, type Tab, type TabOptions } from './tab'

export async function keptTab(device = newDevice(), options: TabOptions = {}) {
  const kept = unreadTab(device, options)
  await kept.flush()
  return kept
}

/** Backups of a tab whose snapshots lie in these files. */
export function snapshotsIn(files: Map<string, Blob>, tab: Tab) {
  const faults: { write?: () => Promise<void> } = {}
  const place: Place = {
    names: async () => [...files.keys()],
    read: async name => files.get(name) ?? null,
    write: async (name, blob) => (faults.write ? faults.write() : void files.set(name, blob)),
    remove: async name => void files.delete(name),
  }
  const backups = createBackups({ ...tab, place: async () => place, alone: work => work() })
  return { files, faults, place, backups }
}

/** A tab whose stored trips are not read yet. */
export function unreadTab(device = newDevice(), options: TabOptions = {}) {
  const clock = { at: 1e12 }
  const now = () => ++clock.at
  const tab: Tab = openTab(device, { ...options, now })
  const { place: _place, ...kept } = snapshotsIn(new Map(), { ...tab, now })
  const { backups } = kept
  /** Everything but the order of keys, as text. */
  const text = () => backupText(backups.contents(), '2026-01-01')
  return { ...tab, ...kept, device, clock, text }
}

export const MERGE: Wishes = { how: 'merge', trips: {}, shelf: 'both' }
export const REPLACE: Wishes = { ...MERGE, how: 'replace' }
export const fileOf = (contents: Contents) => opened(backupText(contents, '2026-01-01'))
export async function withTrips() {
  const kept = await keptTab()
  for (const name of ['Ridge', 'Lake', 'Moor']) kept.actions.createTrip({ ...wholeDraft(), name })
  kept.actions.setTheme('dark')
  kept.actions.setBrightSun(true)
  kept.actions.setLargeTargets(true)
  await kept.flush()
  return kept
}
