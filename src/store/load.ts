// What the database holds, sorted at start: records that can be read, those that cannot (kept as they are, and said),
// and what pages had not yet saved when they went away.

import type { Step, TripDocument } from './documents'
import { ALL_ERASED_KEY, mentions, readErased } from './erased'
import { type Loaded, nothingLoaded } from './loaded'
import { stepsOfHistory } from './old-history'
import { HISTORY, type Kind, LIBRARY, REMOVED, readRecord, SHELF, STEP, TRIP, UNSAVED } from './record-kinds'
import { areaOf, historyKey, LIBRARY_KEY, SHELF_KEY, tripKey, whatAt } from './record-places'
import { sameContents, secondVersion } from './write'

export function sortRecords(entries: [IDBValidKey, unknown][], newId: () => string): Loaded {
  const loaded = nothingLoaded()
  const byKey = new Map(entries.map(([key, value]) => [String(key), value]))

  function read<T>(kind: Kind<T>, key: string, what = kind.what): T | null {
    if (!byKey.has(key)) return null
    const result = readRecord(kind, byKey.get(key))
    if (result.ok) return result.value
    const isDamaged = result.reason === 'damaged'
    // What the browser itself cannot read cannot be moved aside either.
    const goesAside = isDamaged && kind.only && !isUnreadable(byKey.get(key))
    if (goesAside) loaded.anew.add(key)
    else loaded.unread.push(key)
    if (isDamaged && !goesAside) loaded.damaged.push({ key, what })
    const kept = goesAside ? 'it is set aside, see More' : 'it is kept as it is and left alone'
    loaded.problems.push(`${what} ${result.message}: ${isDamaged ? kept : 'update the app to use it'}.`)
    return null
  }

  loaded.allErased = readErased(byKey.get(ALL_ERASED_KEY))
  loaded.library = read(LIBRARY, LIBRARY_KEY)
  loaded.shelf = read(SHELF, SHELF_KEY)
  for (const [key, value] of byKey) {
    const [area, id] = split(key)
    const erased = area === 'erased' ? readErased(value) : null
    if (erased) loaded.erased.push([id, erased])
    if (area === 'gone') loaded.gone.push([tripKey(id), Number(value) || 0])
    if (area === 'damaged') loaded.damaged.push({ key, what: whatAt(split(id)[0]) ?? 'A record' })
    if (area === 'trip') readTrip(key, id)
    if (area === 'removed') {
      const removed = read(REMOVED, key)
      if (removed) loaded.removed.set(id, removed)
    }
    const step = area === 'step' ? read(STEP, key) : null
    if (step) loaded.steps.push(step)
  }
  for (const key of byKey.keys()) {
    if (areaOf(key) !== 'parting') continue
    const unsaved = read(UNSAVED, key)
    if (!unsaved) continue
    loaded.done.push(key)
    // It was left before the erasure that is not done with it yet.
    if (loaded.allErased?.done === false) continue
    const isErased = (id: string) => loaded.erased.some(([erased]) => erased === id)
    for (const left of unsaved.trips) if (!isErased(left.document.id)) takeIn(loaded, left, newId)
    if (unsaved.shelf) loaded.shelfLeft.push(unsaved.shelf)
    const isKept = (step: Step) => !loaded.erased.some(([id]) => mentions(step, id))
    loaded.unsavedSteps.push(...unsaved.steps.filter(isKept))
  }
  for (const stored of loaded.trips.values()) {
    const key = historyKey(stored.id)
    const history = read(HISTORY, key, `The undo history${nameIn(stored)}`)
    if (!history) continue
    loaded.done.push(key)
    const trip = loaded.unsaved.find(({ id }) => id === stored.id) ?? stored
    loaded.unsavedSteps.push(...stepsOfHistory(history, trip))
  }
  return loaded

  function readTrip(key: string, id: string) {
    const trip = read(TRIP, key, `The saved trip${nameIn(byKey.get(key))}`)
    if (trip && tripKey(trip.id) === key) loaded.trips.set(id, trip)
    else if (trip) {
      loaded.unread.push(key)
      loaded.damaged.push({ key, what: TRIP.what })
      loaded.problems.push('A saved trip stands in another one’s place: it is kept as it is and left alone.')
    }
  }
}

/** What `readEach` puts in the place of a record that the browser itself fails to read. */
const isUnreadable = (value: unknown) => typeof value === 'object' && value !== null && 'unreadable' in value

/** Takes in what was edited without the database: in the place of the state it was made from, else beside it. */
export function takeIn(
  loaded: Loaded,
  left: { document: TripDocument; over: number[] },
  newId: () => string,
) {
  const { document, over } = left
  const stored = loaded.trips.get(document.id)
  if (stored && sameContents(stored, document)) return
  if (!stored || over.includes(stored.changedAt)) loaded.unsaved.push(document)
  else loaded.unsaved.push(secondVersion(document, newId()))
}

function split(key: string): [string, string] {
  const at = key.indexOf('/')
  return at < 0 ? [key, ''] : [key.slice(0, at), key.slice(at + 1)]
}

/** The name in a record that may be anything: ` “Ridge”`, or nothing. */
function nameIn(record: unknown): string {
  const name = (record as { draft?: { name?: unknown } } | null | undefined)?.draft?.name
  return typeof name === 'string' && name ? ` “${name.slice(0, 60)}”` : ''
}
