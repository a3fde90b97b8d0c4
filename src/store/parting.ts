// What a page puts aside of its unsaved edits when it goes away, as small as can be. Pure.

import type { Shelf } from '../plan/shelf'
import type { Parting, Step, TripDocument } from './documents'
import { type Change, isTripKey, SHELF_KEY } from './write'

/** Null when nothing that counts is unsaved. `inFlight`: what a save under way may yet write. */
export function partingOf(changes: readonly Change[], inFlight: readonly Change[]): Parting | null {
  const parting: Parting = { format: 'pack-reckoner/parting', version: 2, trips: [], shelf: null, steps: [] }
  for (const { key, value, known } of changes) {
    if (!value) continue
    if (key.startsWith('step/')) parting.steps.push(value as Step)
    const sent = inFlight.find(change => change.key === key)?.value
    const before = [known?.value, sent].filter(state => state !== undefined)
    if (key === SHELF_KEY) parting.shelf = pared(before as Shelf[], value as Shelf)
    if (!isTripKey(key)) continue
    const over = (before as TripDocument[]).map(trip => trip.changedAt)
    parting.trips.push({ document: value as TripDocument, over })
  }
  return parting.trips.length > 0 || parting.shelf || parting.steps.length > 0 ? parting : null
}

const LISTS = ['things', 'bases', 'packings'] as const

/** Of the shelf only the things, bases and packings that are not the same: merged like another tab's version. */
function pared(states: Shelf[], after: Shelf): Parting['shelf'] {
  const [known] = states
  return known ? { before: states.map(state => without(state, after)), after: without(after, known) } : null
}

function without(shelf: Shelf, other: Shelf): Shelf {
  const pared = LISTS.map(list => {
    const same = new Set<object>(other[list])
    return [list, shelf[list].filter(thing => !same.has(thing))]
  })
  return { ...shelf, ...Object.fromEntries(pared) }
}
