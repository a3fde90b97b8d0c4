// The stretches between sources, and what each dry camp on them costs: the trip is reckoned again with that camp as a
// source, exactly and in full, since water, rations and the heaviest moment all move with it.

import type { Plan } from '../plan/types'
import { type Reckon, type Trial, tried } from './remedies-trial'
import type { Reckoning, WaterCarry } from './types'
import { isSource } from './water'

/** What a camp at water, instead of a dry one at the same stop, would change. */
export interface DryCamp {
  stop: number
  /** Litres less to be carried out of a source, at the most, on what was this stretch. */
  savesCarryLitres: number
  /** Less heaviest load; negative where fuller bottles at a later moment make it heavier. */
  savesPeakKg: number
  /** Litres by which the containers would still fall short on what was this stretch, at the worst. */
  leavesShortLitres: number
}

export interface DryStretch {
  carry: WaterCarry
  km: number
  hours: number
  camps: DryCamp[]
  /** Dry camps left unreckoned: beyond the number asked for, or of a trip that would not settle. */
  unreckoned: number[]
}

/** Each dry camp is a whole reckoning. */
export const MOST_CAMPS = 12

/**
 * Every stretch between sources of `reckoning`, which is what `reckon(plan)` gave, in order. The first `mostCamps` dry
 * camps of the trip are reckoned again. `reckon` is handed in: the engine's index knows this module.
 */
export function dryStretchesBy(
  reckon: Reckon,
  { plan, reckoning, mostCamps = MOST_CAMPS }: { plan: Plan; reckoning: Reckoning; mostCamps?: number },
): DryStretch[] {
  // No pack bears on water or load: without them each trial is cheaper.
  const trial: Trial = { reckon, plan: { ...plan, packs: [] }, reckoning }
  let left = mostCamps
  return reckoning.carries.map(carry => {
    const camps: DryCamp[] = []
    const unreckoned: number[] = []
    for (const stop of dryCampsOn(plan, carry)) {
      const camp = left-- > 0 ? campAtWater(trial, carry, stop) : null
      if (camp) camps.push(camp)
      else unreckoned.push(stop)
    }
    return { carry, ...lengthOf(reckoning, carry), camps, unreckoned }
  })
}

function dryCampsOn(plan: Plan, { stop, to }: WaterCarry): number[] {
  return plan.trip.stops.flatMap(({ nights }, i) =>
    i > stop && i < to && nights > 0 && !isSource(plan, i) ? [i] : [],
  )
}

function lengthOf({ moments }: Reckoning, { stop, to }: WaterCarry): { km: number; hours: number } {
  const from = moments.find(m => m.stop === stop && m.phase === 'depart')!
  const end = moments.find(m => m.stop === to && m.phase === 'arrive')!
  return { km: end.km - from.km, hours: end.hours - from.hours }
}

function campAtWater(trial: Trial, carry: WaterCarry, stop: number): DryCamp | null {
  const { plan, reckoning } = trial
  const stops = plan.trip.stops.map((each, i) => (i === stop ? { ...each, water: 'sure' as const } : each))
  const after = tried(trial, { ...plan, trip: { ...plan.trip, stops } })?.reckoning
  if (!after) return null
  const parts = after.carries.filter(part => part.stop >= carry.stop && part.stop < carry.to)
  return {
    stop,
    savesCarryLitres: carry.needLitres - Math.max(...parts.map(part => part.needLitres)),
    savesPeakKg: reckoning.need.peakLoadKg - after.need.peakLoadKg,
    leavesShortLitres: Math.max(...parts.map(part => part.shortLitres)),
  }
}
