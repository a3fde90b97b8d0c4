// What to measure next: the things whose measuring would narrow the likely litres most, and what they would become.

import { fieldPath, itemName, type Plan } from '../../plan'
import {
  type Reckoning,
  sigmaVIfFilled,
  sigmaVIfPacked,
  uncertaintySharesOf,
  worthMeasuring,
} from '../../reckon'
import type { Formats } from '../formats'
import { likelyText, narrowing } from './likely'
import { shareWords } from './shares'

export interface ToMeasure {
  id: string
  name: string
  /** "two fifths of the uncertainty". */
  share: string
  /** "takes 0.8 L off the range". */
  gain: string
  /** Leads to its measuring in the gear list. */
  path: string
}

export interface MeasureNext {
  things: ToMeasure[]
  /** The likely range as it is, and with all of them measured. */
  now: string
  together: string
  /** By how much it would be narrower with all of them. */
  narrower: string
  /** How one packs: the hand's and the gaps' part in the doubt; null where it has none. */
  packing: PackingPart | null
}

export interface PackingPart {
  share: string
  isLargest: boolean
  /** What packings of one's own would do about it. */
  gain: string
}

/** Less than this off the range, in L, is not worth a tape: alone, and all of them together. */
const LEAST = { alone: 0.1, together: 0.5 } as const

/** Null where there is no doubt: nothing rides in the main body. `reckoning` must be what `reckon(plan)` gave. */
export function measureNext(plan: Plan, reckoning: Reckoning, formats: Formats): MeasureNext | null {
  const { need } = reckoning
  const shares = uncertaintySharesOf(plan, reckoning)
  if (shares.length === 0) return null
  const worth = worthMeasuring(plan, reckoning, shares).filter(
    ({ sigmaVIfFilled: sigma }) => narrowing(need, sigma) >= LEAST.alone,
  )
  const ids = worth.map(({ id }) => id)
  const allSigma = sigmaVIfFilled(plan, reckoning, ids)
  const gained = narrowing(need, allSigma)
  const names = new Map(plan.gear.map(item => [item.id, item.name]))
  const packing = shares.reduce((sum, { of, share }) => (of === 'item' ? sum : sum + share), 0)
  const largest = shares.find(({ of }) => of === 'item')?.share ?? 0
  return {
    things: gained >= LEAST.together ? worth.map(toMeasure) : [],
    now: likelyText(need, formats),
    together: likelyText({ ...need, sigmaV: allSigma }, formats),
    narrower: `${formats.litres(gained)} narrower`,
    packing:
      packing > 0
        ? {
            share: shareWords(packing),
            isLargest: packing >= largest,
            gain: packingGain(plan, reckoning, formats),
          }
        : null,
  }

  function toMeasure({ id, share, sigmaVIfFilled: sigmaV }: (typeof worth)[number]): ToMeasure {
    return {
      id,
      name: itemName({ name: names.get(id) }),
      share: `${shareWords(share)} of the uncertainty`,
      gain: `takes ${formats.litres(narrowing(need, sigmaV))} off the range`,
      path: fieldPath('gear', id, 'measure'),
    }
  }
}

/** A packing always moves the middle to where one packs; whether it narrows the range depends on how much is open. */
function packingGain(plan: Plan, reckoning: Reckoning, formats: Formats): string {
  const gained = narrowing(reckoning.need, sigmaVIfPacked(plan, reckoning))
  if (gained >= LEAST.together)
    return `Pack this list once and say how full the pack is: that takes about ${formats.litres(gained)} off the range, if it takes what is calculated.`
  return plan.packings.length === 0
    ? 'Your own packing hardly narrows the range. It moves its middle to how you pack.'
    : 'Your packings tell it as well as packings can.'
}
