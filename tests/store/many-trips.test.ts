// A backup brings thousands of trips at once: the page goes on while they are written.

import { batch } from '@preact/signals'
import { IDBObjectStore } from 'fake-indexeddb'
import { expect, test, vi } from 'vitest'
import { fileOf, MERGE, withTrips } from './kept'
import { asides, nameOf, names, newDevice, rename, startTab, turns } from './tab'

test('of many trips only some are written in one go, and all are stored', async () => {
  const device = newDevice()
  const tab = await startTab(device)
  let turn = 0
  let ticking = setImmediate(function tick() {
    turn += 1
    ticking = setImmediate(tick)
  })
  const perTurn = new Map<number, number>()
  const { put } = IDBObjectStore.prototype
  const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...given: [unknown, IDBValidKey?]
  ) {
    if (String(given[1]).startsWith('trip/')) perTurn.set(turn, (perTurn.get(turn) ?? 0) + 1)
    return put.apply(this, given)
  })
  for (let i = 0; i < 150; i++)
    tab.actions.createTrip({ carrier: {}, trip: { stops: [] }, gear: [], packs: [] })
  await tab.flush()
  clearImmediate(ticking)
  spy.mockRestore()
  expect(Math.max(...perTurn.values())).toBeLessThan(100)
  expect((await startTab(device)).state.tripList.peek()).toHaveLength(150)
})

test('trips that are long and many are put aside only when the page goes, a single one at every change', async () => {
  const device = newDevice()
  const tab = await startTab(device)
  const gear = Array.from({ length: 11_000 }, (_, i) => ({ id: `i${i}`, name: `Thing ${i}` }))
  const draft = { carrier: {}, trip: { stops: [] }, gear, packs: [] }
  tab.actions.createTrip(draft)
  await vi.waitFor(async () => expect(await asides(device)).toHaveLength(1))
  await tab.flush()
  expect(await asides(device)).toEqual([])
  batch(() => {
    tab.actions.createTrip(draft)
    tab.actions.createTrip(draft)
  })
  await turns()
  expect(await asides(device)).toEqual([])
  tab.leave()
  await turns()
  expect((await startTab(device)).state.tripList.peek()).toHaveLength(3)
})

test('while a backup comes in the page has its turns, and no edit made in one of them is lost', async () => {
  const kept = await withTrips()
  const [trip] = kept.state.tripList.peek()
  const trips = Array.from({ length: 100 }, (_, i) => ({ ...trip!, id: `t${i}` }))
  const file = fileOf({ ...kept.backups.contents(), trips })
  // Every step takes too long.
  let at = 0
  vi.spyOn(performance, 'now').mockImplementation(() => (at += 100))
  let edits = 0
  let ticking = setImmediate(function tick() {
    rename(kept, `Edited ${++edits}`)
    ticking = setImmediate(tick)
  })
  await kept.backups.takeIn(file, MERGE, 'Backup')
  clearImmediate(ticking)
  vi.restoreAllMocks()
  expect(edits).toBeGreaterThan(100)
  expect(names(kept)).toHaveLength(103)
  expect(nameOf(kept)).toBe(`Edited ${edits}`)
})
