// Long because all of it drives one fake page through saving, conflicts and failures.
import { entries, get, set, type UseStore } from 'idb-keyval'
import { describe, expect, test, vi } from 'vitest'
import { addItem, emptyDraft } from '../../src/plan'
import { createDatabase, DATABASE } from '../../src/store/database'
import type { Library, TripDocument } from '../../src/store/documents'
import { createStorageStatus } from '../../src/store/storage-status'
import { counter, wholeDraft } from '../plan/drafts'
import {
  asides,
  type Device,
  leaving,
  nameOf,
  names,
  newDevice,
  openTab,
  rename,
  startTab,
  type Tab,
  told,
  turns,
} from './tab'

const stored = <T>(device: Device, key: string) => get<T>(key, createDatabase({ factory: device.factory }))
const storeRaw = (device: Device, key: string, value: unknown) =>
  set(key, value, createDatabase({ factory: device.factory }))
const saveState = (tab: Tab) => tab.state.saveState.value

/** A database whose writes fail with an error of this name while `broken`. */
function breakable(name = 'QuotaExceededError') {
  const fault = { broken: false, message: '' }
  const through =
    (use: UseStore): UseStore =>
    (mode, callback) =>
      fault.broken && mode === 'readwrite'
        ? Promise.reject(new DOMException(fault.message, name))
        : use(mode, callback)
  return { fault, through }
}

/** A device with one saved trip called "Ridge", and its id. */
async function deviceWithTrip() {
  const device = newDevice()
  const tab = await startTab(device)
  const id = tab.actions.createTrip(wholeDraft())
  await tab.flush()
  tab.close()
  return { device, id }
}

describe('saving', () => {
  test('trips, settings and undo steps are there after a reload', async () => {
    const device = newDevice()
    const first = await startTab(device)
    first.actions.createTrip(wholeDraft())
    first.actions.edit('Add item', draft => addItem(draft, counter('i'), { with: { name: 'Map' } }))
    rename(first, 'Valley')
    first.actions.setField('gear/food/massKg', undefined, 'some')
    first.actions.undo()
    first.actions.setSystem('us')
    first.actions.setTheme('dark')
    first.actions.setPlace({ screen: 'gear', detail: 'food', scrollY: 30 })
    await first.flush()

    const second = await startTab(device)
    expect(second.state.openTrip.value).toMatchObject({ draft: first.state.openTrip.value?.draft, typed: {} })
    expect(second.state.library.value).toEqual(first.state.library.value)
    expect(second.state.lastLabel.value).toBe('Trip, name')
    second.actions.redo()
    expect(second.state.openTrip.value?.typed).toEqual({ 'gear/food/massKg': 'some' })
    for (let i = 0; i < 3; i++) second.actions.undo()
    expect(second.state.openTrip.value?.draft).toEqual(wholeDraft())
  })

  test('nothing is written when nothing was changed', async () => {
    const { device } = await deviceWithTrip()
    const writes = vi.fn()
    const tab = await startTab(device, { through: counted(writes) })
    await tab.flush()
    expect(writes).not.toHaveBeenCalled()
    expect(saveState(tab)).toEqual({ kind: 'saved' })
  })

  test('all that changed is one transaction', async () => {
    const writes = vi.fn()
    const tab = await startTab(newDevice(), { through: counted(writes) })
    tab.actions.createTrip(wholeDraft())
    tab.actions.createTrip(emptyDraft())
    rename(tab, 'Second')
    await tab.flush()
    expect(writes).toHaveBeenCalledTimes(1)
  })

  test('"saved" is said only when the transaction is complete', async () => {
    let release = () => {}
    const gate = new Promise<void>(resolve => {
      release = resolve
    })
    const seen: string[] = []
    const through =
      (use: UseStore): UseStore =>
      async (mode, callback) => {
        const result = await use(mode, store => {
          if (mode === 'readwrite')
            store.transaction.addEventListener('complete', () =>
              seen.push(`complete, ${saveState(tab).kind}`),
            )
          return callback(store)
        })
        if (mode === 'readwrite') await gate
        return result
      }
    const tab = openTab(newDevice(), { through })
    await tab.flush()
    seen.length = 0
    tab.actions.createTrip(emptyDraft())
    expect(saveState(tab).kind).toBe('saving')
    const saving = tab.flush()
    await turns()
    expect(seen).toEqual(['complete, saving'])
    expect(saveState(tab).kind).toBe('saving')
    release()
    await saving
    expect(saveState(tab).kind).toBe('saved')
  })

  test('an edit made while a save is under way is saved by the next', async () => {
    const { device, id } = await deviceWithTrip()
    const tab = await startTab(device)
    rename(tab, 'A')
    const saving = tab.flush()
    rename(tab, 'B')
    await saving
    await tab.flush()
    expect((await stored<TripDocument>(device, `trip/${id}`))?.draft.name).toBe('B')
    expect(names(tab)).toEqual(['B'])
    expect(told(tab)).toBe('')
  })

  test('a removed trip is gone after a reload, and one brought back is there', async () => {
    const { device, id } = await deviceWithTrip()
    const tab = await startTab(device)
    tab.actions.removeTrip(id)
    await tab.flush()
    expect(names(await startTab(device))).toEqual([])
    expect(await get(`trip/${id}`, tab.use)).toBeUndefined()
    expect(await get(`gone/${id}`, tab.use)).toBeDefined()
    tab.actions.undo()
    await tab.flush()
    expect(await get(`gone/${id}`, tab.use)).toBeUndefined()
    expect(nameOf(await startTab(device))).toBe('Ridge')
  })
})

describe('when it is saved', () => {
  async function timed() {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    let ms = 0
    const { device } = await deviceWithTrip()
    const writes = vi.fn()
    const tab = await startTab(device, { through: counted(writes), now: () => ms })
    const pass = async (by: number) => {
      ms += by
      await vi.advanceTimersByTimeAsync(by)
    }
    return { tab, writes, pass }
  }

  test('within 300 ms of the last keystroke, and not at each one', async () => {
    const { tab, writes, pass } = await timed()
    rename(tab, 'a')
    await pass(100)
    rename(tab, 'ab')
    await pass(200)
    expect(writes).toHaveBeenCalledTimes(0)
    await pass(100)
    expect(writes).toHaveBeenCalledTimes(1)
    vi.useRealTimers()
    await turns()
    expect(saveState(tab).kind).toBe('saved')
  })

  test('at the latest 500 ms after the first unsaved edit, however long the typing goes on', async () => {
    const { tab, writes, pass } = await timed()
    for (let i = 0; i < 10; i++) {
      rename(tab, `name ${i}`)
      await pass(50)
    }
    expect(writes).toHaveBeenCalledTimes(1)
    vi.useRealTimers()
    await tab.flush()
  })
})

describe('a save that fails', () => {
  test('for want of room: the edits stay, the reader is told what to do, and the next edit tries again', async () => {
    const { device, id } = await deviceWithTrip()
    const { fault, through } = breakable()
    const tab = await startTab(device, { through })
    fault.broken = true
    rename(tab, 'Unsaved')
    await tab.flush()
    expect(saveState(tab)).toMatchObject({
      kind: 'failed',
      message: expect.stringContaining('free some space'),
    })
    expect(nameOf(tab)).toBe('Unsaved')
    expect((await stored<TripDocument>(device, `trip/${id}`))?.draft.name).toBe('Ridge')
    fault.broken = false
    rename(tab, 'Saved again')
    expect(saveState(tab).kind).toBe('failed')
    await tab.flush()
    expect(saveState(tab)).toEqual({ kind: 'saved' })
    expect(nameOf(await startTab(device))).toBe('Saved again')
  })

  test('by never ending is said to hang, and taken back should it end after all', async () => {
    const { device } = await deviceWithTrip()
    let release = () => {}
    const gate = new Promise<void>(resolve => {
      release = resolve
    })
    const tab = await startTab(device, {
      through: use => async (mode, callback) => {
        if (mode === 'readwrite') await gate
        return use(mode, callback)
      },
    })
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    rename(tab, 'Late')
    const saving = tab.flush()
    await vi.advanceTimersByTimeAsync(1199)
    expect(saveState(tab).kind).toBe('saving')
    await vi.advanceTimersByTimeAsync(1)
    expect(saveState(tab)).toMatchObject({
      kind: 'failed',
      message: expect.stringContaining('does not answer'),
    })
    release()
    vi.useRealTimers()
    await saving
    expect(saveState(tab)).toEqual({ kind: 'saved' })
    expect(nameOf(await startTab(device))).toBe('Late')
  })

  test('by never ending keeps nobody waiting for more than five seconds', async () => {
    const { device } = await deviceWithTrip()
    const tab = await startTab(device, {
      through: use => (mode, callback) =>
        mode === 'readwrite' ? new Promise(() => {}) : use(mode, callback),
    })
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    rename(tab, 'Never')
    const saving = tab.flush().then(() => 'let go')
    await vi.advanceTimersByTimeAsync(5000)
    vi.useRealTimers()
    expect(await saving).toBe('let go')
    expect(saveState(tab).kind).toBe('failed')
  })

  test('because another tab has updated the storage: the reader is told to reload', async () => {
    const { device } = await deviceWithTrip()
    const tab = await startTab(device)
    const request = device.factory.open('pack-reckoner', 2)
    await new Promise(resolve => {
      request.onsuccess = resolve
    })
    request.result.close()
    rename(tab, 'Old app')
    await tab.flush()
    expect(saveState(tab).message).toMatch(/^A newer version .* reload the app\.$/)
    expect(saveState(tab).message).not.toContain('(Error)')
  })

  test('for another reason names it', async () => {
    const { fault, through } = breakable('UnknownError')
    const tab = await startTab(newDevice(), { through })
    fault.broken = true
    tab.actions.createTrip(emptyDraft())
    await tab.flush()
    expect(saveState(tab).message).toContain('UnknownError')
  })
})

describe('without a database', () => {
  test('the app works in memory and says so, and saves all as soon as it can', async () => {
    const { device } = await deviceWithTrip()
    let broken = true
    const through =
      (use: UseStore): UseStore =>
      (mode, callback) =>
        broken ? Promise.reject(new DOMException('', 'SecurityError')) : use(mode, callback)
    const tab = await startTab(device, { through })
    expect(saveState(tab)).toMatchObject({
      kind: 'memory-only',
      message: expect.stringContaining('private windows'),
    })
    tab.actions.createTrip({ ...emptyDraft(), name: 'New' })
    await tab.flush()
    expect(nameOf(tab)).toBe('New')
    expect(saveState(tab).kind).toBe('memory-only')
    broken = false
    rename(tab, 'Newer')
    await tab.flush()
    expect(saveState(tab)).toEqual({ kind: 'saved' })
    expect(names(tab).sort()).toEqual(['Newer', 'Ridge'])
    const again = await startTab(device)
    expect(names(again).sort()).toEqual(['Newer', 'Ridge'])
    expect(nameOf(again)).toBe('Newer')
  })

  test('one of a newer version is left alone', async () => {
    const device = newDevice()
    const request = device.factory.open('pack-reckoner', 2)
    await new Promise(resolve => {
      request.onsuccess = resolve
    })
    request.result.close()
    const tab = await startTab(device)
    expect(saveState(tab)).toMatchObject({
      kind: 'memory-only',
      message: expect.stringContaining('newer version'),
    })
    tab.actions.createTrip(emptyDraft())
    await tab.flush()
    expect((await device.factory.databases())[0]?.version).toBe(2)
  })
})

describe('a record that cannot be read', () => {
  test('is told in words, the other trips are there, and it is never overwritten', async () => {
    const { device } = await deviceWithTrip()
    const damaged = { format: 'pack-reckoner/trip', version: 1, id: 'bad', draft: { name: 'Lost' } }
    const newer = { format: 'pack-reckoner/trip', version: 9, draft: { name: 'Later' } }
    await storeRaw(device, 'trip/bad', damaged)
    await storeRaw(device, 'trip/new', newer)
    const tab = await startTab(device)
    expect(told(tab)).toMatch(/“Lost” is damaged .*kept as it is/)
    expect(told(tab)).toMatch(/“Later” was saved by a newer version of Pack Reckoner: update the app/)
    expect(names(tab)).toEqual(['Ridge'])
    rename(tab, 'X')
    await tab.flush()
    expect(saveState(tab).kind).toBe('saved')
    expect(await stored(device, 'trip/bad')).toEqual(damaged)
    expect(await stored(device, 'trip/new')).toEqual(newer)
    tab.actions.dismissStoreProblem()
    expect(tab.state.storeProblem.value).toBeNull()
  })

  test('keeps its place among the others, whatever is moved around it, until it can be read', async () => {
    const device = newDevice()
    const first = await startTab(device)
    const ids = ['A', 'B', 'C', 'D'].map(name => first.actions.createTrip({ ...emptyDraft(), name }))
    await first.flush()
    const readable = await stored<TripDocument>(device, `trip/${ids[1]}`)
    await storeRaw(device, `trip/${ids[1]}`, { ...readable, version: 9 })

    const tab = await startTab(device)
    expect(names(tab)).toEqual(['A', 'C', 'D'])
    tab.actions.setTheme('dark')
    await tab.flush()
    tab.actions.moveTrip(ids[3]!, 1)
    expect(names(tab)).toEqual(['A', 'D', 'C'])
    await tab.flush()

    await storeRaw(device, `trip/${ids[1]}`, readable)
    expect(names(await startTab(device))).toEqual(['A', 'B', 'D', 'C'])
  })

  test('a damaged library is set aside: trips are listed, order and settings are kept from then on', async () => {
    const { device } = await deviceWithTrip()
    await storeRaw(device, 'library', 'broken')
    const tab = await startTab(device)
    expect(names(tab)).toEqual(['Ridge'])
    expect(told(tab)).toContain('The list of trips and settings is damaged')
    const [aside, ...others] = tab.state.damaged.value
    expect([aside?.what, others]).toEqual(['The list of trips and settings', []])
    expect(await stored(device, aside!.key)).toBe('broken')
    tab.actions.setTheme('dark')
    tab.actions.createTrip({ ...emptyDraft(), name: 'Second' })
    tab.actions.moveTrip(tab.state.library.value.open!, 0)
    await tab.flush()

    const next = await startTab(device)
    expect(told(next)).toBe('')
    expect(names(next)).toEqual(['Second', 'Ridge'])
    expect(next.state.library.value.theme).toBe('dark')
    expect(next.state.damaged.value).toEqual([aside])
    const storageStatus = createStorageStatus(next)
    expect(await storageStatus.damagedText(aside!.key)).toContain('broken')
    await storageStatus.discardDamaged(aside!.key)
    expect((await startTab(device)).state.damaged.value).toEqual([])
  })

  test('a library of a newer version is left alone', async () => {
    const { device } = await deviceWithTrip()
    const newer = { format: 'pack-reckoner/library', version: 9 }
    await storeRaw(device, 'library', newer)
    const tab = await startTab(device)
    tab.actions.setTheme('dark')
    await tab.flush()
    expect(names(tab)).toEqual(['Ridge'])
    expect(await stored(device, 'library')).toEqual(newer)
  })

  test('a damaged undo history costs the steps only', async () => {
    const { device, id } = await deviceWithTrip()
    await storeRaw(device, `history/${id}`, {
      format: 'pack-reckoner/history',
      version: 1,
      past: [5],
      future: [],
    })
    const tab = await startTab(device)
    rename(tab, 'X')
    await tab.flush()
    expect(nameOf(await startTab(device))).toBe('X')
    expect(await stored(device, `history/${id}`)).toMatchObject({ past: [5] })
    expect(tab.state.damaged.value.map(({ what }) => what)).toEqual(['The undo history “Ridge”'])
  })

  test('a newer one that appears under an open trip is left alone, and the edits go on in a trip of their own', async () => {
    const { device, id } = await deviceWithTrip()
    const tab = await startTab(device)
    const newer = { format: 'pack-reckoner/trip', version: 2 }
    await storeRaw(device, `trip/${id}`, newer)
    rename(tab, 'Mine')
    await tab.flush()
    expect(await stored(device, `trip/${id}`)).toEqual(newer)
    expect(nameOf(tab)).toBe('Mine')
    expect(told(tab)).toContain('left alone')
    expect(names(await startTab(device))).toEqual(['Mine'])
    tab.actions.undo()
    await tab.flush()
    expect(names(await startTab(device))).toEqual(['Ridge'])
  })
})

describe('two tabs', () => {
  async function twoTabs() {
    const { device, id } = await deviceWithTrip()
    return { device, id, a: await startTab(device), b: await startTab(device) }
  }

  test('what one cannot tell the other is saved all the same, and it is said once', async () => {
    const device = newDevice()
    const tab = await startTab(device)
    for (const channel of device.channels)
      channel.postMessage = () => {
        throw new DOMException('', 'InvalidStateError')
      }
    tab.actions.createTrip(wholeDraft())
    await tab.flush()
    expect(saveState(tab)).toEqual({ kind: 'saved' })
    expect(told(tab)).toBe(
      'Other tabs of the app do not hear what is saved here (InvalidStateError): reload them to see it.',
    )
    tab.actions.dismissStoreProblem()
    rename(tab, 'Once')
    await tab.flush()
    expect(told(tab)).toBe('')
    expect(names(await startTab(device))).toEqual(['Once'])
  })

  test('what one saves the other shows; its undo steps are its own, and anyone’s at the next start', async () => {
    const { device, a, b } = await twoTabs()
    rename(a, 'Valley')
    a.actions.setSystem('us')
    await a.flush()
    await turns()
    expect(nameOf(b)).toBe('Valley')
    expect(b.state.library.value.system).toBe('us')
    expect(b.state.lastLabel.value).not.toBe(a.state.lastLabel.value)
    const next = await startTab(device)
    next.actions.undo()
    expect(nameOf(next)).toBe('Ridge')
    expect(told(b)).toBe('')
  })

  test('turns of editing lose nothing and make no second versions', async () => {
    const { device, a, b } = await twoTabs()
    for (let i = 0; i < 20; i++) {
      const tab = i % 2 ? a : b
      tab.actions.edit('Add', draft => addItem(draft, () => `item ${i}`))
      await tab.flush()
      await turns(10)
    }
    const fresh = await startTab(device)
    expect(fresh.state.openTrip.value?.draft.gear).toHaveLength(3 + 20)
    expect(names(fresh)).toEqual(['Ridge'])
  })

  test('when both have changed a trip, both versions are kept', async () => {
    const { device, a, b } = await twoTabs()
    rename(a, 'From a')
    rename(b, 'From b')
    await a.flush()
    await b.flush()
    await turns()
    expect(nameOf(b)).toBe('From b')
    expect(names(b)).toEqual(['From b', 'From a (other tab)'])
    expect(told(b)).toContain('“From a (other tab)”')
    expect(names(a)).toEqual(['From b', 'From a (other tab)'])
    expect(names(await startTab(device))).toEqual(['From b', 'From a (other tab)'])
  })

  test('when they differ in the terrain of the track only, both versions are kept too', async () => {
    const { device, a, b } = await twoTabs()
    device.channels.clear()
    const terrain = (eleM: number) => [{ km: 0, eleM }]
    a.actions.setProfile(terrain(1))
    b.actions.setProfile(terrain(2))
    await a.flush()
    await b.flush()
    const kept = (await startTab(device)).state.tripList.value.map(({ profile }) => profile?.[0]?.eleM)
    expect(kept).toEqual([2, 1])
  })

  test('when they have changed different fields, both changes are in the one trip', async () => {
    const { device, a, b } = await twoTabs()
    const [item] = a.state.openTrip.value!.draft.gear
    a.actions.setField('name', 'From a', null)
    a.actions.setField(`gear/${item!.id}/massKg`, 3, null)
    b.actions.setField(`gear/${item!.id}/litres`, 7, null)
    b.actions.edit('Add', draft => addItem(draft, () => 'another'))
    await Promise.all([a.flush(), b.flush()])
    await turns()
    for (const tab of [a, b, await startTab(device)]) {
      expect(names(tab)).toEqual(['From a'])
      const { gear } = tab.state.openTrip.value?.draft ?? tab.state.tripList.value[0]!.draft
      expect(gear[0]).toMatchObject({ massKg: 3, litres: 7 })
      expect(gear.at(-1)?.id).toBe('another')
      expect(told(tab)).toBe('')
    }
  })

  test('what both go on typing into one field is kept once more, not once a save', async () => {
    const { device, a, b } = await twoTabs()
    for (let i = 0; i < 10; i++) {
      rename(a, `From a ${i}`)
      rename(b, `From b ${i}`)
      await Promise.all([a.flush(), b.flush()])
      await turns()
    }
    const fresh = await startTab(device)
    expect(names(fresh).length).toBeLessThanOrEqual(3)
    expect(names(fresh)[0]).toMatch(/ 9$/)
    expect(`${told(a)}${told(b)}`).toContain('Also changed in another tab: Trip, name.')
  })

  test('a version kept beside a trip, once changed by hand, is left as it is', async () => {
    const { a, b } = await twoTabs()
    rename(a, 'From a')
    rename(b, 'From b')
    await a.flush()
    await b.flush()
    await turns()
    const [, kept] = b.state.tripList.value
    b.actions.openTripById(kept!.id)
    rename(b, 'Mine now')
    await b.flush()
    b.actions.openTripById(b.state.tripList.value[0]!.id)
    await turns()
    rename(a, 'Again a')
    rename(b, 'Again b')
    await a.flush()
    await b.flush()
    await turns()
    expect(names(b)).toEqual(['Again b', 'Again a (other tab)', 'Mine now'])
  })

  test('undo takes back what was done here, not what another tab has done since', async () => {
    const { a, b } = await twoTabs()
    const [first, second] = a.state.openTrip.value!.draft.gear
    a.actions.setField(`gear/${first!.id}/massKg`, 3, null)
    await a.flush()
    await turns()
    b.actions.setField(`gear/${second!.id}/massKg`, 4, null)
    await b.flush()
    await turns()
    a.actions.undo()
    const masses = a.state.openTrip.value!.draft.gear.map(({ massKg }) => massKg)
    expect(masses.slice(0, 2)).toEqual([first!.massKg, 4])
    await a.flush()
    await turns()
    expect(b.state.openTrip.value!.draft.gear[1]!.massKg).toBe(4)
    expect(b.state.lastLabel.value).toContain('mass')
  })

  test('the same edit in both is no conflict', async () => {
    const { a, b } = await twoTabs()
    rename(a, 'Same')
    rename(b, 'Same')
    await a.flush()
    await b.flush()
    expect(names(b)).toEqual(['Same'])
  })

  test('a conflict is found without any message from the other tab', async () => {
    const { device, a, b } = await twoTabs()
    device.channels.clear()
    rename(a, 'From a')
    await a.flush()
    rename(b, 'From b')
    await b.flush()
    expect(names(await startTab(device))).toEqual(['From b', 'From a (other tab)'])
  })

  test('when the database was emptied under both, what each makes of a trip is kept', async () => {
    const { device, a, b } = await twoTabs()
    device.channels.clear()
    await a.use('readwrite', store => store.clear())
    for (const [tab, name] of [
      [a, 'From a'],
      [b, 'From b'],
    ] as const) {
      tab.emptied()
      rename(tab, name)
      await tab.flush()
    }
    expect(names(await startTab(device)).sort()).toEqual(['From a (other tab)', 'From b'])
  })

  test('a trip made in one is listed in the other, which stays where it is', async () => {
    const { id, a, b } = await twoTabs()
    a.actions.createTrip({ ...emptyDraft(), name: 'Second' })
    await a.flush()
    await turns()
    expect(names(b)).toEqual(['Ridge', 'Second'])
    expect(b.state.library.value.open).toBe(id)
  })

  test('each has its own open trip and place, whatever settings they share', async () => {
    const { id, a, b } = await twoTabs()
    a.actions.createTrip({ ...emptyDraft(), name: 'Second' })
    a.actions.setPlace({ screen: 'packs', detail: null, scrollY: 9 })
    await a.flush()
    await turns()
    b.actions.setTheme('dark')
    b.actions.setBrightSun(true)
    b.actions.setLargeTargets(true)
    await b.flush()
    await turns()
    const shared = { theme: 'dark', brightSun: true, largeTargets: true }
    expect(b.state.library.value).toMatchObject({ open: id, place: { screen: 'trip' }, ...shared })
    expect(nameOf(a)).toBe('Second')
    expect(a.state.library.value).toMatchObject({ place: { screen: 'packs' }, ...shared })
  })

  test('trips made in both at once are both kept', async () => {
    const { device, a, b } = await twoTabs()
    a.actions.createTrip({ ...emptyDraft(), name: 'A' })
    b.actions.createTrip({ ...emptyDraft(), name: 'B' })
    await Promise.all([a.flush(), b.flush()])
    await turns()
    const library = await stored<Library>(device, 'library')
    expect(library?.order).toHaveLength(3)
    expect(names(await startTab(device)).sort()).toEqual(['A', 'B', 'Ridge'])
  })

  test('a trip removed in one goes in the other', async () => {
    const { id, a, b } = await twoTabs()
    a.actions.removeTrip(id)
    await a.flush()
    await turns()
    expect(names(b)).toEqual([])
    expect(b.state.openTrip.value).toBeNull()
  })

  test('a trip removed in one but changed in the other stays in both', async () => {
    for (const removedFirst of [true, false]) {
      const { device, id, a, b } = await twoTabs()
      device.channels.clear()
      a.actions.removeTrip(id)
      rename(b, 'Wanted')
      for (const tab of removedFirst ? [a, b] : [b, a]) await tab.flush()
      const fresh = await startTab(device)
      expect(names(fresh)).toEqual(['Wanted'])
      fresh.actions.openTripById(id)
      expect(fresh.state.canUndo.value).toBe(true)
    }
  })

  test('messages of another make are ignored', async () => {
    const { device, a, b } = await twoTabs()
    const [channel] = device.channels
    for (const data of [
      null,
      5,
      {},
      { type: 'saved' },
      { type: 'saved', key: 5, revision: 1 },
      { type: 'saved', key: 'trip/none', revision: 2 },
    ])
      channel?.onmessage?.({ data } as MessageEvent)
    await turns()
    expect([names(a), names(b)]).toEqual([['Ridge'], ['Ridge']])
    expect(told(a) + told(b)).toBe('')
  })
})

describe('a page that goes away', () => {
  test('leaves its unsaved edits for the next start, which saves them and clears up', async () => {
    const { device, id } = await deviceWithTrip()
    await leaving(device, tab => rename(tab, 'Last word'))
    expect((await stored<TripDocument>(device, `trip/${id}`))?.draft.name).toBe('Ridge')
    const next = await startTab(device)
    expect(names(next)).toEqual(['Last word'])
    expect((await stored<TripDocument>(device, `trip/${id}`))?.draft.name).toBe('Last word')
    expect(await asides(device)).toEqual([])
  })

  test('need not be told that it goes: what is typed is aside at once', async () => {
    const { device } = await deviceWithTrip()
    await leaving(device, tab => rename(tab, 'No farewell'), { told: false })
    expect(names(await startTab(device))).toEqual(['No farewell'])
  })

  test('leaves its last words also while a save is under way that never ends', async () => {
    const { device } = await deviceWithTrip()
    const hangs = new Promise<never>(() => {})
    const tab = await startTab(device, {
      // In the database itself, so that the next write to it waits too.
      through: use => (mode, callback) =>
        mode === 'readwrite' ? use(mode, () => hangs) : use(mode, callback),
    })
    rename(tab, 'First')
    void tab.flush()
    await turns()
    rename(tab, 'Last')
    await turns()
    tab.close()
    expect(names(await startTab(device))).toEqual(['Last'])
  })

  test('leaves them to the tab itself while that lives', async () => {
    const { device } = await deviceWithTrip()
    vi.stubGlobal('navigator', { locks: heldLocks() })
    const tab = await leaving(device, tab => rename(tab, 'Still typing'), { told: false })
    expect(names(await startTab(device))).toEqual(['Ridge'])
    vi.stubGlobal('navigator', {})
    expect(names(await startTab(device))).toEqual(['Still typing'])
    vi.unstubAllGlobals()
    tab.close()
  })

  test('is waited for while it is still on its way out', async () => {
    const { device } = await deviceWithTrip()
    const locks = heldLocks()
    vi.stubGlobal('navigator', { locks })
    await leaving(device, tab => rename(tab, 'On its way'))
    setTimeout(locks.letGo, 200)
    expect(names(await startTab(device))).toEqual(['On its way'])
    vi.unstubAllGlobals()
  })

  test('that cannot be read again keeps no start back, and is said', async () => {
    const { device } = await deviceWithTrip()
    const open = device.factory.open.bind(device.factory)
    vi.spyOn(device.factory, 'open').mockImplementation((name, version) => {
      if (name !== DATABASE) throw new DOMException('', 'UnknownError')
      return open(name, version)
    })
    const tab = await startTab(device)
    expect(names(tab)).toEqual(['Ridge'])
    expect(told(tab)).toMatch(/^What was typed last .* could not be looked up \(UnknownError\)/)
    rename(tab, 'Saved all the same')
    await tab.flush()
    expect(saveState(tab)).toEqual({ kind: 'saved' })
  })

  test('does not undo what another tab has saved meanwhile: both are kept', async () => {
    const { device } = await deviceWithTrip()
    await leaving(device, tab => rename(tab, 'Last word'))
    const raw = (await entries<string, TripDocument>(createDatabase({ factory: device.factory }))).find(
      ([key]) => key.startsWith('trip/'),
    )!
    await storeRaw(device, raw[0], {
      ...raw[1],
      draft: { ...raw[1].draft, name: 'Elsewhere' },
      changedAt: 9e9,
      revision: 7,
    })
    expect(names(await startTab(device)).sort()).toEqual(['Elsewhere', 'Last word (other tab)'])
  })

  test('puts nothing aside for good when its save does come through', async () => {
    const { device } = await deviceWithTrip()
    const tab = await startTab(device)
    rename(tab, 'Both ways')
    tab.leave()
    await tab.flush()
    expect((await entries(tab.use)).map(([key]) => String(key).split('/')[0]).sort()).toEqual([
      'library',
      'shelf',
      'shelf-revision',
      'step',
      'step',
      'trip',
    ])
    expect(await asides(device)).toEqual([])
    expect(names(await startTab(device))).toEqual(['Both ways'])
  })
})

/** The browser's locks; `letGo` is the end of the pages that hold them. */
function heldLocks() {
  const held = new Set<string>()
  let letGo = () => {}
  const free = new Promise<void>(resolve => {
    letGo = () => {
      held.clear()
      resolve()
    }
  })
  const request = async (name: string, ...more: unknown[]) => {
    const work = more.at(-1) as () => Promise<unknown>
    if (held.has(name)) await free
    held.add(name)
    const done = await work()
    held.delete(name)
    return done
  }
  return { request, letGo }
}

function counted(onWrite: () => void) {
  return (use: UseStore): UseStore =>
    (mode, callback) => {
      if (mode === 'readwrite') onWrite()
      return use(mode, callback)
    }
}
