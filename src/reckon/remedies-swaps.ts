// Other things in the places of items, as the hiker has named them: one that makes the set-up do, or else two together.

import { withSwaps } from './remedies-apply'
import { type Candidate, mends, tried } from './remedies-candidate'
import type { Replacement } from './remedies-types'

interface FoundSwaps {
  choice: Replacement[]
  after: Candidate
}

/** Each is a reckoning. */
const MOST_TRIED = 60

/** The choices of one that mend the candidate; where none does, those of two. */
export function fewestSwaps(candidate: Candidate, swaps: readonly Replacement[]): FoundSwaps[] {
  const mending = (choices: Replacement[][]) =>
    choices.slice(0, MOST_TRIED).flatMap((choice): FoundSwaps[] => {
      const after = tried(candidate, withSwaps(candidate.plan, choice))
      return mends(candidate, after) ? [{ choice, after }] : []
    })
  const alone = mending(swaps.map(swap => [swap]))
  return alone.length > 0 ? alone : mending(pairsOf(swaps))
}

/** Two different things for different items. */
const pairsOf = (swaps: readonly Replacement[]): Replacement[][] =>
  swaps.flatMap((one, i) =>
    swaps
      .slice(i + 1)
      .flatMap(other => (other.item === one.item || other.thing === one.thing ? [] : [[one, other]])),
  )
