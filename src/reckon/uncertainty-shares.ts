// Where the doubt about the main-body litres comes from: each thing's share of the variance, the packing model's, the
// hand's, and what measuring things by filling, or packing them once, would make of it.
// Shares: GUM (JCGM 100:2008) eq. 13, each covariance halved.

import type { BodyFrom, PastPacking, Plan } from '../plan/types'
import { alikeByThing, modelSpreadOf, type PackedList } from './calibration'
import { fullestOf } from './need'
import { partsOf } from './remedies-parts'
import { type Spread, spreadOf } from './spread'
import type { Reckoning } from './types'

export interface ItemUncertainty {
  of: 'item'
  /** Id of the thing in the plan. */
  id: string
  /** Its share of the variance of the litres at the fullest moment; all shares add up to 1. */
  share: number
  /** Standard uncertainty of the main-body litres it takes, by itself. */
  sigmaLitres: number
}

/** How gaps fill, how one hand differs from another, and how well the hiker's own packings could be read. */
export interface PackingUncertainty {
  of: 'packing' | 'hand' | 'reading'
  share: number
  sigmaLitres: number
}

export type UncertaintyShare = ItemUncertainty | PackingUncertainty

/**
 * The doubts about `need.bodyLitres`, the greatest first: each thing that has a part in it, the packing model and the
 * hand. `reckoning` must be what `reckon(plan)` gave. Empty when nothing rides in the main body.
 *
 * A covariance belongs to two things and is shared equally between them, so a thing's share is its covariance with the
 * whole over the variance of the whole. Of what the hiker's packings have told, each share is what they leave open;
 * one may then be less than nothing, where a thing errs against the others.
 */
export function uncertaintySharesOf(plan: Plan, reckoning: Reckoning): UncertaintyShare[] {
  const spread = fullestSpread(plan, reckoning)
  const { modelLitres, factor, hand, list, gain, weights, share: s } = spread
  const variance = s ** 2
  if (modelLitres === 0 || variance === 0) return []
  const litres = factor * modelLitres
  const told = (part: (packing: PastPacking) => number) =>
    gain * plan.packings.reduce((sum, packing, k) => sum + weights[k]! * part(packing), 0)

  const of = itemParts(plan, spread)
  const items = spread.terms.flatMap(({ item, sigma }, i): ItemUncertainty[] =>
    sigma > 0 ? [{ of: 'item', id: item.id, share: of[i]! / variance, sigmaLitres: factor * sigma }] : [],
  )
  const parts = {
    packing: list.d ** 2 - told(({ d }) => (list.d * modelSpreadOf(plan.settings, d)) / 2),
    hand: hand ** 2 - told(() => hand ** 2),
  }
  const known = of.reduce((sum, part) => sum + part, parts.packing + parts.hand)
  const share = (name: PackingUncertainty['of'], part: number, sigmaShare: number): PackingUncertainty[] =>
    part > ROUNDING * variance ? [{ of: name, share: part / variance, sigmaLitres: litres * sigmaShare }] : []
  const shares: UncertaintyShare[] = [
    ...items,
    ...share('packing', parts.packing, list.d),
    ...share('hand', parts.hand, hand),
    // However many packings there are, they were not read better than this.
    ...share('reading', variance - known, plan.settings.readingSpread),
  ]
  return shares.sort((a, b) => b.share - a.share)
}

/** So small a part of the whole is rounding. */
const ROUNDING = 1e-9

/** What each thing's error has in common with that of the litres asked for, packings taken off; shares of W squared. */
function itemParts({ settings, packings }: Plan, { list, gain, weights }: Spread): number[] {
  const partsIn = (things: PackedList['things']) =>
    alikeByThing(list.things, things, settings.habitCorrelation)
  const told = packings.map(({ things }) => partsIn(things))
  return partsIn(list.things).map(
    (own, i) => own - gain * told.reduce((sum, parts, k) => sum + weights[k]! * parts[i]!, 0),
  )
}

/** A thing worth measuring, and what sigmaV would then be. */
export interface WorthMeasuring extends ItemUncertainty {
  sigmaVIfFilled: number
}

/** The things with so many of the greatest shares are asked what measuring them would do. */
const MOST_ASKED = 12

/** The things whose measuring by filling would narrow the litres most, `most` of them at most; none that would not. */
export function worthMeasuring(
  plan: Plan,
  reckoning: Reckoning,
  shares: readonly UncertaintyShare[],
  most = 3,
): WorthMeasuring[] {
  const { sigmaV } = reckoning.need
  return shares
    .filter(share => share.of === 'item')
    .slice(0, MOST_ASKED)
    .map(share => ({ ...share, sigmaVIfFilled: sigmaVIfFilled(plan, reckoning, [share.id]) }))
    .filter(({ sigmaVIfFilled: sigma }) => sigma < sigmaV * (1 - 1e-9))
    .sort((a, b) => a.sigmaVIfFilled - b.sigmaVIfFilled)
    .slice(0, most)
}

/** What sigmaV would be, had all these things been measured by filling and found to take what they are said to. */
export function sigmaVIfFilled(plan: Plan, reckoning: Reckoning, ids: readonly string[]): number {
  const asked = new Set(ids)
  const { modelLitres, factor, share } = fullestSpread(plan, reckoning, parts => ({
    ...parts,
    gear: parts.gear.map(item => (asked.has(item.id) ? { ...item, litresFrom: 'filled' } : item)),
  }))
  return share * factor * modelLitres
}

/** What sigmaV would be, had the fullest list been packed once more, as reckoned, in a pack known so well. */
export function sigmaVIfPacked(plan: Plan, reckoning: Reckoning, packFrom: BodyFrom = 'stated'): number {
  const { modelLitres, factor, list } = fullestSpread(plan, reckoning)
  if (modelLitres === 0) return 0
  const packed: PastPacking = {
    ...list,
    date: '',
    p: 1,
    pack: null,
    packLitres: factor * modelLitres,
    packFrom,
    W: modelLitres,
    things: [...list.things],
  }
  const { share } = fullestSpread(plan, reckoning, parts => ({
    ...parts,
    plan: { ...plan, packings: [...plan.packings, packed] },
  }))
  return share * factor * modelLitres
}

type Parts = ReturnType<typeof partsOf>

function fullestSpread(plan: Plan, reckoning: Reckoning, change = (parts: Parts): Parts => parts): Spread {
  const fullest = fullestOf(reckoning.moments)
  const parts = partsOf(plan, reckoning)
  return spreadOf(change(parts), reckoning.moments[fullest]!, parts.stocks[fullest]!)
}
