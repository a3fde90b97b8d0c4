// The door to the engine: null until it has been fetched.

import { signal } from '@preact/signals'
import type * as reckoning from './reckoning'

export const engine = signal<typeof reckoning | null>(null)

/** Fetches the engine, once. Rejects where it cannot be had, as in an old tab after an update with no network. */
export async function loadEngine(): Promise<void> {
  if (!engine.peek()) engine.value = await import('./reckoning')
}
