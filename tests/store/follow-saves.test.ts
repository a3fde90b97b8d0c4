// When the day's snapshot is taken: in a quiet moment after a save, until one was kept.

import { signal } from '@preact/signals'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { Backups } from '../../src/store/lazy/backups'
import { followSaves } from '../../src/store/lazy/snapshots-page'
import type { State } from '../../src/store/state'

const QUIET_MS = 20_000
const DAY_MS = 86_400_000

beforeEach(() => void vi.useFakeTimers({ now: new Date(2026, 4, 1, 12) }))
afterEach(() => void vi.useRealTimers())

/** Saves to follow, and a place that keeps a snapshot or says why it cannot. */
function followed() {
  const saveState = signal({ kind: 'saved' })
  const place: { problem: string | null; asked: number } = { problem: null, asked: 0 }
  const backups = {
    snapshot: async () => {
      place.asked += 1
      return place.problem
    },
    remind: async () => {},
  }
  const state = {
    saveState,
    loaded: signal(true),
    trips: signal(new Map([['a', {}]])),
    shelf: signal({ things: [] }),
  }
  followSaves(backups as unknown as Backups, { state: state as unknown as State })
  const save = async () => {
    saveState.value = { kind: 'saved' }
    await vi.advanceTimersByTimeAsync(QUIET_MS)
  }
  return { place, save }
}

test('a snapshot that was kept is the only one of its day', async () => {
  const { place, save } = followed()
  await save()
  await save()
  expect(place.asked).toBe(1)
  await vi.advanceTimersByTimeAsync(DAY_MS)
  await save()
  expect(place.asked).toBe(2)
})

test('one that could not be kept is tried again at the next quiet moment', async () => {
  const { place, save } = followed()
  place.problem = 'The device is full.'
  await save()
  expect(place.asked).toBe(1)
  place.problem = null
  await save()
  expect(place.asked).toBe(2)
  await save()
  expect(place.asked).toBe(2)
})
