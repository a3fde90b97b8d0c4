// A trip for a hiker who has no detail yet: even days, a camp after each, and one dry stretch in the middle.
// The kilometres and metres per day are stand-ins of ours until the hiker knows better.

import { MOST_DAYS } from './caps'
import type { Draft, DraftStop } from './draft'
import { withStops } from './edit-stops'
import { LIMITS } from './fields'

/** What a day comes to while nobody says otherwise: km, and metres of climb. */
export const QUICK_DAY = { kmPerDay: 15, ascentMPerDay: 500 } as const

export interface QuickTrip {
  /** Days of walking, 1 to `MOST_DAYS`; the nights are one fewer. */
  days: number
  kmPerDay?: number
  /** Climb a day in metres; the descent is the same. */
  ascentMPerDay?: number
  /** The longest walk from one source to the next in days: 0 or 1, water at every camp; n, n − 1 dry camps. */
  dryStretchDays?: number
  /** Resupply at every n-th camp; 0, never. */
  resupplyEveryDays?: number
}

/** The draft with its stops replaced by an even trip. Numbers outside their range are taken as its nearer end. */
export function quickTrip(draft: Draft, inputs: QuickTrip, newId: () => string): Draft {
  const { kmPerDay, ascentMPerDay, dryStretchDays = 0, resupplyEveryDays = 0 } = { ...QUICK_DAY, ...inputs }
  const days = whole(inputs.days, 1, MOST_DAYS)
  const stretch = whole(dryStretchDays, 0, days)
  const every = whole(resupplyEveryDays, 0, days)
  const before = stretchStart(days, stretch, every)
  const climbM = within(ascentMPerDay, 0, LIMITS.leg.ascentM.max)
  const leg = { km: within(kmPerDay, 0, LIMITS.leg.km.max), ascentM: climbM, descentM: climbM }

  const camp = (day: number): DraftStop => {
    const water = day > before && day < before + stretch ? 'none' : 'sure'
    const stop: DraftStop = { id: newId(), name: `Camp ${day}`, water, nights: 1, leg }
    // Where food is bought there is water: a stretch longer than the way between two resupplies leaves one out.
    return isResupply(day, every) && water === 'sure' ? { ...stop, resupply: true } : stop
  }
  return withStops(draft, [
    { id: newId(), name: 'Start', water: 'sure' },
    ...Array.from({ length: days - 1 }, (_, i) => camp(i + 1)),
    { id: newId(), name: 'End', water: 'sure', leg },
  ])
}

const isResupply = (day: number, every: number) => every > 0 && day % every === 0

/** Days walked before the dry stretch: it lies in the middle, or as near as leaves every resupply its water. */
function stretchStart(days: number, stretch: number, every: number): number {
  const middle = Math.floor((days - stretch) / 2)
  const isFree = (before: number) =>
    !Array.from({ length: Math.max(0, stretch - 1) }, (_, i) => before + 1 + i).some(day =>
      isResupply(day, every),
    )
  const starts = Array.from({ length: days - stretch + 1 }, (_, before) => before)
  return starts.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle)).find(isFree) ?? middle
}

const within = (value: number, min: number, max: number) =>
  Number.isNaN(value) ? min : Math.min(Math.max(value, min), max)
const whole = (value: number, min: number, max: number) => Math.round(within(value, min, max))
