// What to measure next: the things whose measuring would narrow the likely litres most, and what they would become.

import { fieldPath, type Plan } from '../../plan'
import {
  doubtsOf,
  FACTOR_SPREAD,
  type Need,
  type Reckoning,
  sigmaVIfFilled,
  worthMeasuring,
} from '../../reckon'
import type { Shown } from '../shown'
import { likelyText, narrowing } from './likely'
import { shareWords } from './shares'

export interface ToMeasure {
  id: string
  name: string
  /** "two fifths of the doubt". */
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
  /** The packing model's part in the doubt; null where it has none. */
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
export function measureNext(plan: Plan, reckoning: Reckoning, shown: Shown): MeasureNext | null {
  const { need } = reckoning
  const doubts = doubtsOf(plan, reckoning)
  if (doubts.length === 0) return null
  const worth = worthMeasuring(doubts, need.sigmaV).filter(
    ({ sigmaVIfFilled: sigma }) => narrowing(need, sigma) >= LEAST.alone,
  )
  const ids = worth.map(({ id }) => id)
  const allSigma = sigmaVIfFilled(plan, reckoning, ids)
  const gained = narrowing(need, allSigma)
  const names = new Map(plan.gear.map(item => [item.id, item.name]))
  const packing = doubts.find(doubt => doubt.of === 'packing')
  return {
    things: gained >= LEAST.together ? worth.map(toMeasure) : [],
    now: likelyText(need, shown),
    together: likelyText({ ...need, sigmaV: allSigma }, shown),
    narrower: `${shown.litres(gained)} narrower`,
    packing: packing
      ? {
          share: shareWords(packing.share),
          isLargest: doubts[0] === packing,
          gain: packingGain(plan, { need, sigmaLitres: packing.sigmaLitres, shown }),
        }
      : null,
  }

  function toMeasure({ id, share, sigmaVIfFilled: sigmaV }: (typeof worth)[number]): ToMeasure {
    return {
      id,
      name: names.get(id) || 'Unnamed item',
      share: `${shareWords(share)} of the doubt`,
      gain: `takes ${shown.litres(narrowing(need, sigmaV))} off the range`,
      path: fieldPath('gear', id, 'measure'),
    }
  }
}

/**
 * One's own packings always move the middle to where one packs; only sometimes do they narrow the range, because the
 * general model's covers how well gaps are filled and not how one hand differs from another.
 */
function packingGain(
  { settings }: Plan,
  { need, sigmaLitres, shown }: { need: Need; sigmaLitres: number; shown: Shown },
): string {
  const { personalFactorSpread: spread } = settings
  const others = Math.max(0, need.sigmaV ** 2 - sigmaLitres ** 2)
  const best = Math.sqrt(others + (need.bodyLitres * FACTOR_SPREAD.least) ** 2)
  const gained = narrowing(need, best)
  if (gained >= LEAST.together)
    return `A few packings of your own, if they agree, take about ${shown.litres(gained)} off the range.`
  if (spread === null)
    return 'Your own packing hardly narrows the range, but it moves its middle to where you pack: the general model has not seen you do it.'
  return 'Your packings tell it as well as packings can.'
}
