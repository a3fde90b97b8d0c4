// The need: the fullest and the heaviest moment of the trip, and how sure both are.

import type { Item, LitresFrom, Plan, Stow } from '../plan/types'
import { type Ledger, overflowOf, unitsInPlay } from './ledger'
import type { Stock } from './provisions'
import { roomFor, roomRange } from './room'
import type { Moment, Need, Place } from './types'
import { groupedVariance, litresSigmaShare, MASS_HALF_WIDTH, uniformSigma } from './uncertainty'
import type { WaterPlan } from './water'

/** Nine times in ten: the normal quantile of 0.9, as the model page rounds it. */
export const NINE_IN_TEN = 1.2816

export interface Parts {
  plan: Plan
  gear: Item[]
  stowOf: (item: Item) => Stow
  ledger: Ledger
  stocks: Stock[]
  spareRations: number
  water: WaterPlan
}

/** `withAllWater`: the moments had every source been left with all the water wanted. */
export function needOf(moments: Moment[], withAllWater: Moment[], parts: Parts): Need {
  const fullest = indexOfMax(moments.map(m => m.bodyLitres))
  const heaviest = indexOfMax(moments.map(m => m.kg.total))
  const full = moments[fullest]!
  const heavy = moments[heaviest]!
  const heavyFull = withAllWater[indexOfMax(withAllWater.map(m => m.kg.total))]!
  const sigmaV = Math.sqrt(litresVariance(parts, full, parts.stocks[fullest]!))
  const sigmaM = Math.sqrt(massVariance(parts, parts.stocks[heaviest]!))
  const placeOf = ({ stop, phase }: Moment): Place => ({
    stop,
    name: parts.plan.trip.stops[stop]!.name,
    phase,
  })
  return {
    bodyLitres: full.bodyLitres,
    bodyLitresSafe: full.bodyLitres + NINE_IN_TEN * sigmaV,
    sigmaV,
    bodyAt: placeOf(full),
    outsideLitres: Math.max(...moments.map(m => m.outsideLitres)),
    peakLoadKg: heavy.kg.total,
    peakLoadSafeKg: heavy.kg.total + NINE_IN_TEN * sigmaM,
    sigmaM,
    peakAt: placeOf(heavy),
    peakLoadFullWaterKg: heavyFull.kg.total,
    peakFullWaterAt: placeOf(heavyFull),
    baseKg: heavy.kg.kept,
    wornKg: wornKg(parts),
    packedDensity: full.bodyLitres > 0 ? full.bodyKg / full.bodyLitres : null,
    longestCm: largest(parts, 'lengthCm'),
    widestCm: largest(parts, 'diameterCm'),
    waterCarryLitres: Math.max(...parts.water.carries.map(c => c.carriedLitres)),
    waterShortLitres: Math.max(...parts.water.carries.map(c => c.shortLitres)),
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

/** One thing's part in the main body at a moment, and how sure its litres are. */
export interface LitresTerm {
  item: Item
  /** Main-body litres per litre of the thing. */
  slope: number
  /** Its litres in play there, L. */
  litres: number
  group: LitresFrom
  /** Standard uncertainty of what it takes of the main body, L. */
  sigma: number
}

/** The terms of the measuring variance at a moment, one for each thing of the gear. */
export function litresTerms(
  { plan, gear, stowOf, ledger }: Parts,
  moment: Moment,
  stock: Stock,
): LitresTerm[] {
  const room = roomFor(moment.rigidLitres, moment.softLitres, plan.settings)
  const { shares } = overflowOf(ledger, stock)
  return gear.map(item => {
    const litres = item.litres * item.count * unitsInPlay(item, stock) * bodyShare(item)
    const slope = item.build === 'rigid' && item.inside === null ? room.perRigidLitre : room.perSoftLitre
    return { item, slope, litres, group: item.litresFrom, sigma: slope * litres * litresSigmaShare(item) }
  })

  /** Share of a thing's litres that counts in the main body: of things in a container, what overflows. */
  function bodyShare(item: Item): number {
    if (item.inside !== null) return shares.get(item.inside) ?? 0
    return stowOf(item) === 'main-body' ? 1 : 0
  }
}

/** Variance of the main-body litres that is the packing model's, L². */
export function packingVariance({ settings }: Plan, { rigidLitres, softLitres, bodyLitres }: Moment): number {
  if (settings.personalFactorSpread !== null) return (bodyLitres * settings.personalFactorSpread) ** 2
  const { low, high } = roomRange(rigidLitres, softLitres, settings)
  return (high - low) ** 2 / 12
}

function litresVariance(parts: Parts, moment: Moment, stock: Stock): number {
  const measuring = groupedVariance(litresTerms(parts, moment, stock), parts.plan.settings.habitCorrelation)
  return measuring + packingVariance(parts.plan, moment)
}

function massVariance({ plan, gear, stowOf }: Parts, stock: Stock): number {
  return groupedVariance(
    gear
      .filter(item => stowOf(item) !== 'worn')
      .map(item => ({
        group: item.massFrom,
        sigma:
          item.massKg * item.count * unitsInPlay(item, stock) * uniformSigma(MASS_HALF_WIDTH[item.massFrom]),
      })),
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
function largest(parts: Parts, size: 'lengthCm' | 'diameterCm'): number | null {
  const known = rigidInBody(parts).flatMap(item => item[size] ?? [])
  return known.length ? known.reduce((a, b) => Math.max(a, b)) : null
}
