// Snapshots and the reminder in the page: looked at in a quiet moment some while after a save, until the
// day's snapshot is kept.

import { effect } from '@preact/signals'
import { inTurn } from '../in-turn'
import { dayOf } from '../snapshots'
import { openPlace } from '../snapshots-place'
import type { BackupEnvironment, Backups } from './backups'

/** One tab at a time works with the snapshots. */
export const snapshotTurn = inTurn('pack-reckoner-snapshots')

const QUIET_AFTER_MS = 10_000

/** Asked for anew until it is there: what failed once may work the next time. */
export function pageEnvironment(): Pick<BackupEnvironment, 'place' | 'alone' | 'now'> {
  let place: ReturnType<typeof openPlace> | null = null
  return {
    now: Date.now,
    alone: snapshotTurn,
    place: () => {
      place ??= openPlace().catch(error => {
        place = null
        throw error
      })
      return place
    },
  }
}

/** Follows the saves from now on. Never rejects. */
export function followSaves(backups: Backups, { state }: Pick<BackupEnvironment, 'state'>): void {
  let doneOn = ''
  let isDue = false
  effect(() => {
    if (state.saveState.value.kind !== 'saved' || !state.loaded.value || isDue) return
    if (state.trips.value.size === 0 && state.shelf.value.things.length === 0) return
    if (doneOn === dayOf(Date.now())) return
    isDue = true
    setTimeout(() => inQuiet(() => void look()), QUIET_AFTER_MS)
  })

  async function look() {
    isDue = false
    const today = dayOf(Date.now())
    // What could not be kept is tried again after the next save; More says so.
    if ((await backups.snapshot('day')) === null) doneOn = today
    // Without the note there is no reminder; the storage's own message says what is wrong with it.
    await backups.remind().catch(() => {})
  }
}

/** Safari has no idle callback. */
function inQuiet(work: () => void) {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work, { timeout: 5000 })
  else setTimeout(work)
}
