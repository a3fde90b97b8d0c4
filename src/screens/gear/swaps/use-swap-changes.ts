// What each alternative to an item would change, reckoned a few at a time once the typing has stopped.

import { useEffect, useState } from 'preact/hooks'
import { beginInPortions, type Steps } from '../../../files/portions'
import type { DraftItem } from '../../../plan'
import { reckoned, shelf } from '../../../store'
import { type SwapChange, swapSteps } from '../../../store/swaps'

/** After the last change of the trip, ms. */
const QUIET_MS = 300

export type SwapChanges = ReadonlyMap<string, SwapChange>

/** By the id of the thing; those of before stay until all are there anew, but not once the item is another thing. */
export function useSwapChanges(item: DraftItem): SwapChanges | null {
  const now = reckoned.value
  const { things } = shelf.value
  const [found, setFound] = useState<{ changes: SwapChanges; of: string | undefined } | null>(null)
  useEffect(() => {
    let stop = () => {}
    const begin = () => {
      stop = beginInPortions(changesOf(item.id), changes => setFound({ changes, of: item.shelf?.id }))
    }
    const timer = setTimeout(begin, found ? QUIET_MS : 0)
    return () => {
      clearTimeout(timer)
      stop()
    }
  }, [now, item, things])
  return found && found.of === item.shelf?.id ? found.changes : null
}

function* changesOf(itemId: string): Steps<SwapChanges> {
  const changes = new Map<string, SwapChange>()
  for (const change of swapSteps(itemId)) {
    if (change) changes.set(change.thing, change)
    yield
  }
  return changes
}
