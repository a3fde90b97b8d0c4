// What would make a set-up do and fit, with what pack to look for where nothing would: worked out only when it is asked for.

import type { Plan } from '../../plan'
import {
  isMended,
  type Reckoning,
  type Remedy,
  type Replacement,
  reckon,
  remediesBy,
  type SetupReckoning,
  shortfallOf,
} from '../../reckon'
import { listText } from '../../units'
import type { Caution } from '../caution'
import type { Formats } from '../formats'
import { missingOf } from '../missing'
import { remedyInWords, shortfallInWords } from '../remedies'

export interface Help {
  /** The least inconvenient first. */
  remedies: { text: string; remedy: Remedy; caution: Caution | null }[]
  /** What to look for instead, where no change helps. */
  shortfall: string | null
}

interface HelpAsked {
  setupIndex: number
  formats: Formats
  /** What may be taken in the place of items. */
  swaps?: readonly Replacement[]
}

/** Help for the set-up at `setupIndex` of `reckoning.packs`. Takes many reckonings: not for every keystroke. */
export function helpFor(
  plan: Plan,
  reckoning: Reckoning,
  { setupIndex, formats, swaps = [] }: HelpAsked,
): Help {
  const remedies = remediesBy(reckon, { plan, reckoning, setupIndex, swaps }).map(remedy => ({
    remedy,
    text: remedyInWords(remedy, { plan, formats }),
    caution: cautionOf(remedy, plan),
  }))
  const shortfall = remedies.length ? null : shortfallOf(plan, reckoning, setupIndex)
  return { remedies, shortfall: shortfall && shortfallInWords(shortfall, { plan, reckoning, formats }) }
}

/** What can hurt is never offered without its warning: a source that nobody vouched for, and food for a bad day. */
function cautionOf(remedy: Remedy, { trip: { stops } }: Plan): Caution | null {
  const change = remedy.kind === 'combined' ? remedy.trip : remedy
  if (change.kind === 'fewer-spare-rations')
    return {
      signal: 'CAUTION',
      about: 'food',
      text: 'Spare food is for the day that goes wrong: bad weather, an injury, a wrong turn. Carry less only where help or a shop is never far.',
    }
  if (change.kind !== 'trust-doubtful') return null
  const names = listText(change.stops.map(stop => stops[stop]!.name))
  return {
    signal: 'WARNING',
    about: 'water',
    text: `You would count on ${names}, marked doubtful. A water source that is dry when you reach it can leave you without water: confirm it before you leave.`,
  }
}

/** What to ask about a set-up that does not do, or may not fit; null: nothing, as it fits nine times in ten or there is no gear. */
export function helpQuestion(setup: SetupReckoning, plan: Plan): string | null {
  if (isMended(setup) || missingOf(plan).gear) return null
  if (!setup.suffices) return 'What would make this pack work?'
  return missingOf(plan).litres.length > 0
    ? 'What would make it less tight?'
    : 'What would make it fit 9 times in 10?'
}
