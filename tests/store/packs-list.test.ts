// The list of packs that outlives the trips: what older versions kept with each trip, what trips bring, several tabs.

import { get, set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { addPack, type DraftPack, emptyDraft, removePack, setField } from '../../src/plan'
import { loadEngine } from '../../src/store/engine'
import { wholeDraft } from '../plan/drafts'
import { raw } from './copied'
import { type Device, leaving, names, newDevice, startTab, type Tab, told, turns } from './tab'

const pack = (id: string, bodyLitres: number, name = 'Big', setup = `${id}-s`): DraftPack => ({
  id,
  name,
  bodyLitres,
  setups: [{ id: setup, name: 'as sold', massKg: 1.6, frame: 'framed' }],
})

const listed = (tab: Tab) => tab.state.shelf.value.packs
const shown = (tab: Tab) => tab.state.openTrip.value?.draft.packs
const stored = async (tab: Tab, key: string) => (await get<Record<string, never>>(key, tab.use))!

/** As they were kept before the list: each trip with its packs, the shelf without any. */
const tripOfBefore = (id: string, name: string, ...packs: DraftPack[]) => ({
  ...{ format: 'pack-reckoner/trip', version: 2, id, demo: false, changedAt: 5, revision: 1, typed: {} },
  draft: { ...wholeDraft(), name, packs },
})
const shelfOfBefore = {
  ...{ format: 'pack-reckoner/shelf', version: 2, changedAt: 7, revision: 1, typed: {} },
  ...{ things: [{ id: 't', item: { name: 'Tent' }, changed: {} }], bases: [], packings: [] },
}
const libraryOfBefore = {
  ...{ format: 'pack-reckoner/library', version: 1, open: 'b', order: ['a', 'b'], system: 'us' },
  ...{ theme: 'dark', place: { screen: 'packs', detail: null, scrollY: 0 } },
}

async function deviceOfBefore(rest: Record<string, object> = {}): Promise<Device> {
  const device = newDevice()
  const records = {
    'trip/a': tripOfBefore('a', 'Ridge', pack('p', 60), pack('q', 30, 'Small')),
    'trip/b': tripOfBefore('b', 'Lake', pack('p', 60), pack('q', 35, 'Small')),
    shelf: shelfOfBefore,
    'shelf-revision': 1,
    library: libraryOfBefore,
    ...rest,
  }
  for (const [key, record] of Object.entries(records)) await set(key, record, raw(device))
  return device
}

const LIST = [pack('p', 60), pack('q', 30, 'Small'), pack('q-b', 35, 'Small (Lake)', 'q-s')]

describe('packs kept with their trips by an older version', () => {
  test('are on one list: the same once, others told apart by their trip, and stored so', async () => {
    const device = await deviceOfBefore()
    const tab = await startTab(device)
    expect(listed(tab)).toEqual(LIST)
    expect(shown(tab)).toEqual(LIST)
    expect(told(tab)).toBe('')
    await tab.flush()
    expect((await stored(tab, 'trip/a')).draft).toMatchObject({ packs: [] })
    expect((await stored(tab, 'shelf')).packs).toEqual(LIST)
    const next = await startTab(device)
    expect(listed(next)).toEqual(LIST)
    expect(names(next)).toEqual(['Ridge', 'Lake'])
    expect(next.state.shelf.value.things).toEqual(shelfOfBefore.things)
    expect(next.state.canUndo.value).toBe(false)
  })

  test('are on the same list where two tabs put them there at once', async () => {
    const device = await deviceOfBefore()
    device.channels.clear()
    const [a, b] = await Promise.all([startTab(device), startTab(device)])
    await Promise.all([a.flush(), b.flush()])
    for (const tab of [a, b, await startTab(device)]) expect([listed(tab), told(tab)]).toEqual([LIST, ''])
  })

  test('of a removed trip come with it when it is brought back', async () => {
    const trip = tripOfBefore('c', 'Moor', pack('m', 45, 'Middle'))
    const removed = { format: 'pack-reckoner/removed', version: 2, trip, at: 9, how: 'removed' }
    const tab = await startTab(await deviceOfBefore({ 'removed/c': removed }))
    tab.actions.restoreTrip('c')
    expect(listed(tab)).toEqual([...LIST, pack('m', 45, 'Middle')])
    tab.actions.undo()
    expect(listed(tab)).toEqual(LIST)
  })

  test('stay with their trips while a newer version’s list cannot be written', async () => {
    const newer = { ...shelfOfBefore, version: 99 }
    const device = await deviceOfBefore({ shelf: newer })
    const tab = await startTab(device)
    expect(shown(tab)).toEqual(tripOfBefore('b', '', pack('p', 60), pack('q', 35, 'Small')).draft.packs)
    tab.actions.edit('Wet', draft => ({ ...draft, trip: { ...draft.trip, wet: true } }))
    await tab.flush()
    expect((await stored(tab, 'trip/b')).draft).toMatchObject({ packs: [{ id: 'p' }, { id: 'q' }] })
    expect(await stored(tab, 'shelf')).toEqual(newer)
  })
})

describe('the list of packs', () => {
  const twoPacks = async (device = newDevice()) => {
    const tab = await startTab(device)
    tab.actions.createTrip({ ...emptyDraft(), name: 'Ridge', packs: [pack('p', 60), pack('q', 30, 'Small')] })
    tab.actions.createTrip({ ...emptyDraft(), name: 'Lake' })
    await tab.flush()
    return { device, tab }
  }

  test('judges whatever trip is open, and outlives it', async () => {
    const { tab } = await twoPacks()
    expect(shown(tab)?.map(({ name }) => name)).toEqual(['Big', 'Small'])
    for (const { id } of tab.state.tripList.value) tab.actions.removeTrip(id)
    tab.actions.createTrip(emptyDraft())
    await loadEngine()
    expect(shown(tab)).toHaveLength(2)
    expect(tab.state.reckoned.value?.plan.packs.map(({ name }) => name)).toEqual(['Big', 'Small'])
  })

  test('is edited from any trip, one step each, which leaves the trips alone', async () => {
    const { tab } = await twoPacks()
    const trips = tab.state.trips.value
    tab.actions.setField('packs/q/price', 120, null)
    tab.actions.edit('Delete Big', draft => removePack(draft, 'p'))
    expect(listed(tab)).toEqual([{ ...pack('q', 30, 'Small'), price: 120 }])
    expect(tab.state.trips.value).toBe(trips)
    tab.actions.undo()
    tab.actions.undo()
    expect(listed(tab)).toEqual([pack('p', 60), pack('q', 30, 'Small')])
  })

  test('takes in only what is new of a trip that brings packs, and undo takes both away', async () => {
    const { tab } = await twoPacks()
    const before = listed(tab)
    tab.actions.createTrip({ ...emptyDraft(), packs: [pack('x', 60), pack('y', 80, 'Huge')] })
    expect(listed(tab)).toEqual([...before, pack('y', 80, 'Huge')])
    tab.actions.undo()
    expect(listed(tab)).toEqual(before)
    tab.actions.redo()
    expect(listed(tab)).toHaveLength(3)
  })

  test('keeps the text that is no number yet with the pack it was typed at', async () => {
    const { device, tab } = await twoPacks()
    tab.actions.setField('packs/q/price', undefined, 'cheap')
    await tab.flush()
    const next = await startTab(device)
    expect(next.state.openTrip.value?.typed).toEqual({ 'packs/q/price': 'cheap' })
    next.actions.edit('Delete Small', draft => removePack(draft, 'q'))
    expect(next.state.shelf.value.typed).toEqual({})
    next.actions.undo()
    expect(next.state.shelf.value.typed).toEqual({ 'packs/q/price': 'cheap' })
  })

  test('of two tabs is joined field by field; a field that both changed leaves two packs', async () => {
    const { device, tab: a } = await twoPacks()
    const b = await startTab(device)
    device.channels.clear()
    a.actions.setField('packs/p/price', 200, null)
    a.actions.setField('packs/q/bodyLitres', 31, null)
    b.actions.setField('packs/p/notes', 'squeaks', null)
    b.actions.setField('packs/q/bodyLitres', 32, null)
    b.actions.edit('Add', draft => addPack(draft, () => 'new', { with: { name: 'New' } }))
    await a.flush()
    await b.flush()
    expect(listed(b)[0]).toEqual({ ...pack('p', 60), price: 200, notes: 'squeaks' })
    expect(listed(b).map(({ name, bodyLitres }) => [name, bodyLitres])).toEqual([
      ['Big', 60],
      ['Small', 32],
      ['Small (other tab)', 31],
      ['New', undefined],
    ])
    expect(told(b)).toMatch(/“Small” on your shelf: also changed in another tab/)
  })

  test('is followed by another open tab', async () => {
    const { device, tab: a } = await twoPacks()
    const b = await startTab(device)
    a.actions.setField('packs/p/starred', true, null)
    await a.flush()
    await turns()
    expect(listed(b)[0]?.starred).toBe(true)
  })

  test('has what was said last where a page went away before it was saved', async () => {
    const { device } = await twoPacks()
    await leaving(device, tab => tab.actions.setField('packs/p/notes', 'squeaks', null))
    expect(listed(await startTab(device))[0]?.notes).toBe('squeaks')
  })

  test('never holds the demo’s packs, and the demo is judged by both', async () => {
    const { tab } = await twoPacks()
    tab.actions.createTrip({ ...emptyDraft(), packs: [pack('d', 44, 'Invented')] }, { demo: true })
    expect(listed(tab)).toHaveLength(2)
    expect(shown(tab)?.map(({ id }) => id)).toEqual(['d', 'p', 'q'])
    tab.actions.edit('Smaller', draft => setField(draft, 'packs/d/bodyLitres', 40))
    expect(listed(tab)).toHaveLength(2)
    expect(shown(tab)?.[0]?.bodyLitres).toBe(40)
    tab.actions.duplicateTrip(tab.state.library.value.open!)
    expect(listed(tab).map(({ name }) => name)).toEqual(['Big', 'Small', 'Invented'])
  })
})
