// The pace that was walked, kept in a trip. Pure.

import type { Draft } from './draft'
import { FIELDS } from './fields'
import type { Pace } from './types'

/** The draft with a pace that takes `factor` times as long, within what its fields may hold. */
export function withPaceBy(draft: Draft, pace: Pace, factor: number): Draft {
  const at = (field: keyof Pace) => {
    const { min, max } = FIELDS.pace[field]
    return Math.min(max, Math.max(min, pace[field] / factor))
  }
  const kept = {
    flatKmh: at('flatKmh'),
    climbMPerH: at('climbMPerH'),
    descendMPerH: at('descendMPerH'),
  }
  return { ...draft, trip: { ...draft.trip, pace: { ...draft.trip.pace, ...kept } } }
}
