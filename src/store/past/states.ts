// What a trip was before each step of the journal that changed it, but for those that only noted something. Pure.

import type { StepPart, TripDocument } from '../documents'
import { type Contents, contentsOf, isNote, type Journal } from '../journal'
import { patched, REFUSED } from '../patch'

export interface PastState extends Contents {
  /** The step that ended it: its id, its name and when it was made, ms since 1970. */
  step: string
  label: string
  at: number
}

type TripPart = Extract<StepPart, { on: 'trip' }>

/** The latest first, as far back as the steps fit what is there: to the making of the trip at most. */
export function* pastStates(
  trip: Pick<TripDocument, 'id' | 'draft' | 'typed'>,
  journal: Journal,
): Generator<PastState> {
  let contents: Contents | null = contentsOf(trip)
  for (const step of journal.toReversed()) {
    const { id, label, at, parts, undone } = step
    if (undone) continue
    if (parts.some(part => part.on === 'list' && part.id === trip.id)) return
    const own = parts.filter((part): part is TripPart => part.on === 'trip' && part.id === trip.id)
    if (own.length === 0) continue
    contents = before(contents, own)
    if (!contents) return
    if (isNote(step)) continue
    yield { ...contents, step: id, label, at }
  }
}

/** Null where the parts do not fit, as after another tab's edit, or are of a shape that only damage can leave. */
function before(contents: Contents, parts: readonly TripPart[]): Contents | null {
  try {
    const made = parts.reduceRight<unknown>(
      (then, { patch }) => (then === REFUSED ? then : patched(then, patch, 'back')),
      contents,
    )
    return made === REFUSED ? null : (made as Contents)
  } catch {
    return null
  }
}
