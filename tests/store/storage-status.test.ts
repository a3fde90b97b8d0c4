import { get, keys, set } from 'idb-keyval'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { readEach } from '../../src/store/read-damaged'
import { createStorageStatus } from '../../src/store/storage-status'
import { wholeDraft } from '../plan/drafts'
import { copiedTab, lose, newCopied, raw } from './copied'
import { names, newDevice, rename, startTab, type Tab, told } from './tab'

afterEach(() => vi.unstubAllGlobals())

const damaged = { format: 'pack-reckoner/trip', version: 1, id: 'bad', draft: { name: 'Torn' } }

describe('a damaged record', () => {
  async function withDamage() {
    const device = newCopied()
    await set('trip/bad', damaged, raw(device))
    const tab = await copiedTab(device)
    return { device, tab, storageStatus: createStorageStatus(tab) }
  }

  test('goes only after its text was handed out, and for good', async () => {
    const { device, tab, storageStatus } = await withDamage()
    expect(tab.state.damaged.value).toEqual([{ key: 'trip/bad', what: 'The saved trip “Torn”' }])
    await expect(storageStatus.discardDamaged('trip/bad')).rejects.toThrow('was not read')
    expect(await get('trip/bad', raw(device))).toEqual(damaged)
    expect(JSON.parse(await storageStatus.damagedText('trip/bad'))).toEqual({
      key: 'trip/bad',
      value: damaged,
    })
    await storageStatus.discardDamaged('trip/bad')
    expect(tab.state.damaged.value).toEqual([])
    const next = await copiedTab(device)
    expect(told(next)).toBe('')
    expect(next.state.damaged.value).toEqual([])
  })

  test('is the only kind that can be discarded', async () => {
    const { tab, storageStatus } = await withDamage()
    const key = `trip/${tab.actions.createTrip(wholeDraft())}`
    await tab.flush()
    await storageStatus.damagedText(key)
    await expect(storageStatus.discardDamaged(key)).rejects.toThrow('not a damaged record')
    expect(names(tab)).toEqual(['Ridge'])
  })

  test('that the browser itself cannot read spoils no other', async () => {
    const { device } = await withDamage()
    const tab = await startTab(device)
    tab.actions.createTrip(wholeDraft())
    await tab.flush()
    const found = await readEach(
      (mode, callback) =>
        tab.use(mode, store => {
          const real = store.get.bind(store)
          store.get = key => {
            if (key === 'trip/bad') throw new DOMException('', 'NotReadableError')
            return real(key)
          }
          return callback(store)
        }),
      new Error('at once'),
    )
    expect(found.map(([key]) => key)).toEqual(await keys(raw(device)))
    expect(Object.fromEntries(found)['trip/bad']).toEqual({ unreadable: 'NotReadableError' })
    expect(found.find(([key]) => key !== 'trip/bad' && key.startsWith('trip/'))?.[1]).toMatchObject({
      draft: { name: 'Ridge' },
    })
  })

  test('where not even the keys can be read, the first cause is told', async () => {
    const cause = new DOMException('', 'DataError')
    const closed = () => Promise.reject(new DOMException('', 'UnknownError'))
    await expect(readEach(closed, cause)).rejects.toBe(cause)
  })
})

describe('a plan file', () => {
  test('is noted for its trip, with the state that was saved, and the note survives a reload', async () => {
    const device = newDevice()
    const tab = await startTab(device)
    const id = tab.actions.createTrip(wholeDraft())
    await tab.flush()
    const storageStatus = createStorageStatus(tab)
    expect(await storageStatus.lastFile(id)).toBeNull()
    const before = tab.state.openTrip.value!.changedAt
    await storageStatus.noteFile(id)
    rename(tab, 'Changed since')
    await tab.flush()
    const note = await createStorageStatus(await startTab(device)).lastFile(id)
    expect(note?.changedAt).toBe(before)
    expect(tab.state.openTrip.value!.changedAt).toBeGreaterThan(before)
    expect(await storageStatus.lastFile('another')).toBeNull()
  })
})

describe('the promise of the browser', () => {
  const facts = async (navigator: unknown) => {
    vi.stubGlobal('navigator', navigator)
    const storageStatus = createStorageStatus(await startTab(newDevice()))
    return { facts: await storageStatus.facts(), asked: await storageStatus.askToKeep() }
  }

  test('is told as it is', async () => {
    const storage = {
      persisted: async () => true,
      persist: async () => true,
      estimate: async () => ({ usage: 5 }),
    }
    expect(await facts({ storage })).toEqual({ facts: { promised: true, usedBytes: 5 }, asked: true })
  })

  test('is unknown where the browser does not say', async () => {
    const unknown = { facts: { promised: null, usedBytes: null }, asked: false }
    expect(await facts({})).toEqual(unknown)
    expect(await facts({ storage: {} })).toEqual(unknown)
  })
})

describe('a database emptied under the open app', () => {
  const emptied = (tab: Tab) => told(tab).includes('emptied the storage')

  test('is filled again with all that is open, and revisions go on', async () => {
    const device = newCopied()
    const tab = await copiedTab(device)
    tab.actions.createTrip(wholeDraft())
    const id = tab.actions.createTrip({ ...wholeDraft(), name: 'Second' })
    for (const name of ['a', 'b', 'c']) {
      rename(tab, name)
      await tab.keep()
    }
    const before = (await get(`trip/${id}`, raw(device)))!.revision
    const db = await tab.use('readonly', store => store.transaction.db)
    db.close()
    await new Promise(resolve => {
      device.factory.deleteDatabase(db.name).onsuccess = resolve
    })
    await tab.closed()
    expect(emptied(tab)).toBe(true)
    expect((await get(`trip/${id}`, raw(device)))?.revision).toBeGreaterThan(before)
    const next = await copiedTab(device)
    expect(names(next)).toEqual(['Ridge', 'c'])
    expect(told(next)).toBe('')
  })

  test('closed but not emptied: nobody needs to know', async () => {
    const device = newDevice()
    const tab = await startTab(device)
    tab.actions.createTrip(wholeDraft())
    await tab.flush()
    const db = await tab.use('readonly', store => store.transaction.db)
    db.close()
    db.onclose?.(new Event('close'))
    rename(tab, 'On')
    await tab.flush()
    expect(told(tab)).toBe('')
    expect(names(await startTab(device))).toEqual(['On'])
  })

  test('emptied before the start is not told as that', async () => {
    const device = newCopied()
    lose(device)
    expect(emptied(await copiedTab(device))).toBe(false)
  })
})
