// How sure the litres and the load are, by the rules of JCGM 100:2008 (GUM): each stated figure uniform within ± a
// (4.3.7), a range of a kind triangular (4.3.9), items judged by the same habit partly correlated (5.2.2). The
// half-widths are judgements of ours.

import type { BodyFrom, Item, LitresFrom, LitresRange, MassFrom } from '../plan/types'

export const LITRES_HALF_WIDTH: Record<Exclude<LitresFrom, 'kind'>, number> = {
  filled: 0.03,
  dimensions: 0.1,
  stated: 0.15,
  guess: 0.3,
}
export const MASS_HALF_WIDTH: Record<MassFrom, number> = { scale: 0.005, stated: 0.05, guess: 0.2 }
export const BODY_HALF_WIDTH: Record<BodyFrom, number> = {
  'test-method': 0.05,
  measured: 0.05,
  stated: 0.1,
  guess: 0.18,
}

/** Groups judged by one habit: within each, two items err together with the plan's correlation. */
const JUDGED_BY_HABIT = new Set(['stated', 'guess', 'kind'])

/** Standard uncertainty of a figure known to lie within ± `halfWidth`, GUM 4.3.7. */
export const uniformSigma = (halfWidth: number) => halfWidth / Math.sqrt(3)

/** Standard uncertainty of a triangular distribution with these ends and mode, L. Symmetric: GUM 4.3.9, a/√6. */
function triangularSigma({ low, typical, high }: LitresRange): number {
  // The sum of squared differences is that of l² + t² + h² − lt − lh − th, and is never negative by rounding.
  return Math.sqrt(((high - low) ** 2 + (typical - low) ** 2 + (high - typical) ** 2) / 36)
}

/** Standard uncertainty of one piece's litres, as a share of them; 0 for a thing that takes none. */
export function litresSigmaShare(item: Item): number {
  if (item.litresFrom !== 'kind') return uniformSigma(LITRES_HALF_WIDTH[item.litresFrom])
  return item.litresRange && item.litres > 0 ? triangularSigma(item.litresRange) / item.litres : 0
}

/** The correlation between two figures of a group. */
export const correlationIn = (group: string, habitCorrelation: number): number =>
  JUDGED_BY_HABIT.has(group) ? habitCorrelation : 0

/** The group that a term is judged in, and its standard uncertainty. */
interface Judged<T> {
  groupOf: (term: T) => string
  sigmaOf: (term: T) => number
}

/**
 * Variance of a sum of `terms`: correlated within the groups that are judged by habit, independent otherwise and between
 * groups. In the terms' unit squared.
 */
export function groupedVariance<T>(
  terms: readonly T[],
  { groupOf, sigmaOf }: Judged<T>,
  habitCorrelation: number,
): number {
  const groups = new Map<string, { squares: number; sum: number }>()
  for (const term of terms) {
    const group = groupOf(term)
    const sigma = sigmaOf(term)
    const sums = groups.get(group)
    if (sums) {
      sums.squares += sigma * sigma
      sums.sum += sigma
    } else groups.set(group, { squares: sigma * sigma, sum: sigma })
  }
  let variance = 0
  for (const [group, { squares, sum }] of groups) {
    const r = correlationIn(group, habitCorrelation)
    variance += (1 - r) * squares + r * sum * sum
  }
  return variance
}
