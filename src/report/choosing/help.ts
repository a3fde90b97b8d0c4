// What would make a set-up do, with what pack to look for where nothing would: worked out only when it is asked for.

import type { Plan } from '../../plan'
import { type Reckoning, type Remedy, reckon, remediesBy, shortfallOf } from '../../reckon'
import { remedyInWords, shortfallInWords } from '../remedies'
import type { Shown } from '../shown'

export interface Help {
  /** The least inconvenient first. */
  remedies: { text: string; remedy: Remedy }[]
  /** What to look for instead, where no change helps. */
  shortfall: string | null
}

/** Help for the set-up at `setupIndex` of `reckoning.packs`. Takes many reckonings: not for every keystroke. */
export function helpFor(
  plan: Plan,
  reckoning: Reckoning,
  { setupIndex, shown }: { setupIndex: number; shown: Shown },
): Help {
  const remedies = remediesBy(reckon, { plan, reckoning, setupIndex }).map(remedy => ({
    remedy,
    text: remedyInWords(remedy, { plan, shown }),
  }))
  const shortfall = remedies.length ? null : shortfallOf(plan, reckoning, setupIndex)
  return { remedies, shortfall: shortfall && shortfallInWords(shortfall, { shown }) }
}
