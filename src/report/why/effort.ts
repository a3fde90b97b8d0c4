// The walking effort of a leg, from the same inputs as the engine's: what the energy and the water explanations share.
// Source key: looney-2022; the split of the leg into climb and descent is ours.

import {
  backpackingRanges,
  evenSlope,
  kcalPerWattHour,
  legPowerRanges,
  legPowerWPerKg,
  terrainFactors,
} from '../../equations'
import { type Body, bodyOf } from '../../reckon'
import { given } from '../given'
import type { WhyBound, WhyContext } from './types'
import { bound } from './words'

export interface Effort {
  watts: number
  kcal: number
  /** Mean contents over the leg, and the pack's own mass that the settings add. */
  contentsKg: number
  packKg: number
  loadShare: number
  speedMPerS: number
  steepestPercent: number
  terrainFactor: number
  body: Body
  atLimit: boolean
  loadBeyondStudy: boolean
}

/** Null under the age from which there are energy figures. */
export function effortOf({ plan, reckoning }: WhyContext, leg: number): Effort | null {
  const body = bodyOf(plan.carrier)
  if (!body) return null
  const { massKg } = plan.carrier
  const { km, ascentM, descentM, ground } = plan.trip.stops[leg + 1]!.leg!
  const { hours } = reckoning.legs[leg]!
  const [begins, ends] = [reckoning.moments[2 * leg]!, reckoning.moments[2 * leg + 1]!]
  const contentsKg = (begins.kg.total + ends.kg.total) / 2
  const packKg = plan.settings.packKgForEnergy
  const loadShare = Math.min((contentsKg + packKg) / massKg, legPowerRanges.loadShare.max)
  const terrainFactor = terrainFactors[ground].factor
  const totals = { km, ascentM, descentM }
  const power = given(
    legPowerWPerKg({
      ...totals,
      hours,
      loadShare,
      terrainFactor,
      restingWPerKg: body.restingWPerKg,
    }),
  )
  const slope = evenSlope(totals)
  const watts = power.wattsPerKg * massKg
  return {
    ...power,
    watts,
    kcal: watts * hours * kcalPerWattHour,
    contentsKg,
    packKg,
    loadShare,
    speedMPerS: km === 0 ? 0 : km / hours / 3.6,
    steepestPercent: slope.ok ? 100 * slope.value : Number.POSITIVE_INFINITY,
    terrainFactor,
    body,
  }
}

/** The studied ranges of the backpacking equation, held against the worst of some legs. */
export function effortBounds(efforts: Effort[]): { bounds: WhyBound[]; instead: string | null } {
  const most = (of: (effort: Effort) => number) => Math.max(0, ...efforts.map(of))
  const bounds = [
    bound(
      'Speed',
      most(e => e.speedMPerS),
      { limit: backpackingRanges.speedMPerS, digits: 2 },
    ),
    bound(
      'Steepness',
      most(e => e.steepestPercent),
      { limit: backpackingRanges.gradePercent },
    ),
    bound(
      'Load',
      most(e => e.loadShare),
      { limit: backpackingRanges.loadShare, digits: 2 },
    ),
  ]
  const instead = [
    efforts.some(e => e.atLimit) ? 'What is faster or steeper is computed at the limit.' : '',
    efforts.some(e => e.loadBeyondStudy)
      ? 'For the heavier load the formula is followed past what was studied.'
      : '',
  ].filter(Boolean)
  return { bounds, instead: instead.length ? instead.join(' ') : null }
}
