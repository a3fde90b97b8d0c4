// What a plan means where it says nothing, as the rows of its fields have it; here besides, what depends on something
// else. Each default says where it comes from; none is a measurement of this hiker.

export { PRACTICE } from './fields'

import { defaultsOf, FIELDS } from './fields'
import type { Item } from './types'

export const PACE = defaultsOf(FIELDS.pace)
export const WATER = defaultsOf(FIELDS.water)
export const MEALS = defaultsOf(FIELDS.meals)
export const WEATHER = defaultsOf(FIELDS.weather)
export const WET = FIELDS.trip.wet.usual
export const SETTINGS = defaultsOf(FIELDS.settings)
export const CARRIER = defaultsOf(FIELDS.carrier)
export const PERSON = defaultsOf(FIELDS.person)
export const PACK_CHOICE = defaultsOf(FIELDS.packChoice)
export const SPLIT = defaultsOf(FIELDS.split)
export const STOP = defaultsOf(FIELDS.stop)
export const LEG = defaultsOf(FIELDS.leg)
export const FUEL = defaultsOf(FIELDS.fuel)
export const ITEM = defaultsOf(FIELDS.item)
export const PACK = defaultsOf(FIELDS.pack)
export const SETUP = defaultsOf(FIELDS.setup)

/** Under 18 years; an age that nobody has said is taken for an adult's. */
export const isYoung = (ageYears: number | null): ageYears is number => ageYears !== null && ageYears < 18

/** Share of body mass to carry at most: stricter under 18. */
export const loadShareLimitFor = (ageYears: number | null): number => (isYoung(ageYears) ? 0.15 : 0.2)

/** Packaging stays: 5 % of eaten food by mass and litres (common practice, no source). */
export const leavesFor = (use: Item['use']): number => (use === 'daily' ? 0.05 : 0)
export const resuppliedFor = (use: Item['use']): boolean => use === 'daily'
