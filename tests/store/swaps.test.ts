// Alternatives where they are kept: in the trip's own record, joined with another tab's, in backups, and nowhere that a
// plan goes.

import { set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { gearCsv } from '../../src/files/csv'
import { shareLink } from '../../src/files/share'
import {
  type Draft,
  describeField,
  fromPlanDocument,
  parsePlan,
  settle,
  toPlanDocument,
} from '../../src/plan'
import { addSwaps, alternativesOf, emptyShelf, removeThings, swapItem } from '../../src/plan/shelf'
import type { TripDocument } from '../../src/store/documents'
import { mergeTrips } from '../../src/store/merge-trips'
import { opened } from '../files/backups'
import { counter, wholeDraft } from '../plan/drafts'
import { thing } from '../plan/shelf/shelves'
import { raw } from './copied'
import { erasableTab, everything, newErasable } from './erasable'
import { keptTab, MERGE, REPLACE } from './kept'
import { newDevice, startTab, told } from './tab'

const QUILT = thing('quilt', { item: { name: 'Quilt', massKg: 0.5, litres: 6 } })
const TARP = thing('tarp', { item: { name: 'Tarp', massKg: 0.4, litres: 2 } })

type Tabs = Pick<Awaited<ReturnType<typeof startTab>>, 'actions' | 'state'>

const swapsOf = ({ state }: Tabs) => state.openTrip.value?.draft.gear.find(({ id }) => id === 'pot')?.swaps
const choose = ({ actions }: Tabs, ...ids: string[]) =>
  actions.edit('Choose', draft => addSwaps(draft, 'pot', ids))
const take = ({ actions }: Tabs, thingId: string) =>
  actions.editBoth('Take', both => swapItem(both, { itemId: 'pot', thingId, newId: counter('new'), now: 5 }))

function begin(tab: Tabs) {
  tab.actions.editShelf('Fill', shelf => ({ ...shelf, things: [QUILT, TARP] }))
  return tab.actions.createTrip(wholeDraft())
}

describe('on the device', () => {
  test('alternatives are there after a reload; a swap is one step, of trip and shelf together', async () => {
    const device = newDevice()
    const tab = await startTab(device)
    begin(tab)
    choose(tab, 'quilt')
    const before = tab.state.openTrip.value!.draft
    take(tab, 'quilt')
    await tab.flush()
    const again = await startTab(device)
    expect(again.state.openTrip.value?.draft.gear[2]).toMatchObject({ name: 'Quilt', inside: 'box' })
    expect(again.state.shelf.value.things.map(({ item }) => item.name)).toEqual(['Quilt', 'Tarp', 'Pot'])
    again.actions.undo()
    expect(again.state.openTrip.value?.draft.gear).toEqual(before.gear)
    expect(again.state.shelf.value.things).toHaveLength(2)
    again.actions.redo()
    expect(again.state.shelf.value.things).toHaveLength(3)
    expect(swapsOf(again)).toEqual([{ id: 'new1' }])
  })

  test('two tabs that each add one have both, and no clash', async () => {
    const device = newDevice()
    const one = await startTab(device)
    begin(one)
    await one.flush()
    const other = await startTab(device)
    device.channels.clear()
    choose(one, 'quilt')
    choose(other, 'tarp')
    await one.flush()
    await other.flush()
    const joined = await startTab(device)
    expect(new Set(swapsOf(joined)?.map(({ id }) => id))).toEqual(new Set(['quilt', 'tarp']))
    expect(told(other)).toBe('')
  })

  test('two tabs that take different things: ours stands, both stay to be chosen, and the words name fields', () => {
    const [base, ours, theirs] = [null, 'quilt', 'tarp'].map(taken => {
      const draft = addSwaps(wholeDraft(), 'pot', ['quilt', 'tarp'])
      const shelf = { ...emptyShelf(), things: [QUILT, TARP] }
      const outside = { newId: () => 'pot on the shelf', now: 5 }
      const made = taken
        ? swapItem({ draft, shelf }, { itemId: 'pot', thingId: taken, ...outside })
        : { draft }
      return tripOf(made.draft)
    })
    const { trip, clashes } = mergeTrips({ base, ours: ours!, theirs: theirs! })
    const pot = trip.draft.gear[2]!
    expect([pot.name, pot.shelf?.id]).toEqual(['Quilt', 'quilt'])
    const all = { ...emptyShelf(), things: [QUILT, TARP, thing('pot on the shelf')] }
    expect(alternativesOf(pot, all).there.map(it => it.thing.id)).toEqual(['pot on the shelf'])
    expect(clashes.map(path => describeField(trip.draft, path))).toEqual(
      expect.arrayContaining(['Quilt, name', 'Quilt, mass']),
    )
    expect(describeField(trip.draft, 'gear/pot/swaps/tarp/own')).toBe('Quilt, alternatives')
  })

  test('a thing that goes from the shelf comes back to the choice by undo', async () => {
    const tab = await startTab(newDevice())
    begin(tab)
    choose(tab, 'quilt', 'tarp')
    const there = () =>
      alternativesOf(tab.state.openTrip.value!.draft.gear[2]!, tab.state.shelf.value).there.map(
        it => it.thing.id,
      )
    tab.actions.editShelf('Delete', shelf => removeThings(shelf, ['quilt']))
    expect(there()).toEqual(['tarp'])
    tab.actions.undo()
    expect(there()).toEqual(['quilt', 'tarp'])
  })

  test('nothing of an alternative is left of a trip that is erased', async () => {
    const device = newErasable()
    const tab = await erasableTab(device)
    begin(tab)
    choose(tab, 'quilt', 'tarp')
    take(tab, 'quilt')
    tab.actions.setField('gear/pot/name', 'Zwischbergen', null)
    take(tab, 'tarp')
    expect(JSON.stringify(swapsOf(tab))).toContain('Zwischbergen')
    await tab.keep()
    const { id } = tab.state.openTrip.value!
    tab.actions.removeTrip(id)
    await tab.keep()
    expect(await everything(device)).toContain('Zwischbergen')
    expect(await tab.erasing.trip(id)).toBeNull()
    await tab.keep()
    expect(await everything(device)).not.toContain('Zwischbergen')
  })
})

test.each([MERGE, REPLACE])('a backup holds them, and gives them back: $how', async wishes => {
  const tab = await keptTab()
  begin(tab)
  choose(tab, 'quilt', 'tarp')
  take(tab, 'quilt')
  tab.actions.setField('gear/pot/massKg', 0.9, null)
  take(tab, 'tarp')
  const text = await (await tab.backups.file()).text.text()
  const next = await keptTab()
  await next.backups.takeIn(opened(text), wishes, 'Backup')
  expect(next.text()).toBe(tab.text())
  expect(opened(text).trips[0]!.draft.gear[2]!.swaps).toEqual(swapsOf(tab))
  expect(swapsOf(tab)).toEqual([
    { id: 'new1' },
    { id: 'quilt', own: { at: 5, item: { name: 'Quilt', massKg: 0.9, litres: 6 } } },
  ])
})

describe('what leaves the app', () => {
  const draft = addSwaps(wholeDraft(), 'pot', ['quilt-on-the-shelf'])
  const plain = wholeDraft()

  test('plan files, links and tables say nothing of them', async () => {
    expect(JSON.stringify(toPlanDocument(draft))).toBe(JSON.stringify(toPlanDocument(plain)))
    const { document } = settle(draft)
    expect(JSON.stringify(document)).toBe(JSON.stringify(settle(plain).document))
    const base = new URL('https://hiker.example/')
    const links = await Promise.all([document, settle(plain).document].map(it => shareLink(it, base)))
    expect(links[0]).toEqual(links[1])
    expect(links[0]!.ok).toBe(true)
    expect(gearCsv(draft.gear, { system: 'metric' })).toBe(gearCsv(plain.gear, { system: 'metric' }))
  })

  test('a trip that comes from a file has none, and one from a file that names them is refused', () => {
    const document = JSON.parse(JSON.stringify(settle(draft).document))
    const parsed = parsePlan(document)
    if (!parsed.ok) throw new Error('refused')
    expect(fromPlanDocument(parsed.document, counter()).gear.some(item => 'swaps' in item)).toBe(false)
    document.gear[2].swaps = [{ id: 'quilt' }]
    expect(parsePlan(document).ok).toBe(false)
  })
})

test('a trip and a shelf as they were stored before there were alternatives are opened as they were', async () => {
  const draft: Draft = {
    ...wholeDraft(),
    packs: [],
    gear: [
      { id: 'bag', name: 'Bag', massKg: 0.7, shelf: { id: 'quilt', at: 4 }, atHome: true },
      {
        id: 'food',
        name: 'Food',
        massKg: 0.7,
        use: 'daily',
        litresFrom: 'kind',
        litresRange: { low: 1, typical: 1.4, high: 2.1 },
        litresPerKg: { low: 1.4, typical: 2, high: 3 },
      },
    ],
    takes: { pack: 'big', setup: 'sold' },
  }
  const before = { ...tripOf(draft), version: 3, typed: { 'gear/bag/litres': 'some' } }
  const device = newDevice()
  const use = raw(device)
  await set('trip/trip', structuredClone(before), use)
  await set('shelf', { ...emptyShelf(), changedAt: 1, revision: 1, things: [QUILT] }, use)
  const tab = await startTab(device)
  const opened = tab.state.trips.value.get('trip')!
  expect([opened.draft, opened.typed]).toEqual([before.draft, before.typed])
  expect(tab.state.shelf.value.things).toEqual([QUILT])
  expect(told(tab)).toBe('')
})

function tripOf(draft: Draft): TripDocument {
  const head = { format: 'pack-reckoner/trip', version: 5, id: 'trip', demo: false } as const
  return { ...head, changedAt: 1, revision: 1, draft, typed: {} }
}
