// What was taken in is said to be here only when it is on the device: until then it is being taken in.

import { useEffect, useRef } from 'preact/hooks'
import { flush, saveState } from '../../store'

/** `unsaved`: it is in the app, and cannot be written now. */
export type Stored = 'saving' | 'saved' | 'unsaved'

/** How far the storing of what was just done is. `deed` is another one for each thing that is done. */
export function useStored(deed: unknown): Stored {
  const stored = useRef<unknown>(undefined)
  useEffect(() => void flush(), [deed])
  const { kind } = saveState.value
  if (kind === 'saved') stored.current = deed
  if (stored.current === deed) return 'saved'
  return kind === 'saving' ? 'saving' : 'unsaved'
}

const HOW: Record<Stored, (what: string, to: string) => string> = {
  saving: (what, to) => `Adding ${what} to the ${to}…`,
  saved: (what, to) => `${what} added to the ${to}.`,
  unsaved: (what, to) => `${what} added to the ${to}, but not saved.`,
}

/** Says that so many things were added. */
export function AddedWords({
  deed,
  what,
  to,
}: {
  deed: unknown
  what: string
  to: 'gear' | 'shelf' | 'packs'
}) {
  return <>{HOW[useStored(deed)](what, to)}</>
}
