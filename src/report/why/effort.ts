// How the walking effort of legs, which the engine hands out, stands to what was studied: for energy and water.
// Source key: looney-2022.

import { backpackingRanges, evenSlope } from '../../equations'
import type { WalkingEffort } from '../../reckon'
import type { WhyBound, WhyContext } from './types'
import { bound } from './words'

interface LegEffort extends WalkingEffort {
  leg: number
}

/** The effort of some legs; of none where no energy figure is given. */
export const effortsOf = ({ working }: WhyContext, legs: readonly number[]): LegEffort[] =>
  legs.flatMap(leg => {
    const { effort } = working.legs[leg]!
    return effort ? { ...effort, leg } : []
  })

/** The studied ranges of the backpacking equation, held against the worst of some legs. */
export function effortBounds(
  { plan, reckoning }: WhyContext,
  efforts: readonly LegEffort[],
): { bounds: WhyBound[]; instead: string | null } {
  const most = (of: (effort: LegEffort) => number) => Math.max(0, ...efforts.map(of))
  const lengths = (leg: number) => plan.trip.stops[leg + 1]!.leg!
  const metresPerSecond = ({ leg }: LegEffort) => {
    const { km } = lengths(leg)
    return km === 0 ? 0 : km / reckoning.legs[leg]!.hours / 3.6
  }
  const steepestPercent = ({ leg }: LegEffort) => {
    const slope = evenSlope(lengths(leg))
    return slope.ok ? 100 * slope.value : Number.POSITIVE_INFINITY
  }
  const bounds = [
    bound('Speed', most(metresPerSecond), { limit: backpackingRanges.speedMPerS, digits: 2 }),
    bound('Steepness', most(steepestPercent), { limit: backpackingRanges.gradePercent }),
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
