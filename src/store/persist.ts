// One effect keeps the database in step with the signals: what changed is written together, soon after the typing
// stops, and at once when the page is left. "Saved" is said only of a completed transaction.

import { batch, effect } from '@preact/signals'
import { entries, type UseStore } from 'idb-keyval'
import { givesPacks } from '../plan/shelf'
import type { Aside } from './aside'
import { faultOf, patientDatabase } from './database'
import { engine, loadEngine } from './engine'
import { ALL_ERASED_KEY, isErasedError } from './erased'
import type { sortRecords } from './load'
import { nothingLoaded } from './loaded'
import { CLEARED_TEXT, failureText, leftText, memoryOnlyText, STUCK_TEXT } from './messages'
import { areaOf, LIBRARY_KEY } from './record-places'
import { createSavedRecords } from './saved-records'
import type { State } from './state'
import { type Channel, joinTabs, type ReadSaved } from './tabs'
import { unsavedOf, whenAside } from './unsaved-on-exit'
import { within } from './within'
import type { Change, writeChanges } from './write'

/** Written this long after the last change, so that it is done within 300 ms … */
const QUIET_MS = 250
/** … and this long after the first unsaved one at the latest, so that it is done within 500 ms. */
const LATEST_MS = 450
/** A save under way for this long is said to hang. It may still end well. */
const HANGING_MS = 1200
/** Whoever waits for a save waits no longer than this. */
const PATIENCE_MS = 5000

/** What reads and writes records, with their shapes: not needed while nothing is stored and nothing is to be. */
export interface Records {
  sortRecords: typeof sortRecords
  writeChanges: typeof writeChanges
}

export interface PersistEnvironment {
  use: UseStore
  now: () => number
  newId: () => string
  channel: Channel | null
  /** Where what is not saved yet lies meanwhile. */
  aside: Aside
  /** Reads all records but those that cannot be read, which spoil it when all are read at once. */
  readDamaged: (use: UseStore, cause: unknown) => Promise<[string, unknown][]>
  readSaved: ReadSaved
  loadRecords: () => Promise<Records>
  /** The database has answered for the first time. */
  onRead?: () => void
  /** Everything was erased in another tab, and nothing of this one is written any more. */
  onErased?: () => void
}

export type Persistence = ReturnType<typeof createPersistence>

export function createPersistence(state: State, environment: PersistEnvironment) {
  const { use, now, newId, channel, aside, readDamaged, readSaved, loadRecords, onRead, onErased } =
    environment
  const records = createSavedRecords(state, newId)
  const tellTabs = joinTabs({ state, records, use: patientDatabase(use), flush, letGo }, channel, readSaved)
  let inFlight: readonly Change[] = []
  let running: Promise<void> | null = null
  let again = false
  let timer: ReturnType<typeof setTimeout> | undefined
  let unsavedSince: number | null = null
  /** Nothing is written: everything is being erased, or was. */
  let isStopped = false
  /** Held, so that a page that goes away waits for nothing before it writes. */
  let doors: Records | null = null

  // A trip that an older version, another tab or the second copy has brought gives its packs to the list.
  effect(() => {
    if (!state.loaded.value || ![...state.trips.value.values()].some(givesPacks)) return
    // A failed load is told where the engine is asked for; the packs stay with the trip until it is there.
    if (!engine.value) return void loadEngine().catch(() => {})
    const world = state.world()
    const next = state.withPacksListed(world, now())
    if (next !== world) state.putWorld(next)
  })

  effect(() => {
    const changes = records.changes()
    if (changes.length === 0 || isStopped) return
    if (state.loaded.peek() && changes.some(({ key }) => key !== LIBRARY_KEY)) putAside(changes)
    if (state.saveState.peek().kind === 'saved') state.saveState.value = { kind: 'saving' }
    schedule()
  })

  function putAside(changes: Change[]) {
    const when = whenAside(changes)
    if (when === 'now') aside.put(unsaved)
    // It may be saved by then.
    if (when === 'soon') setTimeout(() => !isStopped && records.changes().length > 0 && aside.put(unsaved))
  }

  const unsaved = () => unsavedOf(records.changes(), inFlight)

  function schedule() {
    unsavedSince ??= now()
    clearTimeout(timer)
    // The save tells of what fails.
    if (!doors) opened().catch(() => {})
    const left = unsavedSince + LATEST_MS - now()
    timer = setTimeout(flush, Math.max(0, Math.min(QUIET_MS, left)))
  }

  /**
   * Writes what is unsaved now. Resolves when all of it is saved, or could not be in 5 s: see `saveState`. Never
   * rejects.
   */
  function flush(): Promise<void> {
    clearTimeout(timer)
    unsavedSince = null
    if (isStopped) return within(running ?? Promise.resolve(), PATIENCE_MS).catch(() => {})
    again = true
    running ??= rounds().finally(() => {
      running = null
    })
    // What hangs is said by then, and may still end well.
    return within(running, PATIENCE_MS).catch(() => {})
  }

  async function rounds() {
    while (again && !isStopped) {
      again = false
      await (state.loaded.peek() ? save() : load())
    }
  }

  async function save() {
    inFlight = records.changes()
    if (inFlight.length > 0) {
      let hanging: ReturnType<typeof setTimeout> | undefined
      try {
        const { writeChanges } = doors ?? (await opened())
        hanging = setTimeout(() => failed({ fault: 'no-answer' }), HANGING_MS)
        const outcome = await use('readwrite', store =>
          writeChanges(store, [...inFlight], { newId, erasedAt: records.erasure.ofAll?.at }),
        )
        records.takeOutcome(outcome)
        forgetLeft(outcome.removed)
        tellTabs(outcome)
      } catch (error) {
        if (isErasedError(error)) return letGo()
        return failed(error)
      } finally {
        clearTimeout(hanging)
        inFlight = []
      }
    }
    const stuck = records.shelfStuck()
    if (stuck) state.saveState.value = { kind: 'failed', message: STUCK_TEXT[stuck] }
    else state.saveState.value = { kind: records.changes().length > 0 ? 'saving' : 'saved' }
    if (records.changes().length === 0) await aside.clear()
  }

  /** What other pages had left is saved now; should it stay, the next start finds that it is. */
  function forgetLeft(removed: { key: string }[]) {
    const keys = removed.map(({ key }) => key).filter(key => areaOf(key) === 'parting')
    if (keys.length > 0) aside.forget(keys).catch(() => {})
  }

  /** Reads everything stored. On failure all stays in memory, and the next edit tries again. */
  async function load() {
    try {
      let [stored, left] = await readBoth()
      onRead?.()
      const isAny = stored.length > 0 || left.length > 0
      if (isAny && !doors) {
        await opened()
        // Another tab may have saved meanwhile, and this one hears of it only once it has loaded.
        ;[stored, left] = await readBoth()
      }
      if (typeof left === 'string') state.tell(left)
      const all = typeof left === 'string' ? stored : [...stored, ...left]
      const found = doors?.sortRecords(all, newId) ?? nothingLoaded()
      batch(() => {
        records.takeAll(found)
        state.loaded.value = true
      })
      again ||= records.changes().length > 0
      state.saveState.value = { kind: again ? 'saving' : 'saved' }
    } catch (error) {
      memoryOnly(error)
    }
  }

  async function opened() {
    doors ??= await loadRecords()
    return doors
  }

  const readBoth = () => Promise.all([readAll(), readLeft()])

  /** All records; where one that the browser cannot read spoils the rest, each by itself. */
  const readAll = () =>
    entries<string, unknown>(use).catch(async error => {
      if (faultOf(error)) throw error
      return readDamaged(use, error)
    })

  /** What pages that are gone had not saved; a sentence where that cannot be read. */
  const readLeft = () => aside.left().catch((error: unknown) => leftText(error))

  /** The database turned out to be empty while the app was open: everything here is written anew. */
  function emptied() {
    records.forget()
    again = true
    state.tell(CLEARED_TEXT)
  }

  /** The browser closed the database by itself: looks at once whether it is still there, and still full. */
  async function closed() {
    // Chromium refuses to open it while it is still being cleared.
    await new Promise(resolve => setTimeout(resolve, 100))
    if (!state.loaded.peek()) return
    await use('readonly', () => undefined).catch(failed)
    await flush()
  }

  function failed(error: unknown) {
    state.saveState.value = { kind: 'failed', message: failureText(error) }
  }

  function memoryOnly(error: unknown) {
    state.saveState.value = { kind: 'memory-only', message: memoryOnlyText(error) + records.hooks.lent }
  }

  /** For a page that goes away. */
  function leave() {
    if (isStopped) return
    if (state.loaded.peek()) aside.put(unsaved, true)
    void flush()
  }

  /** Everything was erased elsewhere: what is still in memory is written nowhere any more. Never rejects. */
  async function letGo(): Promise<void> {
    stop()
    await aside.clear()
    onErased?.()
  }

  /** From now on nothing is written, until it is said otherwise. Resolves when what is under way has ended. */
  async function stop(): Promise<void> {
    isStopped = true
    clearTimeout(timer)
    await flush()
  }

  const goOn = () => {
    isStopped = false
    void flush()
  }

  /** Tells the other tabs that everything is erased. */
  const tellErased = () =>
    tellTabs({ saved: [{ key: ALL_ERASED_KEY, value: {}, revision: 0 }], removed: [], copies: [], moved: [] })

  return { flush, leave, memoryOnly, emptied, closed, records, stop, goOn, tellErased }
}
