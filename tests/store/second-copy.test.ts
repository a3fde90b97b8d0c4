import { del, get, set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { canonical } from '../../src/store/canonical'
import { MANIFEST } from '../../src/store/second-copy/manifest'
import { createSecondCopy } from '../../src/store/second-copy/second-copy'
import { wholeDraft } from '../plan/drafts'
import { copiedTab, files, lose, newCopied, raw, twoTrips, vaultOf } from './copied'
import { nameOf, names, rename, startTab, told } from './tab'

describe('a database lost whole', () => {
  test('every trip comes back with its order and settings, is saved again, and it is said', async () => {
    const { device, tab } = await twoTrips()
    tab.actions.setSystem('us')
    await tab.keep()
    lose(device)
    const next = await copiedTab(device)
    expect(names(next)).toEqual(['Lake', 'Ridge'])
    expect(nameOf(next)).toBe('Ridge')
    expect(next.state.library.value.system).toBe('us')
    expect(next.state.openTrip.value?.draft).toEqual(tab.state.openTrip.value?.draft)
    expect(told(next)).toBe(
      'The browser had lost your shelf from its storage: it is back from the second copy. The browser had lost “Lake”, “Ridge” from its storage: back from the second copy, without undo steps.',
    )
    const after = await copiedTab(device)
    expect(names(after)).toEqual(['Lake', 'Ridge'])
    expect(told(after)).toBe('')
  })

  test('what was made before the copy was looked at stays beside what comes back', async () => {
    const { device } = await twoTrips()
    lose(device)
    const tab = await startTab(device)
    tab.actions.createTrip({ ...emptyDraft(), name: 'New' })
    await createSecondCopy({ ...tab, vault: vaultOf(device), alone: work => work() }).check()
    expect(names(tab).sort()).toEqual(['Lake', 'New', 'Ridge'])
    expect(nameOf(tab)).toBe('New')
  })

  test('where there is no copy either and the browser says it threw the database away, that is said', async () => {
    const device = newCopied()
    const tab = await startTab(device)
    await createSecondCopy({
      ...tab,
      lost: () => true,
      vault: vaultOf(device),
      alone: work => work(),
    }).check()
    expect(told(tab)).toContain('no second copy')
  })
})

describe('a database lost in part', () => {
  test('a trip that is missing comes back, the others are left alone', async () => {
    const { device, lake } = await twoTrips()
    await del(`trip/${lake}`, raw(device))
    const next = await copiedTab(device)
    expect(names(next).sort()).toEqual(['Lake', 'Ridge'])
    expect(told(next)).toContain('had lost “Lake”')
  })

  test('a name is told as it is, with what would be signs of a pattern in it too', async () => {
    const { device, tab, ridge } = await twoTrips()
    rename(tab, 'Cheap, $& $1 $$')
    await tab.keep()
    await del(`trip/${ridge}`, raw(device))
    expect(told(await copiedTab(device))).toContain('had lost “Cheap, $& $1 $$” from')
  })

  test('an older state becomes the newest again, and the older one is an undo step', async () => {
    const { device, tab, ridge } = await twoTrips()
    const old = await get(`trip/${ridge}`, raw(device))
    rename(tab, 'Ridge, newest')
    await tab.keep()
    await set(`trip/${ridge}`, old, raw(device))
    const next = await copiedTab(device)
    expect(nameOf(next)).toBe('Ridge, newest')
    expect(told(next)).toContain('only an older state of “Ridge, newest”')
    next.actions.undo()
    expect(nameOf(next)).toBe('Ridge')
    expect(told(await copiedTab(device))).toBe('')
  })

  test('an older state that was edited before the copy was looked at: both are kept', async () => {
    const { device, tab, ridge } = await twoTrips()
    const old = await get(`trip/${ridge}`, raw(device))
    rename(tab, 'Newest')
    await tab.keep()
    await set(`trip/${ridge}`, old, raw(device))
    const next = await startTab(device)
    rename(next, 'Edited at once')
    await createSecondCopy({ ...next, vault: vaultOf(device), alone: work => work() }).check()
    expect(names(next)).toEqual(['Lake', 'Edited at once', 'Newest (second copy)'])
  })

  test('other contents under the same revision: both are kept, once', async () => {
    const { device, ridge } = await twoTrips()
    const trip = (await get(`trip/${ridge}`, raw(device)))!
    await set(`trip/${ridge}`, { ...trip, draft: { ...trip.draft, name: 'Rigde' } }, raw(device))
    expect(names(await copiedTab(device))).toEqual(['Lake', 'Rigde', 'Ridge (second copy)'])
    const after = await copiedTab(device)
    expect(names(after)).toEqual(['Lake', 'Rigde', 'Ridge (second copy)'])
    expect(told(after)).toBe('')
  })

  test('a damaged record stays as it is, and the copy of it is listed beside it, once', async () => {
    const { device, ridge } = await twoTrips()
    const damaged = { format: 'pack-reckoner/trip', version: 1, id: ridge, draft: { name: 'Ridge' } }
    await set(`trip/${ridge}`, damaged, raw(device))
    const next = await copiedTab(device)
    expect(names(next)).toEqual(['Lake', 'Ridge (second copy)'])
    expect(await get(`trip/${ridge}`, raw(device))).toEqual(damaged)
    expect(names(await copiedTab(device))).toEqual(['Lake', 'Ridge (second copy)'])
  })

  test('a record of a newer version is not lost, and nothing is put beside it', async () => {
    const { device, ridge } = await twoTrips()
    await set(`trip/${ridge}`, { format: 'pack-reckoner/trip', version: 9 }, raw(device))
    expect(names(await copiedTab(device))).toEqual(['Lake'])
  })
})

describe('no false alarm', () => {
  test('a removed trip does not come back, though the page was gone before the copy knew', async () => {
    const { device, tab, ridge } = await twoTrips()
    tab.actions.removeTrip(ridge)
    await tab.flush()
    const next = await copiedTab(device)
    expect(names(next)).toEqual(['Lake'])
    expect(told(next)).toBe('')
    expect(await get(`gone/${ridge}`, raw(device))).toBeUndefined()
    expect(names(await copiedTab(device))).toEqual(['Lake'])
  })

  test('one removed and brought back goes on counting its revisions', async () => {
    const { device, tab, ridge } = await twoTrips()
    for (let i = 0; i < 5; i++) {
      rename(tab, `Ridge ${i}`)
      await tab.keep()
    }
    tab.actions.removeTrip(ridge)
    await tab.flush()
    tab.actions.undo()
    await tab.flush()
    rename(tab, 'Back')
    await tab.keep()
    const next = await copiedTab(device)
    expect(names(next)).toEqual(['Lake', 'Back'])
    expect(told(next)).toBe('')
  })

  test('edits that the copy does not have yet are the newer ones', async () => {
    const { device, tab } = await twoTrips()
    rename(tab, 'After the copy')
    await tab.flush()
    const next = await copiedTab(device)
    expect(nameOf(next)).toBe('After the copy')
    expect(told(next)).toBe('')
  })

  test('a trip that another tab made or changed since this one has read is not lost', async () => {
    const { device, tab } = await twoTrips()
    const late = await startTab(device)
    device.channels.clear()
    rename(tab, 'Elsewhere')
    tab.actions.createTrip({ ...emptyDraft(), name: 'Third' })
    await tab.keep()
    await createSecondCopy({ ...late, vault: vaultOf(device), alone: work => work() }).check()
    expect(told(late)).toBe('')
    expect(names(late)).toEqual(['Lake', 'Ridge'])
  })
})

describe('the copy', () => {
  test('is one file a trip, one for the list, one for the shelf, and the manifest; a removed trip takes its file along', async () => {
    const { device, tab, ridge } = await twoTrips()
    expect(device.files.size).toBe(5)
    rename(tab, 'Other')
    await tab.keep()
    expect(device.files.size).toBe(5)
    tab.actions.removeTrip(ridge)
    await tab.keep()
    expect(device.files.size).toBe(4)
    expect(tab.state.copy.value).toMatchObject({ kind: 'kept', trips: 1 })
  })

  test('is not written when nothing was changed', async () => {
    const { device, tab } = await twoTrips()
    const before = new Map(device.files)
    tab.actions.setPlace({ screen: 'gear', detail: null, scrollY: 50 })
    await tab.keep()
    expect(device.files).toEqual(before)
  })

  test('never holds what the database has not acknowledged', async () => {
    const device = newCopied()
    let full = false
    const tab = await copiedTab(device, {
      through: use => (mode, callback) =>
        full && mode === 'readwrite'
          ? Promise.reject(new DOMException('', 'QuotaExceededError'))
          : use(mode, callback),
    })
    tab.actions.createTrip(wholeDraft())
    await tab.keep()
    const before = files(device)
    full = true
    rename(tab, 'Unsaved')
    await tab.keep()
    expect(files(device)).toEqual(before)
  })

  test('with a damaged manifest is made out again from its files', async () => {
    const { device } = await twoTrips()
    lose(device)
    device.files.set(MANIFEST, device.files.get(MANIFEST)!.replace('"count":3', '"count":9'))
    expect(names(await copiedTab(device)).sort()).toEqual(['Lake', 'Ridge'])
  })

  test('a damaged file is never taken for a trip: that is said, the others come back', async () => {
    const { device, lake } = await twoTrips()
    lose(device)
    const file = files(device).find(name => name.includes(lake))!
    device.files.set(file, device.files.get(file)!.replace('Lake', 'Lape'))
    const next = await copiedTab(device)
    expect(names(next)).toEqual(['Ridge'])
    expect(told(next)).toContain('the second copy of it is damaged too')
  })

  test('of a newer version is left alone', async () => {
    const { device, tab } = await twoTrips()
    device.files.set(MANIFEST, JSON.stringify({ format: 'pack-reckoner/copy', version: 2 }))
    const before = new Map(device.files)
    rename(tab, 'X')
    await tab.keep()
    expect(device.files).toEqual(before)
    expect((await copiedTab(device)).state.copy.value).toEqual({ kind: 'newer' })
  })

  test('with a file of no name that the app gives is made out again all the same', async () => {
    const { device } = await twoTrips()
    lose(device)
    device.files.delete(MANIFEST)
    device.files.set(`%zz.${'0'.repeat(64)}.json`, '{}')
    expect(names(await copiedTab(device)).sort()).toEqual(['Lake', 'Ridge'])
  })

  test('that cannot be written is told where the reader can look, and tried again', async () => {
    const device = newCopied()
    const tab = await copiedTab(device)
    tab.actions.createTrip(wholeDraft())
    await tab.flush()
    let full = true
    const vault = vaultOf(device)
    const secondCopy = createSecondCopy({
      ...tab,
      alone: work => work(),
      vault: {
        ...vault,
        write: (...of) =>
          full ? Promise.reject(new DOMException('', 'QuotaExceededError')) : vault.write(...of),
      },
    })
    await secondCopy.sync()
    expect(tab.state.copy.value).toEqual({ kind: 'failed', why: 'this device has no room left' })
    full = false
    await secondCopy.sync()
    expect(tab.state.copy.value).toMatchObject({ kind: 'kept', trips: 1 })
  })
})

describe('canonical JSON', () => {
  test('does not depend on the order in which keys were set, and keeps that of lists', () => {
    expect(canonical({ b: [2, 1], a: { d: null, c: 'x' } })).toBe('{"a":{"c":"x","d":null},"b":[2,1]}')
    expect(canonical({ a: { c: 'x', d: null }, b: [2, 1] })).toBe(
      canonical({ b: [2, 1], a: { d: null, c: 'x' } }),
    )
  })
})
