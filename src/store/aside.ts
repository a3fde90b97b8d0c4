// What is typed and not saved yet, put aside with every keystroke, so that a page may go away at any time. In a database
// of its own: there no save stands in the way, and a transaction that only puts is ended by the browser alone, also when
// the page is gone by then. `tests/tools/leave.mjs` measures what is lost.

import { delMany, entries, keys, type UseStore } from 'idb-keyval'
import type { Unsaved } from './documents'
import { within } from './within'

export const ASIDE = 'pack-reckoner-aside'
const LOCK = 'pack-reckoner-unsaved '
const ANSWER_MS = 800
const CLEAR_MS = 300
/** Longer than a tab that lives needs to save. */
const LIVING_MS = 600
/** What takes longer than this, as with a very long trip, is followed by a rest … */
const DEAR_MS = 4
/** … of this, since whoever leaves later than 100 ms after the last key must find it put aside … */
const REST_MS = 60
/** … and at least of so many times as long, so that typing goes on. */
const REST = 2

export type Aside = ReturnType<typeof createAside>

/** Undefined where the browser has none, or forbids them. */
export function browserLocks(): LockManager | undefined {
  try {
    return globalThis.navigator?.locks
  } catch {
    return undefined
  }
}

interface AsideEnvironment {
  use: UseStore
  /** This tab's own, beginning with `parting/`. */
  key: string
  /** By which a tab is known to live, where the browser has them. */
  locks: LockManager | undefined
  /** In milliseconds. */
  clock: () => number
}

export function createAside({ use, key, locks, clock }: AsideEnvironment) {
  let isOut = false
  let release = () => {}
  let restUntil = 0
  let timer: ReturnType<typeof setTimeout> | undefined

  /** Puts aside what `make` gives; where that is dear, not at each call, unless `atOnce`. */
  function put(make: () => Unsaved | null, atOnce = false) {
    clearTimeout(timer)
    const rest = restUntil - clock()
    if (rest > 0 && !atOnce) {
      timer = setTimeout(() => put(make, true), rest)
      return
    }
    if (!isOut) hold()
    isOut = true
    use('readwrite', store => {
      const start = clock()
      const unsaved = make()
      if (unsaved) store.put(unsaved, key)
      store.transaction.commit()
      const cost = clock() - start
      restUntil = cost > DEAR_MS ? start + cost + Math.max(REST_MS, REST * cost) : 0
      // What hinders it hinders the save too, which says so.
    }).catch(() => {})
  }

  /** While something is aside, other tabs leave it to this one. The lock goes with the page. */
  function hold() {
    const held = new Promise<void>(resolve => {
      release = resolve
    })
    // Without it another tab may take in what is typed here; both are then joined.
    Promise.resolve(locks?.request(LOCK + key, () => held)).catch(() => {})
  }

  /** All is saved: nothing stays aside. Never rejects, and takes 0.3 s at most. */
  async function clear(): Promise<void> {
    clearTimeout(timer)
    if (!isOut) return
    isOut = false
    const mine = release
    // What stays is found to be saved at the next start.
    await within(delMany([key], use), CLEAR_MS).catch(() => {})
    mine()
  }

  /**
   * What pages have left that are gone, by their keys. One that lives is waited for a little: it may be about to save,
   * or to go. Rejects when it cannot be read, or not in time.
   */
  async function left(): Promise<[string, unknown][]> {
    const others = await within(keys<string>(use), ANSWER_MS)
    if (others.length === 0) return []
    const free = await Promise.all(others.map(isFree))
    const found = await within(entries<string, unknown>(use), ANSWER_MS)
    return found.filter(([other]) => free[others.indexOf(other)])
  }

  async function isFree(other: string): Promise<boolean> {
    if (!locks) return true
    const asked = locks.request(LOCK + other, { signal: AbortSignal.timeout(LIVING_MS) }, () => true)
    return within(asked, LIVING_MS).catch(() => false)
  }

  /** Deletes what others have left, now that it is saved. */
  const forget = (others: string[]): Promise<void> => delMany(others, use)

  return { put, clear, left, forget }
}
