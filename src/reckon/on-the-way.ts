// Where one stands on the trip: what should be left when a stop is left, and what missing a resupply further on would
// have meant to carry from here.

import type { Plan } from '../plan/types'
import { withFactorHeld } from './held-factor'
import { streamOf } from './ledger'
import type { Stock } from './provisions'
import { type Reckoned, reckon } from './reckon'
import { partsOf } from './remedies-parts'
import { departureOf } from './route'
import type { Reckoning } from './types'

/** Full rations left for a section, spare ones among them, and the mass of all that is left of what is eaten daily. */
interface Food {
  rations: number
  foodKg: number
}

export interface NightlyLeft {
  id: string
  /** The nights' worth that is left. */
  units: number
}

/** From the start or a resupply to the next one or the end; its food is that at the departure which begins it. */
export interface FoodSection extends Food {
  from: number
  to: number
}

/** The most litres and load from a departure on. */
interface Most {
  bodyLitres: number
  peakLoadKg: number
  peakLoadFullWaterKg: number
}

/** With one resupply missed: the food that had to leave the stop, and the most from there on; null where that is refused. */
export type Skipped = { stop: number } & {
  [F in keyof (Food & Most)]: number | null
}

/** At the departure of a stop; kg and litres. */
export interface OnTheWay extends Food {
  stop: number
  loadKg: number
  /** Had every source been left with all the water wanted. */
  loadFullWaterKg: number
  bodyLitres: number
  waterLitres: number
  /** Water that is wanted then and that no container holds. */
  wantedLitres: number
  nightly: NightlyLeft[]
  /** The section that the stop is in, or begins, and each after it. */
  sections: FoodSection[]
  /** The most from there on, as the trip is planned. */
  most: Most
  /** One for each later stop with resupply. */
  ifSkipped: Skipped[]
}

/**
 * What should be left on leaving stop `stop`, and for the next `mostSkipped` resupplies, each a whole reckoning, what
 * missing it would mean. `reckoning` must be what `reckon(plan)` gave. Throws RangeError for the start, the end, and what
 * is no stop.
 */
export function onTheWay(
  plan: Plan,
  reckoning: Reckoning,
  stop: number,
  mostSkipped = Number.POSITIVE_INFINITY,
): OnTheWay {
  const last = plan.trip.stops.length - 1
  if (!Number.isInteger(stop) || stop <= 0 || stop >= last)
    throw new RangeError(`stop ${stop}: there are ${last + 1}`)
  const { gear, stocks } = partsOf(plan, reckoning)
  const at = departureOf(stop)
  const moment = reckoning.moments[at]!
  return {
    stop,
    loadKg: moment.kg.total,
    loadFullWaterKg: moment.fullWaterKg,
    bodyLitres: moment.bodyLitres,
    ...foodAt(reckoning, stocks, at),
    waterLitres: moment.kg.water,
    wantedLitres: moment.wantedLitres,
    nightly: gear.flatMap(item =>
      item.use === 'nightly' ? [{ id: item.id, units: stocks[at]!.left[streamOf(item)] }] : [],
    ),
    sections: sectionsFrom(plan, stop).map(section => ({
      ...section,
      ...foodAt(reckoning, stocks, departureOf(section.from)),
    })),
    most: mostFrom(reckoning, at),
    ifSkipped: skippedAfter(plan, reckoning, stop, mostSkipped),
  }
}

const foodAt = ({ moments }: Reckoning, stocks: Stock[], at: number): Food => ({
  rations: stocks[at]!.left.dailyAgain,
  foodKg: moments[at]!.kg.daily,
})

/** The stops between which food is bought: the section that `stop` is in, or begins, and each after it. */
export function sectionsFrom({ trip: { stops } }: Plan, stop: number): { from: number; to: number }[] {
  const borders = stops.flatMap(({ resupply }, i) =>
    (resupply && i > 0) || i === 0 || i === stops.length - 1 ? [i] : [],
  )
  return borders
    .slice(0, -1)
    .map((from, i) => ({ from, to: borders[i + 1]! }))
    .filter(({ to }) => to > stop)
}

function skippedAfter(plan: Plan, reckoning: Reckoning, from: number, most: number): Skipped[] {
  const held = withFactorHeld(plan, reckoning)
  const later = plan.trip.stops.flatMap(({ resupply }, stop) => (resupply && stop > from ? [stop] : []))
  return later.slice(0, most).map(stop => {
    const stops = plan.trip.stops.map((each, i) => (i === stop ? { ...each, resupply: false } : each))
    const missed = { ...held, trip: { ...held.trip, stops } }
    return { stop, ...figuresIn(missed, reckon(missed), departureOf(from)) }
  })
}

function figuresIn(plan: Plan, reckoned: Reckoned, at: number): Omit<Skipped, 'stop'> {
  if (!reckoned.ok)
    return { rations: null, foodKg: null, bodyLitres: null, peakLoadKg: null, peakLoadFullWaterKg: null }
  const { reckoning } = reckoned
  return { ...foodAt(reckoning, partsOf(plan, reckoning).stocks, at), ...mostFrom(reckoning, at) }
}

function mostFrom({ moments }: Reckoning, at: number): Most {
  const rest = moments.slice(at)
  return {
    bodyLitres: Math.max(...rest.map(({ bodyLitres }) => bodyLitres)),
    peakLoadKg: Math.max(...rest.map(({ kg }) => kg.total)),
    peakLoadFullWaterKg: Math.max(...rest.map(({ fullWaterKg }) => fullWaterKg)),
  }
}
