// What is noted of trips that were erased for good, and of the erasure of everything: so that no other tab, no second
// copy and no page that was cut off brings them back. It holds nothing of a trip but its id.

import { get, type UseStore } from 'idb-keyval'
import type { Step } from './documents'
import { nameOf } from './messages'

/** `done`: it is gone from the places outside the database too; else the next start goes on with it. */
export interface Erased {
  format: 'pack-reckoner/erased'
  version: 1
  /** Milliseconds since 1970; each erasure of everything is later than the one before. */
  at: number
  done: boolean
}

export const erasedKey = (id: string) => `erased/${id}`
/** Of everything. */
export const ALL_ERASED_KEY = 'erased-all'

export const erasedNote = (at: number, done = false): Erased => ({
  format: 'pack-reckoner/erased',
  version: 1,
  at,
  done,
})

/** The note in a stored record, whatever that is; null where there is none. */
export const readErased = (stored: unknown): Erased | null => {
  const { at, done } = (stored ?? {}) as Partial<Erased>
  return stored === undefined ? null : erasedNote(Number(at) || 0, done === true)
}

/** Whether everything was erased by another tab since this one has read. */
export async function isErasedElsewhere(
  use: UseStore,
  { erasure }: { erasure: { ofAll: Erased | null } },
): Promise<boolean> {
  const stored = readErased(await get<unknown>(ALL_ERASED_KEY, use))
  return (stored?.at ?? 0) > (erasure.ofAll?.at ?? 0)
}

/** Whether a step would show something of a trip, or bring it back. */
export const mentions = ({ parts }: Pick<Step, 'parts'>, id: string): boolean =>
  parts.some(part => part.on !== 'shelf' && part.id === id)

const NAME = 'ErasedError'

/** Thrown where this tab still knows what another one has erased. */
export const erasedError = () =>
  Object.assign(new Error('everything was erased in another tab'), { name: NAME })
export const isErasedError = (error: unknown) => nameOf(error) === NAME
