// A backup brings thousands of trips at once: the page goes on while they are written.

import { IDBObjectStore } from 'fake-indexeddb'
import { expect, test, vi } from 'vitest'
import { newDevice, startTab } from './tab'

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
