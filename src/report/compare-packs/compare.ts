// Set-ups side by side: how well each does, and the figures they are put in order by. Where "nearly" begins is a
// judgement of ours: a tenth of room or load.

import type { Plan } from '../../plan'
import {
  type Answer,
  type ApartFigures,
  apartFigures,
  contentsLimitKg,
  frontierOf,
  type Measure,
  measureOf,
  type Reckoning,
  type SetupReckoning,
} from '../../reckon'
import { formatQuantity } from '../../units'
import { missingOf } from '../missing'

export const NOT_BEATEN = 'No other beats it on mass, price and margin'

/** "230 EUR"; 179.5 is shown with both decimals. */
export function priceText(price: number | null, currency: string | null): string {
  if (price === null) return 'price not known'
  return `${formatQuantity('money', price, { system: 'metric' })} ${currency ?? ''}`.trim()
}

/** 0: does; 1: nearly does; 2: does not. */
export type Standing = 0 | 1 | 2

type Ratios = 'gramsPerLitre' | 'gramsPerTotalLitre' | 'gramsPerRatedKg' | 'pricePerLitre' | 'pricePerRatedKg'

/** What a set-up is compared by; null where it is not known. More is better only in `spareKg`. */
export interface Comparison extends Pick<ApartFigures, Ratios | 'outgrows' | 'brimLoadKg'> {
  pack: number
  answer: Answer
  standing: Standing
  /** Null without gear. */
  carriedKg: number | null
  massKg: number
  price: number | null
  /** To what it may carry. */
  spareKg: number | null
  /** What it may carry besides its own mass and a liner; null where no limit is known. */
  bearsKg: number | null
  /** The hiker's own figure; null where there is none, or something in it is not known. */
  measure: number | null
}

/** One comparison for each of `reckoning.packs`, in their order. */
export function comparisonOf(plan: Plan, reckoning: Reckoning, measure: Measure | null = null): Comparison[] {
  // Without gear there is nothing to spare.
  const isJudged = !missingOf(plan).gear
  return reckoning.packs.map((setup): Comparison => {
    const pack = plan.packs[setup.pack]!
    const own = pack.setups[setup.index]!
    const { loadLimitKg, ratedAgainstKg } = setup
    const apart = apartFigures(pack, own, plan.settings)
    return {
      gramsPerLitre: apart.gramsPerLitre,
      gramsPerTotalLitre: apart.gramsPerTotalLitre,
      gramsPerRatedKg: apart.gramsPerRatedKg,
      pricePerLitre: apart.pricePerLitre,
      pricePerRatedKg: apart.pricePerRatedKg,
      outgrows: apart.outgrows,
      brimLoadKg: apart.brimLoadKg,
      pack: setup.pack,
      answer: setup.answer,
      standing: standingOf(setup, plan, reckoning),
      carriedKg: isJudged ? setup.carriedKg : null,
      massKg: own.massKg,
      price: pack.price,
      spareKg: loadLimitKg === null || !isJudged ? null : loadLimitKg - ratedAgainstKg,
      bearsKg: contentsLimitKg(setup, reckoning.need),
      measure: measure && measureOf(measure, pack, own),
    }
  })
}

/**
 * Of each of `reckoning.packs`, whether no other beats it, where that tells it from most others. Each is held against
 * each other: of a thousand packs only where somebody looks.
 */
export function standingOut(plan: Plan, reckoning: Reckoning): boolean[] {
  // Without gear there is no margin to be beaten on.
  if (missingOf(plan).gear) return reckoning.packs.map(() => false)
  const notBeaten = frontierOf(reckoning, plan)
  const suitable = reckoning.packs.filter(({ suffices }) => suffices).length
  const isRare = notBeaten.filter(Boolean).length * 2 <= suitable
  return isRare ? notBeaten : notBeaten.map(() => false)
}

const NEARLY = 0.1

function standingOf(setup: SetupReckoning, plan: Plan, { need }: Reckoning): Standing {
  if (setup.suffices) return 0
  const { bodyLitres, collarLitres } = plan.packs[setup.pack]!
  const { verdicts, loadLimitKg, ratedAgainstKg } = setup
  const otherwise = (['outside-short', 'too-long', 'too-wide'] as const).some(code => verdicts.includes(code))
  const room = bodyLitres + collarLitres >= (1 - NEARLY) * need.bodyLitres
  const load = loadLimitKg === null || ratedAgainstKg <= (1 + NEARLY) * loadLimitKg
  return !otherwise && room && load ? 1 : 2
}
