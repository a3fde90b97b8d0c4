// Section 8 of the model page once more: the verdicts of each set-up, and how far it reaches, by halving.

import type { Plan, Setup } from '../../src/plan'
import { type Heap, heapOf, type InPlay, litresOf, packing, wholeOf } from './naive-heap'
import { fillJugs, jugRoom, ridesOf } from './naive-trip'

interface Need {
  bodyLitres: number
  sigmaV: number
  factor: number
  outsideLitres: number
  peakLoadKg: number
  packedDensity: number | null
  longestCm: number | null
  widestCm: number | null
  waterCarryLitres: number
  peakLoadFullWaterKg: number
}

/** Φ by Simpson's rule: for z < 0, φ(z) ∫ exp(z t − t²/2) dt over t ≥ 0. */
export function phi(z: number): number {
  if (z > 0) return 1 - phi(-z)
  const end = Math.min(12, 60 / Math.max(1, -z))
  const n = 20_000
  const h = end / n
  let sum = 0
  for (let i = 0; i <= n; i++) {
    const t = i * h
    const weight = i === 0 || i === n ? 1 : i % 2 ? 4 : 2
    sum += weight * Math.exp(z * t - (t * t) / 2)
  }
  return ((Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * sum * h) / 3
}

const BODY_WIDTH = { 'test-method': 0.05, measured: 0.05, stated: 0.1, guess: 0.18 }

function limitOf({ frame, ratedKg }: Setup, ceilingKg: number): number | null {
  if (frame === 'framed') return ratedKg
  return Math.min(ceilingKg, ratedKg ?? Number.POSITIVE_INFINITY)
}

/** Heap and load at the first departure with `days` full rations and the plan's largest water carry. */
function atDays(
  days: number,
  plan: Plan,
  first: InPlay[],
  carry: number,
  spareRations: number,
): { heap: Heap; loadKg: number; outside: number } {
  const { gear } = plan
  const play = first.map(it => {
    const { item } = it
    if (item.use === 'daily') return { item, left: days + spareRations, used: 0 }
    if (item.use === 'nightly' && item.resupplied) return { item, left: days, used: 0 }
    return { item, left: it.left, used: 0 }
  })
  const jugs = fillJugs(carry, jugRoom(gear))
  const loadKg = play.reduce(
    (sum, { item, left }) => (ridesOf(item, gear) === 'worn' ? sum : sum + left * item.massKg * item.count),
    carry,
  )
  const outside = play.reduce(
    (sum, it) =>
      it.item.inside === null && ridesOf(it.item, gear) === 'outside-pocket'
        ? sum + wholeOf(it) * litresOf(it.item)
        : sum,
    0,
  )
  return { heap: heapOf(play, jugs.soft), loadKg, outside }
}

function reachDays(fits: (days: number) => boolean): number | null {
  if (!fits(0)) return 0
  let good = 0
  let bad = 1
  while (fits(bad)) {
    good = bad
    bad *= 2
    // Nothing that is eaten takes room or weighs: no number of days says it.
    if (bad > 1e12) return null
  }
  for (let i = 0; i < 200; i++) {
    const middle = (good + bad) / 2
    if (fits(middle)) good = middle
    else bad = middle
  }
  return good
}

/** `worst`: whether each set-up suffices with 10 L and 2 kg for what nobody has said; null: all is known. */
export function answers(
  plan: Plan,
  fullWaterKg: number,
  judged: ReturnType<typeof judge>,
  worst: boolean[] | null,
) {
  const care = ['tight', 'fits-with-collar', 'near-rating', 'outgrows-its-support', 'outside-short']
  const setups = plan.packs.flatMap(pack => pack.setups)
  const { carrier } = plan
  return judged.map(({ suffices, verdicts }, i) => {
    const { frame, ratedKg } = setups[i]!
    if (!suffices) return 'does-not'
    if (plan.gear.every(item => item.count === 0)) return 'cannot-tell'
    if ((frame === 'framed' && ratedKg === null) || worst?.[i] === false) return 'cannot-tell'
    if (verdicts.some(code => care.includes(code))) return 'with-care'
    const trips = fullWaterKg > carrier.loadShareLimit * carrier.massKg
    return verdicts.includes('heavy-for-carrier') && !trips ? 'with-care' : 'does'
  })
}

export function judge(
  plan: Plan,
  need: Need,
  full: { bodyKg: number; kg: { total: number } },
  first: InPlay[],
  spareRations: number,
) {
  const { settings, trip, carrier } = plan
  return plan.packs.flatMap(pack =>
    pack.setups.map(setup => {
      const C = pack.bodyLitres
      const liner = trip.wet && !pack.sealed ? settings.linerKg : 0
      const carriedKg = need.peakLoadFullWaterKg + liner + setup.massKg
      const own = setup.ratingCovers === 'contents' ? 0 : setup.massKg
      const ratedAgainst = need.peakLoadFullWaterKg + liner + own
      const limit = limitOf(setup, settings.framelessCeilingKg)
      const a = BODY_WIDTH[pack.bodyFrom]
      const spilled = (outside: number) =>
        pack.outsideLitres === null
          ? 0
          : (need.factor * Math.max(0, outside - pack.outsideLitres)) / settings.softPacking
      const Vp = need.bodyLitres + spilled(need.outsideLitres)
      const chance = (litres: number) =>
        phi((litres - Vp) / Math.sqrt(need.sigmaV ** 2 + ((litres * a) / Math.sqrt(3)) ** 2))
      const fitChance = chance(C)
      const verdicts: string[] = []
      if (fitChance < 0.5) verdicts.push('undersized')
      if (fitChance >= 0.5 && fitChance < 0.9) verdicts.push('tight')
      if (verdicts.length && chance(C + pack.collarLitres) >= 0.9) verdicts.push('fits-with-collar')
      if (C > settings.roomyRatio * Vp) verdicts.push('roomy')
      if (setup.ratedKg === null) verdicts.push('rating-unknown')
      else if (ratedAgainst > setup.ratedKg) verdicts.push('overloaded')
      else if (ratedAgainst > 0.9 * setup.ratedKg) verdicts.push('near-rating')
      if (setup.frame === 'frameless' && ratedAgainst > limit!) verdicts.push('frameless-overloaded')
      if (
        !verdicts.includes('overloaded') &&
        !verdicts.includes('frameless-overloaded') &&
        limit !== null &&
        need.packedDensity !== null &&
        C * need.packedDensity + (full.kg.total - full.bodyKg) + liner + own > limit
      )
        verdicts.push('outgrows-its-support')
      if (pack.outsideLitres !== null && need.outsideLitres > pack.outsideLitres)
        verdicts.push('outside-short')
      if (pack.innerHeightCm !== null && (need.longestCm ?? 0) > pack.innerHeightCm) verdicts.push('too-long')
      const widths = [pack.innerWidthCm, pack.innerDepthCm].filter(width => width !== null)
      if (widths.length && (need.widestCm ?? 0) > Math.min(...widths)) verdicts.push('too-wide')
      if (carriedKg > carrier.loadShareLimit * carrier.massKg) verdicts.push('heavy-for-carrier')
      const fails = ['overloaded', 'frameless-overloaded', 'too-long', 'too-wide']
      if (!verdicts.includes('fits-with-collar')) fails.push('undersized')
      const fits = (days: number) => {
        const { heap, loadKg, outside } = atDays(days, plan, first, need.waterCarryLitres, spareRations)
        return (
          packing(plan, heap, { F: need.factor }).V + spilled(outside) <= C &&
          (limit === null || loadKg + liner + own <= limit)
        )
      }
      const eats = plan.gear.some(item => item.use === 'daily' && item.count > 0)
      return {
        name: pack.name,
        setup: setup.name,
        verdicts: verdicts.sort(),
        suffices: !verdicts.some(code => fails.includes(code)),
        fitChance,
        carriedKg,
        bodyNeedLitres: Vp,
        bodyMarginLitres: C - Vp,
        ratedMarginKg: setup.ratedKg === null ? null : setup.ratedKg - ratedAgainst,
        bodyMassShare: carriedKg / carrier.massKg,
        gramsPerLitre: (setup.massKg * 1000) / C,
        gramsPerRatedKg: setup.ratedKg === null ? null : (setup.massKg * 1000) / setup.ratedKg,
        pricePerLitre: pack.price === null ? null : pack.price / C,
        reachDays: eats ? reachDays(fits) : null,
      }
    }),
  )
}
