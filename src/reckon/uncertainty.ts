// How sure the litres and the load are, by the rules of JCGM 100:2008 (GUM): each stated figure uniform within ± a
// (4.3.7), items judged by the same habit partly correlated (5.2.2). The half-widths are judgements of ours.

import type { BodyFrom, LitresFrom, MassFrom } from '../plan/types'

export const LITRES_HALF_WIDTH: Record<LitresFrom, number> = {
  filled: 0.03,
  dimensions: 0.1,
  stated: 0.15,
  guess: 0.3,
}
export const MASS_HALF_WIDTH: Record<MassFrom, number> = { scale: 0.005, stated: 0.05, guess: 0.2 }
export const BODY_HALF_WIDTH: Record<BodyFrom, number> = { 'test-method': 0.05, measured: 0.05, stated: 0.1 }

/** Groups judged by one habit: within each, two items err together with the plan's correlation. */
const JUDGED_BY_HABIT = new Set(['stated', 'guess'])

/** Standard uncertainty of a figure known to lie within ± `halfWidth`, GUM 4.3.7. */
export const uniformSigma = (halfWidth: number) => halfWidth / Math.sqrt(3)

/** Variance of a sum of terms with standard uncertainties `sigmas`, any two of them correlated by `r`. */
export function varianceOfSum(sigmas: number[], r: number): number {
  let squares = 0
  let sum = 0
  for (const sigma of sigmas) {
    squares += sigma * sigma
    sum += sigma
  }
  return (1 - r) * squares + r * sum * sum
}

/** Variance over groups: correlated within those judged by habit, independent otherwise and between groups. */
export function groupedVariance(
  terms: Iterable<{ group: string; sigma: number }>,
  habitCorrelation: number,
): number {
  const groups = new Map<string, number[]>()
  for (const { group, sigma } of terms) {
    const sigmas = groups.get(group)
    if (sigmas) sigmas.push(sigma)
    else groups.set(group, [sigma])
  }
  let variance = 0
  for (const [group, sigmas] of groups)
    variance += varianceOfSum(sigmas, JUDGED_BY_HABIT.has(group) ? habitCorrelation : 0)
  return variance
}
