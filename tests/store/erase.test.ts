import { get, set, update } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { REMOVED } from '../../src/store/record-kinds'

import { wholeDraft } from '../plan/drafts'
import { lose, raw } from './copied'
import { type Erasable, erasableTab, everything, newErasable } from './erasable'
import { asides, leaving, names, rename, told, turns } from './tab'

const SECRET = 'Zwischbergen'

/** A device with "Lake", and a trip of a name that stands nowhere else, in every place that a trip can get to. */
async function withSecret() {
  const device = newErasable()
  const tab = await erasableTab(device)
  const lake = tab.actions.createTrip({ ...wholeDraft(), name: 'Lake' })
  const secret = tab.actions.createTrip({ ...wholeDraft(), name: SECRET })
  tab.actions.edit('Add', draft => ({
    ...draft,
    people: [{ id: 'first' }, { id: 'other', name: `${SECRET} cousin` }],
    gear: [...draft.gear, { ...draft.gear[0]!, id: 'own', name: `${SECRET} rope` }],
  }))
  await tab.keep()
  await tab.backups.snapshot('before')
  return { device, tab, lake, secret }
}

async function deleted() {
  const made = await withSecret()
  made.tab.actions.removeTrip(made.secret)
  await made.tab.keep()
  return made
}

/** Where the name is found. */
const found = async (device: Erasable) => (await everything(device)).includes(SECRET)

describe('a deleted trip that is erased for good', () => {
  test('is in no place any more, by no name or word of it, and the others are as they were', async () => {
    const { device, tab, secret } = await deleted()
    expect(await found(device)).toBe(true)
    expect(await tab.erasing.trip(secret)).toBeNull()
    await tab.keep()
    expect(await found(device)).toBe(false)
    expect(names(tab)).toEqual(['Lake'])
    expect(tab.state.removedTrips.value).toEqual([])
    expect((await everything(device)).includes('Lake')).toBe(true)
  })

  test('goes from the snapshots, which stay with what else is in them; one that cannot be read goes', async () => {
    const { device, tab, secret } = await deleted()
    device.snapshots.set('1-day.snapshot', new Blob([`torn ${SECRET}`]))
    device.snapshots.set('2-day.snapshot.crswap', new Blob([`half of ${SECRET}`]))
    await tab.erasing.trip(secret)
    const [snapshot, ...others] = await tab.backups.snapshots.list()
    expect(others).toEqual([])
    expect(snapshot).toMatchObject({ state: 'whole', head: { trips: 1, reason: 'before' } })
    const text = await tab.backups.snapshots.text(snapshot!.name)
    expect(JSON.parse(text).trips.map((trip: { draft: { name: string } }) => trip.draft.name)).toEqual([
      'Lake',
    ])
    expect(await found(device)).toBe(false)
  })

  test('is not brought back by undo or redo, and what was done elsewhere is still undone', async () => {
    const { tab, lake, secret } = await deleted()
    tab.actions.openTripById(lake)
    rename(tab, 'Tarn')
    await tab.erasing.trip(secret)
    tab.actions.undo()
    expect(names(tab)).toEqual(['Lake'])
    for (let i = 0; i < 9; i++) tab.actions.undo()
    for (let i = 0; i < 9; i++) tab.actions.redo()
    expect(tab.state.removed.value.has(secret)).toBe(false)
    expect(
      names(tab)
        .concat(tab.state.lastLabel.value ?? '')
        .join(),
    ).not.toContain(SECRET)
  })

  test('does not come back at the next start, from the copy or from what a page had put aside', async () => {
    const { device, tab, secret } = await withSecret()
    // A page that is gone had typed in it and saved nothing; the copy was made before it was deleted.
    await leaving(device, gone => {
      gone.actions.openTripById(secret)
      rename(gone, `${SECRET} 2`)
    })
    const before = new Map(device.files)
    tab.actions.removeTrip(secret)
    await tab.keep()
    expect(JSON.stringify(await asides(device))).toContain(SECRET)
    await tab.erasing.trip(secret)
    expect(await found(device)).toBe(false)
    for (const [name, text] of before) device.files.set(name, text)
    const next = await erasableTab(device)
    expect(names(next)).toEqual(['Lake'])
    expect(told(next)).toBe('')
  })

  test('takes along records that this version cannot read', async () => {
    const { device, tab, secret } = await deleted()
    const newer = { format: 'pack-reckoner/step', version: 9, label: SECRET, parts: [{ of: secret }] }
    await set('step/newer', newer, raw(device))
    await set(`history/${secret}`, { past: SECRET }, raw(device))
    await tab.erasing.trip(secret)
    expect(await found(device)).toBe(false)
  })

  test('is let go by the other open tabs, which do not write it back, whether they hear of it or not', async () => {
    for (const hears of [true, false]) {
      const { device, tab, secret } = await withSecret()
      const other = await erasableTab(device)
      other.actions.openTripById(secret)
      if (!hears) device.channels.clear()
      tab.actions.removeTrip(secret)
      await tab.keep()
      expect(await tab.erasing.trip(secret)).toBeNull()
      await turns()
      if (!hears) rename(other, `${SECRET} again`)
      await other.keep()
      await other.keep()
      expect(names(other)).toEqual(['Lake'])
      expect(await found(device)).toBe(false)
      if (!hears) expect(told(other)).toContain('erased for good in another tab')
    }
  })

  test('is not lost to a tab that looks at the copy while it is being erased, and has not heard of it', async () => {
    const { device, tab, secret } = await withSecret()
    const other = await erasableTab(device, { unchecked: true })
    tab.actions.removeTrip(secret)
    await tab.flush()
    await turns()
    device.channels.clear()
    tab.faults.vault = async () => {
      await other.secondCopy.check()
      throw new DOMException('', 'TimeoutError')
    }
    await tab.erasing.trip(secret)
    expect(names(other)).toEqual(['Lake'])
    expect(told(other)).toBe('')
    expect(JSON.stringify(await asides(device))).not.toContain(SECRET)
  })

  test('that cannot be reached in one place is said, and the next start goes on with it', async () => {
    const { device, tab, secret } = await withSecret()
    // Deleted, and erased before the copy has heard of either.
    tab.actions.removeTrip(secret)
    await tab.flush()
    tab.faults.vault = () => Promise.reject(new DOMException('', 'TimeoutError'))
    expect(await tab.erasing.trip(secret)).toContain(
      'the second copy (the place where it lies does not answer)',
    )
    await tab.flush()
    const next = await erasableTab(device)
    expect(names(next)).toEqual(['Lake'])
    expect(await next.erasing.goOn()).toBeNull()
    expect(await found(device)).toBe(false)
  })

  test('comes back only from a file, as a trip of its own', async () => {
    const { device, tab, secret } = await deleted()
    const record = await get(`removed/${secret}`, raw(device))
    expect(record).toMatchObject({ format: REMOVED.format })
    const { trips: _, ...rest } = tab.backups.contents()
    const backup = { ...rest, trips: [record.trip], savedOn: '2026-01-01', leftOut: [], damagedTrips: [] }
    await tab.erasing.trip(secret)
    await tab.backups.takeIn(backup, { how: 'merge', trips: {}, shelf: 'both' }, 'A backup')
    await tab.keep()
    expect(names(tab)).toEqual(['Lake', SECRET])
    expect(names(await erasableTab(device))).toEqual(['Lake', SECRET])
  })
})

describe('everything erased', () => {
  test('leaves nothing of what the hiker said of packs, and of a figure of their own', async () => {
    const device = newErasable()
    const tab = await erasableTab(device)
    tab.actions.createTrip({ ...wholeDraft(), name: 'Lake' })
    for (const [field, value] of Object.entries({ notes: SECRET, aside: SECRET, tags: [SECRET] }))
      tab.actions.setField(`packs/big/${field}`, value, null)
    const measure = { name: SECRET, powers: { massG: 1 } }
    tab.actions.editShelf('Figure', shelf => ({ ...shelf, figures: { measure } }))
    await tab.keep()
    await tab.backups.snapshot('before')
    expect(await found(device)).toBe(true)
    expect(await tab.erasing.everything()).toBeNull()
    expect(await found(device)).toBe(false)
    expect((await erasableTab(device)).state.shelf.value.packs).toEqual([])
  })

  test('leaves nothing of any trip in any place, and starts anew', async () => {
    const { device, tab } = await deleted()
    expect(await tab.erasing.everything()).toBeNull()
    expect(tab.anew()).toBe(1)
    const left = await everything(device)
    expect(left).not.toContain(SECRET)
    expect(left).not.toContain('Lake')
    const next = await erasableTab(device)
    expect(names(next)).toEqual([])
    expect(told(next)).toBe('')
    next.actions.createTrip({ ...wholeDraft(), name: 'New' })
    await next.keep()
    expect(names(await erasableTab(device))).toEqual(['New'])
  })

  test('nothing that is still typed in this tab, or goes away with it, is written', async () => {
    const { device, tab, lake } = await withSecret()
    await tab.erasing.everything()
    tab.actions.openTripById(lake)
    rename(tab, SECRET)
    tab.leave()
    await tab.keep()
    await tab.backups.snapshot('day')
    await turns()
    expect(await found(device)).toBe(false)
  })

  test('is let go by the other open tabs, which do not write it back, whether they hear of it or not', async () => {
    for (const hears of [true, false]) {
      const { device, tab } = await withSecret()
      let left = 0
      const other = await erasableTab(device, { onErased: () => void left++ })
      if (!hears) device.channels.clear()
      await tab.erasing.everything()
      await turns()
      rename(other, `${SECRET} again`)
      await other.keep()
      await other.backups.snapshot('day')
      other.leave()
      await turns()
      expect(await found(device)).toBe(false)
      expect(left).toBeGreaterThan(0)
    }
  })

  test('that was cut off is ended by the next start, before anything can come back', async () => {
    const { device, tab } = await withSecret()
    const copy = new Map(device.files)
    tab.faults.vault = () => Promise.reject(new DOMException('', 'TimeoutError'))
    expect(await tab.erasing.everything()).toContain('the second copy')
    expect(tab.anew()).toBe(0)
    expect(device.files).toEqual(copy)
    const ending = await erasableTab(device, { unchecked: true })
    expect(await ending.erasing.goOn()).toBeNull()
    expect(await found(device)).toBe(false)
  })

  test('where the database cannot be written nothing is erased, and the tab goes on saving', async () => {
    const device = newErasable()
    let full = false
    const tab = await erasableTab(device, {
      through: use => (mode, callback) =>
        full && mode === 'readwrite'
          ? Promise.reject(new DOMException('', 'QuotaExceededError'))
          : use(mode, callback),
    })
    tab.actions.createTrip({ ...wholeDraft(), name: 'Lake' })
    await tab.keep()
    full = true
    expect(await tab.erasing.everything()).toContain('the database (this device has no room left)')
    full = false
    rename(tab, 'Tarn')
    await tab.keep()
    expect(await everything(device)).toContain('Tarn')
  })

  test('a database that was lost and made anew is no erasure: what is open is saved again', async () => {
    const { device, tab } = await withSecret()
    await tab.erasing.everything()
    const next = await erasableTab(device)
    next.actions.createTrip({ ...wholeDraft(), name: 'New' })
    await next.keep()
    lose(device)
    await update('other', () => 1, raw(device))
    next.emptied()
    await next.flush()
    expect(names(await erasableTab(device))).toEqual(['New'])
  })
})
