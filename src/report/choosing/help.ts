// What would make a set-up do, with what pack to look for where nothing would: worked out only when it is asked for.

import type { Plan } from '../../plan'
import { type Reckoning, type Remedy, reckon, remediesBy, shortfallOf } from '../../reckon'
import { type Caution, listText } from '../caution'
import { remedyInWords, shortfallInWords } from '../remedies'
import type { Shown } from '../shown'

export interface Help {
  /** The least inconvenient first. */
  remedies: { text: string; remedy: Remedy; caution: Caution | null }[]
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
    caution: cautionOf(remedy, plan),
  }))
  const shortfall = remedies.length ? null : shortfallOf(plan, reckoning, setupIndex)
  return { remedies, shortfall: shortfall && shortfallInWords(shortfall, { shown }) }
}

/** A source that nobody vouched for is never offered without its warning. */
function cautionOf(remedy: Remedy, { trip: { stops } }: Plan): Caution | null {
  const change = remedy.kind === 'combined' ? remedy.trip : remedy
  if (change.kind !== 'trust-doubtful') return null
  const names = listText(change.stops.map(stop => stops[stop]!.name))
  return {
    signal: 'WARNING',
    about: 'water',
    text: `You would count on ${names}, marked doubtful. A source that is dry when you reach it can leave you without water: confirm it before you leave.`,
  }
}
