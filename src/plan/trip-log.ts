// What is noted of a trip while it is packed, on the way and after it. Of the app alone: no part of a plan. Whatever has
// an id stands under it, so that two tabs which note different things give both.

import type { Limit } from './fields'

/** Things or stops that are marked, by their ids. */
export type Marks = Readonly<Record<string, true>>

/** What is really left on leaving a stop. */
export interface LeftAt {
  foodKg?: number
  fuelKg?: number
  waterLitres?: number
}

/** A guessed mass before a scale reading was shared out over it, and after; each, kg. */
export interface Spread {
  fromKg: number
  toKg: number
}

/** The food of a plan over the whole trip: full rations eaten, and what is packed and bought for them with all that is spare. */
export interface FoodPlanned {
  packedKg: number
  rations: number
}

/** Left out: nobody has said. */
export interface TripLog {
  /** Items that are in the pack. */
  packed?: Marks
  /** What the packed pack weighs, and the water in it then; no water said: as much as the trip leaves with. */
  weighedKg?: number
  weighedWaterLitres?: number
  /** It was weighed without the pack: only what goes in. */
  weighedBare?: true
  /** By item. */
  spread?: Readonly<Record<string, Spread>>
  /** The packing on the shelf that tells how full the pack of this trip was. */
  packing?: string
  /** By stop. */
  left?: Readonly<Record<string, LeftAt>>
  /** By stop: when it was reached and left, minutes after midnight. */
  reached?: Readonly<Record<string, number>>
  setOff?: Readonly<Record<string, number>>
  /** Items that came home unused. */
  unused?: Marks
  foodOverKg?: number
  /** The ration of one's own that was taken on after the trip, kg a day. */
  rationKg?: number
  /** What the plan packed and bought before that, and the full days of food that it ate. */
  foodPlanned?: FoodPlanned
}

export const TRIP_LOG_LIMITS = {
  weighedKg: { min: 0.1, max: 300, unit: 'kg' },
  weighedWaterLitres: { min: 0, max: 50, unit: 'L' },
  foodKg: { min: 0, max: 200, unit: 'kg' },
  fuelKg: { min: 0, max: 50, unit: 'kg' },
  waterLitres: { min: 0, max: 50, unit: 'L' },
  minutes: { min: 0, max: 1439, unit: 'min' },
} as const satisfies Record<string, Limit>
