// Changes to the trip that could make a set-up do: fewer spare rations, trust in a doubtful source, a camp at water,
// one more resupply. Only changes that bear on a moment at which the set-up fails are looked at.

import type { Plan } from '../plan/types'
import { withTrip } from './remedies-apply'
import { type Candidate, failingsOf, judgedIn, mends, tried } from './remedies-candidate'
import type { TripChange } from './remedies-types'
import type { Reckoning } from './types'
import { isSource } from './water'

type SparesLess = TripChange & { kind: 'fewer-spare-rations' }

/** Changes other than of the spare rations, whether or not they suffice. */
export function tripChanges({ plan, reckoning }: Candidate): TripChange[] {
  const peaks = failingStops(reckoning)
  if (peaks.length === 0) return []
  return [...trusting(plan), ...camps(plan, reckoning, peaks), ...resupplies(plan, peaks)]
}

/** The stops at which the fullest moment and that of the heaviest load with all the water wanted lie, where those fail. */
function failingStops(reckoning: Reckoning): number[] {
  const failings = failingsOf(judgedIn({ reckoning }))
  const { bodyAt, peakFullWaterAt } = reckoning.need
  return [
    ...(failings.includes('room') ? [bodyAt.stop] : []),
    ...(failings.includes('load') ? [peakFullWaterAt.stop] : []),
  ]
}

function trusting({ trip: { stops, water } }: Plan): TripChange[] {
  const doubtful = stops.flatMap((stop, i) =>
    i > 0 && i < stops.length - 1 && stop.water === 'doubtful' ? [i] : [],
  )
  if (water.trustDoubtful || doubtful.length === 0) return []
  return [{ kind: 'trust-doubtful', stops: doubtful, caution: 'confirm-sources' }]
}

/** Nights at dry stops, on a water carry that covers a failing moment, moved to the source before or after. */
function camps(plan: Plan, { carries }: Reckoning, peaks: number[]): TripChange[] {
  const { stops } = plan.trip
  return carries
    .filter(({ stop, to }) => peaks.some(peak => peak >= stop && peak <= to))
    .flatMap(({ stop, to }) =>
      range(stop + 1, to - 1).flatMap(from =>
        [from - 1, from + 1].flatMap((source): TripChange[] => {
          const { nights } = stops[from]!
          const atEnds = source === 0 || source === stops.length - 1
          if (nights === 0 || atEnds || !isSource(plan, source) || nights + stops[source]!.nights > 60)
            return []
          return [{ kind: 'camp-at-water', from, to: source, nights, longestDayHours: 0 }]
        }),
      ),
    )
}

/** Stops with a shop, nights or water between a failing moment and the end of its section. */
function resupplies({ trip: { stops }, gear }: Plan, peaks: number[]): TripChange[] {
  if (!gear.some(item => item.resupplied && item.count > 0)) return []
  return range(1, stops.length - 2).flatMap((stop): TripChange[] => {
    const { resupply, shop, nights, water } = stops[stop]!
    const shares = peaks.some(peak => peak <= stop && !stops.slice(peak + 1, stop).some(s => s.resupply))
    const isReached = shop || nights > 0 || water !== 'none'
    return !resupply && shares && isReached ? [{ kind: 'resupply', stop, shop }] : []
  })
}

/** The change with what can be told only once it was reckoned. */
export function told(change: TripChange, { reckoning }: Candidate): TripChange {
  if (change.kind !== 'camp-at-water') return change
  return { ...change, longestDayHours: Math.max(...reckoning.days.map(day => day.hours)) }
}

/**
 * The most spare rations, in tenths, with which the candidate's set-up does; `change` is made to the plan on top of it.
 * Fewer spare rations never weigh or fill more, so halving finds it. Null when even none is too many.
 */
export function mostSpare(
  candidate: Candidate,
  change: (plan: Plan) => Plan = plan => plan,
): { change: SparesLess; after: Candidate } | null {
  const { spareDays } = candidate.plan.trip.meals
  if (!candidate.plan.gear.some(item => item.use === 'daily' && item.count > 0)) return null
  const withTenths = (tenths: number) => {
    const less = spared(spareDays, tenths / 10)
    const after = tried(candidate, change(withTrip(candidate.plan, less)))
    return mends(candidate, after) ? { change: less, after } : null
  }
  let low = 0
  let high = Math.ceil(spareDays * 10 - 1e-9)
  let best = high > 0 ? withTenths(0) : null
  while (best && high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    const found = withTenths(middle)
    if (found) best = found
    if (found) low = middle
    else high = middle
  }
  return best
}

/** The change that takes the spare rations from one number to a smaller one. */
export function spared(from: number, to: number): SparesLess {
  return { kind: 'fewer-spare-rations', spareDays: to, lessDays: from - to }
}

const range = (from: number, to: number) =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i)
