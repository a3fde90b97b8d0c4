// What the database holds, sorted at start: records that can be read, those that cannot (kept as they are, and said),
// and what pages had not yet saved when they went away.

import {
  HISTORY,
  type History,
  type Kind,
  LIBRARY,
  type Library,
  PARTING,
  readRecord,
  TRIP,
  type TripDocument,
} from './documents'
import type { Damaged } from './state'
import { historyKey, LIBRARY_KEY, sameContents, secondVersion, tripKey } from './write'

export interface Loaded {
  library: Library | null
  /** As stored. */
  trips: Map<string, TripDocument>
  histories: Map<string, History>
  /** Trips as a page left them without saving; they take the place of the stored ones, or are new. */
  unsaved: TripDocument[]
  /** Records that have served: to be deleted. */
  done: string[]
  /** Keys whose records cannot be read: never written. */
  unread: string[]
  /** Those of them that are damaged, and what they are, in words. */
  damaged: Damaged[]
  /** Keys of trips removed on purpose, and their last revision. */
  gone: [string, number][]
  problems: string[]
}

export function sortRecords(entries: [IDBValidKey, unknown][], newId: () => string): Loaded {
  const loaded: Loaded = {
    library: null,
    trips: new Map(),
    histories: new Map(),
    unsaved: [],
    done: [],
    unread: [],
    damaged: [],
    gone: [],
    problems: [],
  }
  const byKey = new Map(entries.map(([key, value]) => [String(key), value]))

  function read<T>(kind: Kind<T>, key: string, what: string): T | null {
    if (!byKey.has(key)) return null
    const result = readRecord(kind, byKey.get(key))
    if (result.ok) return result.value
    loaded.unread.push(key)
    if (result.reason === 'damaged') loaded.damaged.push({ key, what })
    const mend = result.reason === 'newer' ? 'update the app to use it' : 'it is kept as it is and left alone'
    loaded.problems.push(`${what} ${result.message}: ${mend}.`)
    return null
  }

  loaded.library = read(LIBRARY, LIBRARY_KEY, 'The list of trips and settings')
  for (const [key, value] of byKey) {
    const [area, id = ''] = split(key)
    if (area === 'gone') loaded.gone.push([tripKey(id), Number(value) || 0])
    if (area !== 'trip') continue
    const trip = read(TRIP, key, `The saved trip${nameIn(byKey.get(key))}`)
    if (trip && tripKey(trip.id) === key) loaded.trips.set(id, trip)
    else if (trip) {
      loaded.unread.push(key)
      loaded.damaged.push({ key, what: 'A saved trip' })
      loaded.problems.push('A saved trip stands in another one’s place: it is kept as it is and left alone.')
    }
  }
  for (const id of loaded.trips.keys()) {
    const history = read(HISTORY, historyKey(id), `The undo history${nameIn(loaded.trips.get(id))}`)
    if (history) loaded.histories.set(id, history)
  }
  for (const key of byKey.keys()) {
    if (split(key)[0] !== 'parting') continue
    const parting = read(PARTING, key, 'What was typed last before the page went away')
    if (!parting) continue
    loaded.done.push(key)
    for (const left of parting.trips) takeIn(loaded, left, newId)
  }
  return loaded
}

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
  return [key.slice(0, at), key.slice(at + 1)]
}

/** The name in a record that may be anything: ` “Ridge”`, or nothing. */
function nameIn(record: unknown): string {
  const name = (record as { draft?: { name?: unknown } } | null | undefined)?.draft?.name
  return typeof name === 'string' && name ? ` “${name.slice(0, 60)}”` : ''
}
