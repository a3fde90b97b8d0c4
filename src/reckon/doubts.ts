// Where the doubt about the main-body litres comes from: each thing's share of the variance, the packing model's, and
// what measuring one thing by filling would make of it. Shares: GUM (JCGM 100:2008) eq. 13, each covariance halved.

import type { Plan } from '../plan/types'
import { fullestOf, type LitresTerm, litresTerms, packingVariance } from './need'
import { partsOf } from './remedies-parts'
import type { Reckoning } from './types'
import { correlationIn, groupedVariance, LITRES_HALF_WIDTH, uniformSigma, varianceOfSum } from './uncertainty'

export interface ItemDoubt {
  of: 'item'
  /** Id of the thing in the plan. */
  id: string
  /** Its share of the variance of the litres at the fullest moment; all shares add up to 1. */
  share: number
  /** Standard uncertainty of the main-body litres it takes, by itself. */
  sigmaLitres: number
  /** What sigmaV would be, had this one thing been measured by filling and found to take what it is said to. */
  sigmaVIfFilled: number
}

export interface PackingDoubt {
  of: 'packing'
  share: number
  sigmaLitres: number
}

export type Doubt = ItemDoubt | PackingDoubt

/** The terms judged by one habit, or one of those judged apart, with their sums. */
interface Group {
  r: number
  sigmas: number[]
  sum: number
  variance: number
}

/**
 * The doubts about `need.bodyLitres`, the greatest first: each thing that has a part in it, and the packing model.
 * `reckoning` must be what `reckon(plan)` gave. Empty when nothing rides in the main body.
 *
 * A covariance belongs to two things and is shared equally between them, so a thing's share is its covariance with the
 * whole over the variance of the whole.
 */
export function doubtsOf(plan: Plan, reckoning: Reckoning): Doubt[] {
  const fullest = fullestOf(reckoning.moments)
  const moment = reckoning.moments[fullest]!
  const parts = partsOf(plan, reckoning)
  const terms = litresTerms(parts, moment, parts.stocks[fullest]!).filter(term => term.sigma > 0)
  const groups = groupsOf(terms, plan.settings.habitCorrelation)
  const packing = packingVariance(plan, moment)
  const variance = [...groups.values()].reduce((sum, group) => sum + group.variance, packing)
  if (variance === 0) return []

  const items = terms.map((term): ItemDoubt => {
    const { sigma, item } = term
    const { r, sum } = groups.get(term.group)!
    return {
      of: 'item',
      id: item.id,
      share: ((1 - r) * sigma ** 2 + r * sigma * sum) / variance,
      sigmaLitres: sigma,
      sigmaVIfFilled: Math.sqrt(Math.max(0, variance + changeIfFilled(term, groups))),
    }
  })
  const model: PackingDoubt = { of: 'packing', share: packing / variance, sigmaLitres: Math.sqrt(packing) }
  const doubts: Doubt[] = packing > 0 ? [...items, model] : items
  return doubts.sort((a, b) => b.share - a.share)
}

/** The things whose measuring by filling would narrow the litres most, `most` of them at most; none that would not. */
export function worthMeasuring(doubts: readonly Doubt[], sigmaV: number, most = 3): ItemDoubt[] {
  return doubts
    .filter((doubt): doubt is ItemDoubt => doubt.of === 'item' && doubt.sigmaVIfFilled < sigmaV * (1 - 1e-9))
    .sort((a, b) => a.sigmaVIfFilled - b.sigmaVIfFilled)
    .slice(0, most)
}

/** What sigmaV would be, had all these things been measured by filling and found to take what they are said to. */
export function sigmaVIfFilled(plan: Plan, reckoning: Reckoning, ids: readonly string[]): number {
  const fullest = fullestOf(reckoning.moments)
  const moment = reckoning.moments[fullest]!
  const parts = partsOf(plan, reckoning)
  const terms = litresTerms(parts, moment, parts.stocks[fullest]!).map(term =>
    ids.includes(term.item.id) ? { group: 'filled', sigma: sigmaFilled(term) } : term,
  )
  return Math.sqrt(groupedVariance(terms, plan.settings.habitCorrelation) + packingVariance(plan, moment))
}

const sigmaFilled = ({ slope, litres }: LitresTerm) => slope * litres * uniformSigma(LITRES_HALF_WIDTH.filled)

function groupsOf(terms: LitresTerm[], habitCorrelation: number): Map<string, Group> {
  const groups = new Map<string, Group>()
  for (const { group, sigma } of terms) {
    const found = groups.get(group)
    if (found) found.sigmas.push(sigma)
    else
      groups.set(group, { r: correlationIn(group, habitCorrelation), sigmas: [sigma], sum: 0, variance: 0 })
  }
  for (const group of groups.values()) {
    group.sum = group.sigmas.reduce((a, b) => a + b, 0)
    group.variance = varianceOfSum(group.sigmas, group.r)
  }
  return groups
}

/** Change of the variance when one thing leaves its group and joins those filled, which err apart. */
function changeIfFilled(term: LitresTerm, groups: Map<string, Group>): number {
  const { item, group, sigma } = term
  if (item.litresFrom === 'filled') return 0
  const { r, sum } = groups.get(group)!
  // (1 − r) Σu² + r (Σu)² without u.
  return sigmaFilled(term) ** 2 - (sigma ** 2 + 2 * r * sigma * (sum - sigma))
}
