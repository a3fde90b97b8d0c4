// The door to the engine, and to the words of fields that come with it: null until it has been fetched.

import { signal } from '@preact/signals'
import type { Draft } from '../plan'
import type * as reckoning from './reckoning'

export const engine = signal<typeof reckoning | null>(null)

/** Fetches the engine, once. Rejects where it cannot be had, as in an old tab after an update with no network. */
export async function loadEngine(): Promise<void> {
  if (!engine.peek()) engine.value = await import('./reckoning')
}

/** A field of a trip or a pack in words: `Food, mass`. The words come with the engine, which whatever shows fields has fetched. */
export const describeField = (draft: Draft, path: string): string =>
  engine.peek()?.describeField(draft, path) ?? 'Change'
