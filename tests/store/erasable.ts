// A device with everything the app keeps on it – database, words put aside, second copy, snapshots – in memory, tabs
// that can erase it, and all of it as one text.

import { entries } from 'idb-keyval'
import { ASIDE } from '../../src/store/aside'
import { createDatabase } from '../../src/store/database'
import { createErasing } from '../../src/store/lazy/erase'
import { snapshotText } from '../../src/store/snapshot-file'
import { type Copied, copiedTab, newCopied, raw, vaultOf } from './copied'
import { snapshotsIn } from './kept'
import { asides, type TabOptions } from './tab'

export interface Erasable extends Copied {
  snapshots: Map<string, Blob>
}

export const newErasable = (): Erasable => ({ ...newCopied(), snapshots: new Map() })

/** A tab with a second copy and snapshots. `faults`: rejects what reaches for that place. */
export async function erasableTab(device: Erasable, options?: TabOptions) {
  const tab = await copiedTab(device, options)
  const faults: { vault?: () => Promise<never> } = {}
  const kept = snapshotsIn(device.snapshots, tab)
  let anew = 0
  const erasing = createErasing({
    ...tab,
    goOn: tab.goOn,
    useAside: createDatabase({ factory: device.factory, database: ASIDE }),
    openVault: async () => (faults.vault ? faults.vault() : vaultOf(device)),
    openPlace: async () => kept.place,
    copyTurn: work => work(),
    snapshotTurn: work => work(),
    startAnew: () => void anew++,
    snapshots: kept.backups.snapshots,
  })
  return { ...tab, ...kept, faults, erasing, anew: () => anew }
}

/** All that lies on the device, as text. */
export async function everything(device: Erasable): Promise<string> {
  const texts: string[] = []
  texts.push(JSON.stringify(await entries(raw(device))), JSON.stringify(await asides(device)))
  for (const file of device.files) texts.push(...file)
  for (const [name, file] of device.snapshots)
    texts.push(name, (await snapshotText(file)) ?? '', await file.text())
  return texts.join('\n')
}
