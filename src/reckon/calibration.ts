// What the hiker's own packings teach: known gear in a pack of known litres, and how full it was. Each is held against
// the litres asked for now by how much of its error is the same: the hand, half of the packing model, and the things in
// both. Best linear prediction with weights that stay positive; what is taken as shared is a judgement of ours.

import type { LitresFrom, PackedThing, PastPacking, Settings } from '../plan/types'
import { BODY_HALF_WIDTH, correlationIn, groupedVariance, uniformSigma } from './uncertainty'

/** Things packed together, and how far the packing model is open for them. */
export interface PackedList {
  /** Spread of the packing model, as a share of the litres. */
  d: number
  things: readonly PackedThing[]
}

export interface Calibrated {
  /** F: what is packed now takes so many times what the model says. */
  factor: number
  /** s²: variance of the litres, as a share of them squared. */
  variance: number
  /** How far the weighted packings are followed, 0 to 1; 0 where there are none that tell anything. */
  gain: number
  /** One for each packing; they add up to 1, or are all 0. */
  weights: number[]
}

/** A factor beyond these comes from a wrong figure and not from a hand. */
const FACTOR = { min: 0.5, max: 2 } as const

/** The spread of one hand, s0: where the hiker says how sure the factor is, that stands for all of it. */
export const handSpreadOf = ({ personalFactorSpread, handSpread }: Settings): number =>
  personalFactorSpread ?? handSpread

/** The packing model's own spread, d, which the hiker's word on the factor takes in. */
export const modelSpreadOf = ({ personalFactorSpread }: Settings, d: number): number =>
  personalFactorSpread === null ? d : 0

/** The factor one packing was found to have, F_k. */
export const observedFactor = ({ p, packLitres, W }: Pick<PastPacking, 'p' | 'packLitres' | 'W'>): number =>
  (p * packLitres) / W

/**
 * The factor and the variance for the list packed `now`, as the plan's settings and its packings have it. `d` and `u`
 * are shares of the litres at a factor of 1, 0 to 1.
 */
export function calibrate(settings: Settings, now: PackedList, packings: readonly PastPacking[]): Calibrated {
  const { personalFactor, habitCorrelation: r, readingSpread } = settings
  const hand = handSpreadOf(settings) ** 2
  const open = ({ d }: PackedList) => modelSpreadOf(settings, d)
  const shared = (a: PackedList, b: PackedList) =>
    hand + (open(a) * open(b)) / 2 + sum(alikeByThing(a.things, b.things, r))

  const prior = hand + open(now) ** 2 + measuringVariance(now.things, r)
  const with0 = packings.map(list => shared(now, list))
  const between = packings.map((a, j) =>
    packings.map((b, k) => {
      const isOnePack = j === k || (a.pack !== null && a.pack === b.pack)
      const pack = isOnePack ? packSigma(a) * packSigma(b) : 0
      return shared(a, b) + pack + (j === k ? readingSpread ** 2 + open(a) ** 2 / 2 : 0)
    }),
  )
  // Where nothing at all is unsure, 0 over 0 counts as nothing told.
  const raw = with0.map((g, k) => g / (prior * between[k]![k]! - g ** 2 || 1))
  const total = sum(raw)
  if (!(total > 0))
    return { factor: personalFactor, variance: prior, gain: 0, weights: packings.map(() => 0) }

  const weights = raw.map(weight => weight / total)
  const B = sum(weights.map((b, k) => b * with0[k]!))
  const Q = sum(weights.map((b, j) => sum(weights.map((c, k) => b * c * between[j]![k]!))))
  const found = sum(weights.map((b, k) => b * (observedFactor(packings[k]!) / personalFactor - 1)))
  const factor = personalFactor * (1 + (B / Q) * found)
  return {
    factor: Math.min(FACTOR.max, Math.max(FACTOR.min, factor)),
    variance: Math.max(prior - B ** 2 / Q, readingSpread ** 2),
    gain: B / Q,
    weights,
  }
}

/** The measuring variance of a list, m². */
const measuringVariance = (things: readonly PackedThing[], habitCorrelation: number): number =>
  groupedVariance(
    things,
    { groupOf: ({ litresFrom }) => litresFrom, sigmaOf: ({ u }) => u },
    habitCorrelation,
  )

const packSigma = ({ packFrom }: PastPacking) => uniformSigma(BODY_HALF_WIDTH[packFrom])

/** Litres that differ by no more are the same. */
const SAME_LITRES = 1e-9

const isSameThing = (a: PackedThing, b: PackedThing | undefined): boolean =>
  b !== undefined && a.litresFrom === b.litresFrom && Math.abs(a.litres - b.litres) <= SAME_LITRES

/**
 * How far two lists err alike, as the part that each thing of the first has in it. Of a group that shares nothing
 * that is nothing; else what is only in one of the lists is judged by the same habit as what both hold.
 */
export function alikeByThing(
  ours: readonly PackedThing[],
  theirs: readonly PackedThing[],
  habitCorrelation: number,
): number[] {
  // Same things have the same id, and nothing is twice in a list.
  const byId = new Map(theirs.flatMap(thing => (thing.u > 0 ? [[thing.id, thing] as const] : [])))
  const same = ours.map(thing => {
    const found = thing.u > 0 ? byId.get(thing.id) : undefined
    return isSameThing(thing, found) ? found!.u : null
  })
  const shared = new Map<LitresFrom, number>()
  same.forEach((u, i) => {
    if (u !== null) add(shared, ours[i]!.litresFrom, u)
  })
  const whole = new Map<LitresFrom, number>()
  for (const { litresFrom, u } of theirs) add(whole, litresFrom, u)
  return ours.map(({ litresFrom, u }, i) => {
    const r = correlationIn(litresFrom, habitCorrelation)
    const its = same[i]!
    return its === null
      ? r * u * (shared.get(litresFrom) ?? 0)
      : (1 - r) * u * its + r * u * whole.get(litresFrom)!
  })
}

const add = (sums: Map<LitresFrom, number>, group: LitresFrom, u: number) =>
  sums.set(group, (sums.get(group) ?? 0) + u)

const sum = (numbers: number[]) => numbers.reduce((total, n) => total + n, 0)
