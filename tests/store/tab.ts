// A tab of the app in Node: state, actions and persistence over a database in memory, with a clock that never repeats.

import { IDBFactory } from 'fake-indexeddb'
import { entries, type UseStore } from 'idb-keyval'
import { createActions } from '../../src/store/actions'
import { ASIDE, createAside } from '../../src/store/aside'
import { createDatabase } from '../../src/store/database'
import { loadEngine } from '../../src/store/engine'
import { sortRecords } from '../../src/store/load'
import { createPersistence } from '../../src/store/persist'
import { readEach } from '../../src/store/read-damaged'
import { unsavedKey } from '../../src/store/record-places'
import { createState } from '../../src/store/state'
import type { Channel } from '../../src/store/tabs'
import { readSaved } from '../../src/store/tabs-read'
import { writeChanges } from '../../src/store/write'

// A trip that brings packs gives them to the list by the engine's door, which the app has fetched by then.
await loadEngine()

export interface Device {
  factory: IDBFactory
  channels: Set<Channel>
}

export const newDevice = (): Device => ({ factory: new IDBFactory(), channels: new Set() })

let ids = 0
let ticks = 1_000_000

export interface TabOptions {
  /** Stands between the tab and its database. */
  through?: (use: UseStore) => UseStore
  now?: () => number
  /** Everything was erased by another tab. */
  onErased?: () => void
  /** The second copy is not looked at. */
  unchecked?: boolean
}

export function openTab(
  device: Device,
  { through = use => use, now = () => ++ticks, onErased = () => {} }: TabOptions = {},
) {
  const channel: Channel = {
    onmessage: null,
    postMessage: data => {
      for (const other of device.channels)
        if (other !== channel) other.onmessage?.({ data: structuredClone(data) } as MessageEvent)
    },
  }
  device.channels.add(channel)
  const newId = () => `id${++ids}`
  let lost = false
  const real = createDatabase({
    factory: device.factory,
    onLost: how => {
      lost ||= how === 'damaged'
      if (state.loaded.peek()) persistence.emptied()
    },
    onClosed: () => void persistence.closed(),
  })
  const use = through(real)
  const state = createState()
  const actions = createActions(state, { now, newId })
  const aside = createAside({
    use: createDatabase({ factory: device.factory, database: ASIDE }),
    key: unsavedKey(newId()),
    locks: globalThis.navigator?.locks,
    clock: () => 0,
  })
  const persistence = createPersistence(state, {
    use,
    now,
    newId,
    channel,
    aside,
    readDamaged: readEach,
    readSaved,
    loadRecords: async () => ({ sortRecords, writeChanges }),
    onErased,
  })
  const close = () => device.channels.delete(channel)
  return { state, actions, use, now, newId, close, lost: () => lost, ...persistence }
}

export type Tab = ReturnType<typeof openTab>

/** A tab whose stored trips have been read. */
export async function startTab(device: Device, options?: TabOptions) {
  const tab = openTab(device, options)
  await tab.flush()
  return tab
}

/** A tab that goes away after a change, before any of its saves comes through; what it puts aside does. */
export async function leaving(device: Device, change: (tab: Tab) => void, { told = true } = {}) {
  const gone = new Promise<never>(() => {})
  const tab = await startTab(device, {
    through: use => (mode, callback) => (mode === 'readwrite' ? gone : use(mode, callback)),
  })
  change(tab)
  if (told) tab.leave()
  await turns()
  tab.close()
  return tab
}

/** What lies aside on a device. */
export const asides = async (device: Device): Promise<unknown[]> =>
  (await entries(createDatabase({ factory: device.factory, database: ASIDE }))).map(([, value]) => value)

/** Turns of the event loop, for what a message or a timer has set going. The database answers in a few. */
export async function turns(count = 40) {
  for (let i = 0; i < count; i++) await new Promise(resolve => setImmediate(resolve))
}

export const nameOf = (tab: Tab) => tab.state.openTrip.value?.draft.name
export const names = (tab: Tab) => tab.state.tripList.value.map(({ draft }) => draft.name)
export const rename = (tab: Tab, name: string) => tab.actions.setField('name', name, null)
export const told = (tab: Tab) => tab.state.storeProblem.value ?? ''
