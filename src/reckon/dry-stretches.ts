// The stretches between sources, and what each dry camp on them costs: the trip is reckoned again with that camp as a
// source, exactly and in full, since water, rations and the heaviest moment all move with it.

import type { Plan } from '../plan/types'
import { type Candidate, type Reckon, tried } from './remedies-candidate'
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
const MOST_CAMPS = 12

export interface DryStretchesSoFar {
  stretches: DryStretch[]
  /** Dry camps still to be reckoned. */
  campsLeft: number
}

interface Asked {
  plan: Plan
  /** What `reckon(plan)` gave. */
  reckoning: Reckoning
  mostCamps?: number
}

/** Every stretch between sources, in order; the first `mostCamps` dry camps of the trip are reckoned again. */
export function dryStretchesOf(reckon: Reckon, asked: Asked): DryStretch[] {
  let stretches: DryStretch[] = []
  for (const soFar of dryStretchSteps(reckon, asked)) stretches = soFar.stretches
  return stretches
}

/**
 * The same step by step, for callers that must not be held up: at once the stretches alone, then what is known after
 * each reckoning. `reckon` is handed in, so that this module can be loaded after it.
 */
export function* dryStretchSteps(
  reckon: Reckon,
  { plan, reckoning, mostCamps = MOST_CAMPS }: Asked,
): Generator<DryStretchesSoFar, void> {
  // No pack bears on water or load: without them each candidate is cheaper.
  const candidate: Candidate = { reckon, plan: { ...plan, packs: [] }, reckoning }
  const dry = reckoning.carries.flatMap((carry, i) =>
    dryCampsOn(plan, carry).map(stop => ({ i, carry, stop })),
  )
  const asked = dry.slice(0, mostCamps)
  const beyond = dry.slice(mostCamps)
  const stretches = reckoning.carries.map(
    (carry, i): DryStretch => ({
      carry,
      ...lengthOf(reckoning, carry),
      camps: [],
      unreckoned: beyond.filter(camp => camp.i === i).map(camp => camp.stop),
    }),
  )
  yield { stretches: [...stretches], campsLeft: asked.length }
  for (const [nth, { i, carry, stop }] of asked.entries()) {
    const camp = campAtWater(candidate, carry, stop)
    const stretch = stretches[i]!
    stretches[i] = camp
      ? { ...stretch, camps: [...stretch.camps, camp] }
      : { ...stretch, unreckoned: [...stretch.unreckoned, stop].sort((a, b) => a - b) }
    yield { stretches: [...stretches], campsLeft: asked.length - nth - 1 }
  }
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

function campAtWater(candidate: Candidate, carry: WaterCarry, stop: number): DryCamp | null {
  const { plan, reckoning } = candidate
  const stops = plan.trip.stops.map((each, i) => (i === stop ? { ...each, water: 'sure' as const } : each))
  const after = tried(candidate, { ...plan, trip: { ...plan.trip, stops } })?.reckoning
  if (!after) return null
  const parts = after.carries.filter(part => part.stop >= carry.stop && part.stop < carry.to)
  return {
    stop,
    savesCarryLitres: carry.needLitres - Math.max(...parts.map(part => part.needLitres)),
    savesPeakKg: reckoning.need.peakLoadFullWaterKg - after.need.peakLoadFullWaterKg,
    leavesShortLitres: Math.max(...parts.map(part => part.shortLitres)),
  }
}
