// Long because all of it drives the same fake pages through saving, joining, leaving and loss.
// The shelf on the device: saved, joined between tabs, put aside by a page that goes, and brought back from the copy.

import { del, get, set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { addThing, removeThings, type Shelf, setThing } from '../../src/plan/shelf'
import type { Unsaved } from '../../src/store/documents'
import { createSecondCopy } from '../../src/store/second-copy/second-copy'
import { wholeDraft } from '../plan/drafts'
import { copiedTab, lose, newCopied, raw, vaultOf } from './copied'
import { asides, type Device, leaving, names, newDevice, startTab, type Tab, told, turns } from './tab'

const shelve = (tab: Tab, name: string) =>
  tab.actions.editShelf(`Add ${name}`, shelf =>
    addThing(shelf, { ...tab, now: tab.now() }, { with: { name } }),
  )
const things = (tab: Tab) => tab.state.shelf.value.things.map(({ item }) => item.name)
const idOf = (tab: Tab, name: string) =>
  tab.state.shelf.value.things.find(({ item }) => item.name === name)?.id ?? ''
const weigh = (tab: Tab, name: string, massKg: number) =>
  tab.actions.setThingField(idOf(tab, name), 'massKg', massKg, null)
const masses = (tab: Tab) =>
  Object.fromEntries(tab.state.shelf.value.things.map(({ item }) => [item.name, item.massKg]))
const stored = (device: Device) => get<Shelf>('shelf', raw(device))

/** A device whose shelf holds a tent and a stove. */
async function deviceWithShelf() {
  const device = newCopied()
  const tab = await copiedTab(device)
  shelve(tab, 'Tent')
  shelve(tab, 'Stove')
  await tab.keep()
  tab.close()
  return device
}

describe('the shelf', () => {
  test('is there after a reload with its steps, and counts its saves', async () => {
    const device = await deviceWithShelf()
    const tab = await startTab(device)
    expect(things(tab)).toEqual(['Tent', 'Stove'])
    weigh(tab, 'Tent', 1.4)
    await tab.flush()
    expect((await stored(device))?.revision).toBe(2)
    const next = await startTab(device)
    expect(next.state.lastLabel.value).toBe('Tent, mass (on the shelf)')
    next.actions.undo()
    next.actions.undo()
    expect(masses(next)).toEqual({ Tent: undefined })
    await next.flush()
    const last = await startTab(device)
    expect(things(last)).toEqual(['Tent'])
    last.actions.redo()
    last.actions.redo()
    expect(masses(last)).toEqual({ Tent: 1.4, Stove: undefined })
  })

  test('costs a first visit no record while nothing is on it', async () => {
    const tab = await startTab(newDevice())
    tab.actions.createTrip(emptyDraft())
    await tab.flush()
    expect(await get('shelf', tab.use)).toBeUndefined()
  })

  test('a save writes the step that was made, not those before it', async () => {
    const device = await deviceWithShelf()
    const puts: string[] = []
    const tab = await startTab(device, {
      through: use => (mode, callback) =>
        use(mode, store => {
          const put = store.put.bind(store)
          store.put = (value, key) => {
            puts.push(String(key).split('/')[0]!)
            return put(value, key)
          }
          return callback(store)
        }),
    })
    weigh(tab, 'Tent', 1.4)
    await tab.flush()
    expect(puts.sort()).toEqual(['shelf', 'shelf-revision', 'step'])
  })

  test('that is damaged is set aside and said; a new one is kept from then on', async () => {
    const device = newDevice()
    await set('shelf', { format: 'pack-reckoner/shelf', version: 1, things: 5 }, raw(device))
    const tab = await startTab(device)
    expect(told(tab)).toContain('The shelf is damaged')
    expect(tab.state.damaged.value).toMatchObject([{ what: 'The shelf' }])
    expect(await get(tab.state.damaged.value[0]!.key, raw(device))).toMatchObject({ things: 5 })
    shelve(tab, 'Tent')
    await tab.flush()
    const next = await startTab(device)
    expect([things(next), told(next)]).toEqual([['Tent'], ''])
    expect(next.state.damaged.value).toHaveLength(1)
  })

  test('of a newer version is left alone, and what is changed is not said to be saved', async () => {
    const device = newDevice()
    const newer = { format: 'pack-reckoner/shelf', version: 9 }
    await set('shelf', newer, raw(device))
    const tab = await startTab(device)
    expect(tab.state.saveState.value.kind).toBe('saved')
    shelve(tab, 'Tent')
    await tab.flush()
    expect(tab.state.saveState.value).toMatchObject({
      kind: 'failed',
      message: expect.stringContaining('newer version'),
    })
    expect(await stored(device)).toEqual(newer)
  })
})

describe('tabs on one shelf', () => {
  async function tabs(count: number) {
    const device = await deviceWithShelf()
    const all: Tab[] = []
    for (let i = 0; i < count; i++) all.push(await startTab(device))
    return { device, all: all as [Tab, Tab, Tab] }
  }

  test('what one saves the others show, and only that one takes back', async () => {
    const { all } = await tabs(3)
    const [a, b, c] = all
    const before = c.state.lastLabel.value
    weigh(a, 'Tent', 1.4)
    await a.flush()
    await turns()
    expect([masses(b), masses(c)]).toEqual([masses(a), masses(a)])
    expect(c.state.lastLabel.value).toBe(before)
    a.actions.undo()
    await a.flush()
    await turns()
    expect(masses(c)).toEqual({ Tent: undefined, Stove: undefined })
    a.actions.redo()
    expect(masses(a).Tent).toBe(1.4)
    expect(told(a) + told(b) + told(c)).toBe('')
  })

  test('three tabs that change different things at once lose nothing', async () => {
    for (const silent of [true, false]) {
      const { device, all } = await tabs(3)
      if (silent) device.channels.clear()
      const [a, b, c] = all
      weigh(a, 'Tent', 1.4)
      weigh(b, 'Stove', 0.2)
      shelve(c, 'Mat')
      await Promise.all(all.map(tab => tab.flush()))
      await turns(200)
      await Promise.all(all.map(tab => tab.flush()))
      const fresh = await startTab(device)
      expect(masses(fresh)).toEqual({ Tent: 1.4, Stove: 0.2, Mat: undefined })
      if (!silent) expect(all.map(masses)).toEqual([masses(fresh), masses(fresh), masses(fresh)])
      expect(all.map(told).join('')).toBe('')
      // Each of the three can still be taken back.
      for (let i = 0; i < 3; i++) fresh.actions.undo()
      expect(masses(fresh)).toEqual({ Tent: undefined, Stove: undefined })
    }
  })

  test('a thing changed differently in two is kept twice, and it is said', async () => {
    const { device, all } = await tabs(2)
    const [a, b] = all
    weigh(a, 'Tent', 1.4)
    weigh(b, 'Tent', 1.6)
    await a.flush()
    await b.flush()
    await turns()
    const both = { Tent: 1.6, 'Tent (other tab)': 1.4, Stove: undefined }
    expect([masses(a), masses(b), masses(await startTab(device))]).toEqual([both, both, both])
    expect(told(b)).toContain('“Tent” on your shelf: also changed in another tab')
  })

  test('undo passes over a step that the other tab’s version has taken the place of', async () => {
    const { device, all } = await tabs(2)
    device.channels.clear()
    const [a, b] = all
    weigh(a, 'Tent', 1.4)
    await a.flush()
    weigh(b, 'Tent', 1.6)
    await b.flush()
    const fresh = await startTab(device)
    fresh.actions.undo()
    expect(masses(fresh).Tent).toBeUndefined()
    fresh.actions.undo()
    // Not 1.4, which is the other one's, nor what was before it: the step before is another thing's.
    expect(things(fresh)).not.toContain('Stove')
    expect(things(fresh)).toContain('Tent (other tab)')
  })

  test('an edit made while a save joins another tab’s is not lost either', async () => {
    const { device, all } = await tabs(1)
    device.channels.clear()
    const [a] = all
    const other = await startTab(device)
    shelve(other, 'Mat')
    await other.flush()
    weigh(a, 'Tent', 1.4)
    const saving = a.flush()
    weigh(a, 'Stove', 0.2)
    await saving
    await a.flush()
    expect(masses(await startTab(device))).toEqual({ Tent: 1.4, Stove: 0.2, Mat: undefined })
    expect(masses(a)).toEqual({ Tent: 1.4, Stove: 0.2, Mat: undefined })
  })

  test('a removed trip is among the removed ones in the other tab too, and comes back from there', async () => {
    const device = newDevice()
    const [a, b] = [await startTab(device), await startTab(device)]
    const id = a.actions.createTrip(wholeDraft())
    await a.flush()
    await turns()
    a.actions.removeTrip(id)
    await a.flush()
    await turns()
    expect(names(b)).toEqual([])
    expect(b.state.removedTrips.value.map(({ trip }) => trip.draft.name)).toEqual(['Ridge'])
    b.actions.restoreTrip(id)
    await b.flush()
    await turns()
    expect([names(a), a.state.removedTrips.value]).toEqual([['Ridge'], []])
    const fresh = await startTab(device)
    expect([names(fresh), fresh.state.removedTrips.value]).toEqual([['Ridge'], []])
  })
})

describe('a page that goes away', () => {
  test('leaves what is unsaved of the shelf and its steps for the next start', async () => {
    const device = await deviceWithShelf()
    await leaving(device, tab => {
      weigh(tab, 'Tent', 1.4)
      shelve(tab, 'Mat')
      tab.actions.editShelf('Delete Stove', shelf => removeThings(shelf, [idOf(tab, 'Stove')]))
    })
    const [unsaved] = await asides(device)
    // Only what was changed: thousands of other things stay where they are.
    expect((unsaved as Unsaved).shelf?.after.things).toHaveLength(2)
    const next = await startTab(device)
    expect(masses(next)).toEqual({ Tent: 1.4, Mat: undefined })
    next.actions.undo()
    expect(things(next)).toEqual(['Tent', 'Stove', 'Mat'])
    await next.flush()
    const last = await startTab(device)
    expect(masses(last)).toEqual({ Tent: 1.4, Stove: undefined, Mat: undefined })
    expect(await asides(device)).toEqual([])
  })

  test('is joined to what another tab has saved meanwhile', async () => {
    const device = await deviceWithShelf()
    await leaving(device, tab => weigh(tab, 'Tent', 1.4))
    const shelf = (await stored(device))!
    const theirs = setThing(shelf, shelf.things[1]!.id, { item: { massKg: 0.2 } }, 5)
    await set('shelf', { ...theirs, changedAt: 9e12, revision: 7 }, raw(device))
    const next = await startTab(device)
    expect(masses(next)).toEqual({ Tent: 1.4, Stove: 0.2 })
    expect(told(next)).toBe('')
  })

  test('typing on after a save that did come through makes no second version', async () => {
    const device = await deviceWithShelf()
    let hold = false
    const tab = await startTab(device, {
      through: use => async (mode, callback) => {
        const done = use(mode, callback)
        // It is written, but the page never learns of it.
        if (hold && mode === 'readwrite') await done.then(() => new Promise(() => {}))
        return done
      },
    })
    hold = true
    weigh(tab, 'Tent', 1)
    void tab.flush()
    await turns()
    weigh(tab, 'Tent', 1.4)
    tab.leave()
    await turns()
    const next = await startTab(device)
    expect(masses(next)).toEqual({ Tent: 1.4, Stove: undefined })
    expect(told(next)).toBe('')
  })
})

describe('the second copy', () => {
  test('brings back a shelf that the browser has lost', async () => {
    for (const whole of [true, false]) {
      const device = await deviceWithShelf()
      if (whole) lose(device)
      else await del('shelf', raw(device))
      const next = await copiedTab(device)
      expect(things(next)).toEqual(['Tent', 'Stove'])
      expect(told(next)).toContain('had lost your shelf')
      const after = await copiedTab(device)
      expect([things(after), told(after)]).toEqual([['Tent', 'Stove'], ''])
    }
  })

  test('brings back the newest where an older state was kept, which undo shows', async () => {
    const device = await deviceWithShelf()
    const old = await stored(device)
    const tab = await copiedTab(device)
    weigh(tab, 'Tent', 1.4)
    await tab.keep()
    await set('shelf', old, raw(device))
    const next = await copiedTab(device)
    expect(masses(next).Tent).toBe(1.4)
    expect(told(next)).toContain('only an older state of your shelf')
    next.actions.undo()
    expect(masses(next).Tent).toBeUndefined()
    expect(told(await copiedTab(device))).toBe('')
  })

  test('takes the place of a damaged one', async () => {
    const device = await deviceWithShelf()
    await set('shelf', { ...(await stored(device)), things: 5 }, raw(device))
    const next = await copiedTab(device)
    expect(things(next)).toEqual(['Tent', 'Stove'])
    expect(things(await copiedTab(device))).toEqual(['Tent', 'Stove'])
  })

  test('is joined where the database holds something else under the same count', async () => {
    const device = await deviceWithShelf()
    const shelf = (await stored(device))!
    await set('shelf', { ...shelf, things: shelf.things.slice(1) }, raw(device))
    const next = await copiedTab(device)
    expect(things(next)).toEqual(['Tent', 'Stove'])
    expect(told(next)).toContain('both are joined')
    expect(told(await copiedTab(device))).toBe('')
  })

  test('gives order and settings back where the list of trips was damaged', async () => {
    const device = newCopied()
    const tab = await copiedTab(device)
    const [one, two] = [tab.actions.createTrip(wholeDraft()), tab.actions.createTrip(wholeDraft())]
    tab.actions.moveTrip(two, 0)
    tab.actions.setTheme('dark')
    await tab.keep()
    await set('library', 'broken', raw(device))
    const next = await copiedTab(device)
    expect(next.state.library.value).toMatchObject({ order: [two, one], theme: 'dark' })
  })

  test('is shown and can be edited while the database does not answer; then both are joined', async () => {
    const device = await deviceWithShelf()
    let open = false
    const tab = await startTab(device, {
      through: use => (mode, callback) =>
        open ? use(mode, callback) : Promise.reject(new DOMException('', 'UnknownError')),
    })
    await createSecondCopy({ ...tab, vault: vaultOf(device), alone: work => work() }).check()
    expect(things(tab)).toEqual(['Tent', 'Stove'])
    weigh(tab, 'Tent', 1.4)
    const shelf = (await stored(device))!
    const lazy = setThing(shelf, shelf.things[1]!.id, { item: { massKg: 0.2 } }, 5)
    await set('shelf', { ...lazy, changedAt: 9e12, revision: 7 }, raw(device))
    open = true
    await tab.flush()
    await tab.flush()
    expect(masses(tab)).toEqual({ Tent: 1.4, Stove: 0.2 })
    expect(masses(await startTab(device))).toEqual({ Tent: 1.4, Stove: 0.2 })
  })
})
