// The need: the fullest and the heaviest moment of the trip, and how sure both are.

import type { Item } from '../plan/types'
import { unitsInPlay } from './ledger'
import { SURE_SIGMAS } from './normal'
import type { Stock } from './provisions'
import type { Packing } from './room'
import type { Heap, Spread } from './spread'
import type { Moment, Need, Place } from './types'
import { groupedVariance, MASS_HALF_WIDTH, uniformSigma } from './uncertainty'
import type { WaterPlan } from './water'

export interface Parts extends Heap {
  /** The packing model with the factor reckoned with. */
  packing: Packing
  stocks: Stock[]
  spareRations: number
  water: WaterPlan
}

/** `withAllWater`: the moments had every source been left with all the water wanted; `spread`: of the fullest moment. */
export function needOf(
  { moments, withAllWater }: { moments: Moment[]; withAllWater: Moment[] },
  { factor, share }: Pick<Spread, 'factor' | 'share'>,
  parts: Parts,
): Need {
  const fullest = indexOfMax(moments.map(m => m.bodyLitres))
  const heaviest = indexOfMax(moments.map(m => m.kg.total))
  const full = moments[fullest]!
  const heavy = moments[heaviest]!
  const heavyFull = withAllWater[indexOfMax(withAllWater.map(m => m.kg.total))]!
  const rigid = rigidInBody(parts)
  const sigmaV = share * full.bodyLitres
  const sigmaM = Math.sqrt(massVariance(parts, parts.stocks[heaviest]!))
  const placeOf = ({ stop, phase }: Moment): Place => ({
    stop,
    name: parts.plan.trip.stops[stop]!.name,
    phase,
  })
  return {
    bodyLitres: full.bodyLitres,
    bodyLitresSafe: full.bodyLitres + SURE_SIGMAS * sigmaV,
    sigmaV,
    bodyAt: placeOf(full),
    outsideLitres: Math.max(...moments.map(m => m.outsideLitres)),
    peakLoadKg: heavy.kg.total,
    peakLoadSafeKg: heavy.kg.total + SURE_SIGMAS * sigmaM,
    sigmaM,
    peakAt: placeOf(heavy),
    peakLoadFullWaterKg: heavyFull.kg.total,
    peakFullWaterAt: placeOf(heavyFull),
    baseKg: heavy.kg.kept,
    wornKg: wornKg(parts),
    packedDensity: full.bodyLitres > 0 ? full.bodyKg / full.bodyLitres : null,
    longestCm: largest(rigid, 'lengthCm'),
    widestCm: largest(rigid, 'diameterCm'),
    waterCarryLitres: Math.max(...parts.water.carries.map(c => c.carriedLitres)),
    waterShortLitres: Math.max(...parts.water.carries.map(c => c.shortLitres)),
    factor,
    sigmaShare: share,
    waterCapacityLitres: parts.water.capacityLitres,
  }
}

/** The moments that set the need, for those who ask further about them. */
export const fullestOf = (moments: Moment[]) => indexOfMax(moments.map(m => m.bodyLitres))

/** Index of the earliest largest value; a later one must be larger by more than rounding. */
function indexOfMax(values: number[]): number {
  let best = 0
  values.forEach((value, i) => {
    if (value > values[best]! * (1 + 1e-12)) best = i
  })
  return best
}

function massVariance({ plan, gear, stowOf }: Parts, stock: Stock): number {
  const sigmaOf = (item: Item) =>
    stowOf(item) === 'worn'
      ? 0
      : item.massKg * item.count * unitsInPlay(item, stock) * uniformSigma(MASS_HALF_WIDTH[item.massFrom])
  return groupedVariance(
    gear,
    { groupOf: ({ massFrom }) => massFrom, sigmaOf },
    plan.settings.habitCorrelation,
  )
}

function wornKg({ gear, stowOf }: Parts): number {
  return gear.reduce((sum, item) => (stowOf(item) === 'worn' ? sum + item.massKg * item.count : sum), 0)
}

/** The rigid things whose place is the main body, those in a container there too. */
export const rigidInBody = ({ gear, stowOf }: Pick<Parts, 'gear' | 'stowOf'>): Item[] =>
  gear.filter(item => item.build === 'rigid' && item.count > 0 && stowOf(item) === 'main-body')

/** Largest length or diameter among the rigid things in the main body; null when none is known. */
function largest(rigid: Item[], size: 'lengthCm' | 'diameterCm'): number | null {
  let most: number | null = null
  for (const item of rigid) {
    const cm = item[size]
    if (cm !== null && (most === null || cm > most)) most = cm
  }
  return most
}
