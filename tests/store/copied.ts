// A device with a second copy of its trips, in memory, and tabs that look after it.

import { IDBFactory } from 'fake-indexeddb'
import { emptyDraft } from '../../src/plan'
import { createDatabase } from '../../src/store/database'
import { createSecondCopy } from '../../src/store/second-copy/second-copy'
import type { Vault } from '../../src/store/second-copy/vault'
import { wholeDraft } from '../plan/drafts'
import { type Device, newDevice, startTab, type Tab, type TabOptions } from './tab'

export interface Copied extends Device {
  files: Map<string, string>
}

export const newCopied = (): Copied => ({ ...newDevice(), files: new Map() })

export const vaultOf = ({ files }: Copied): Vault => ({
  read: async name => files.get(name) ?? null,
  write: async (name, text) => void files.set(name, text),
  remove: async name => void files.delete(name),
  names: async () => [...files.keys()],
})

/** A tab with a second copy that was checked at its start and is up to date. */
export async function copiedTab(device: Copied, options?: TabOptions) {
  const tab = await startTab(device, options)
  const secondCopy = createSecondCopy({ ...tab, vault: vaultOf(device), alone: work => work() })
  if (!options?.unchecked) {
    await secondCopy.check()
    await tab.flush()
    await secondCopy.sync()
  }
  const keep = async () => {
    await tab.flush()
    await secondCopy.sync()
  }
  return { ...tab, secondCopy, keep }
}

export const raw = (device: Device) => createDatabase({ factory: device.factory })
export const lose = (device: Device) => {
  device.factory = new IDBFactory()
}
export const gear = (tab: Tab) => tab.state.openTrip.value?.draft.gear.length
export const files = (device: Copied) => [...device.files.keys()].sort()

/** A device with two saved and copied trips: "Ridge", which is open, and "Lake". */
export async function twoTrips() {
  const device = newCopied()
  const tab = await copiedTab(device)
  const lake = tab.actions.createTrip({ ...emptyDraft(), name: 'Lake' })
  const ridge = tab.actions.createTrip(wholeDraft())
  await tab.keep()
  return { device, tab, ridge, lake }
}
