// Sections 5 and 6 of the model page once more: how many litres a heap of things takes, and how sure that is.
// Written from the page, item by item; the GUM's variance as its full double sum.

import type { Item, LitresFrom, Plan } from '../../src/plan'
import { ridesOf } from './naive-trip'

export interface Heap {
  rigid: number
  soft: number
}

/** What is in play of an item at a moment, in its units. */
export interface InPlay {
  item: Item
  left: number
  used: number
}

interface Choice {
  e?: number
  F?: number
}

/** Litres of a heap; the hiker's packings are left to naive-calibration.ts, which gives F. */
export function packing({ settings }: Plan, { rigid: R, soft: S }: Heap, choice: Choice = {}) {
  const { rigidPacking: Pr, softPacking: Ps, fillEfficiency, personalFactor } = settings
  const { e = (1 + fillEfficiency) / 3, F = personalFactor } = choice
  const Vc = R / Pr + ((1 - e) * S) / Ps
  const Vf = S / Ps + R * (1 + (1 - e) * (1 / Pr - 1))
  const skeleton = Vc > Vf
  return {
    V: F * Math.max(Vc, Vf),
    slopeR: skeleton ? F / Pr : F * (1 + (1 - e) * (1 / Pr - 1)),
    slopeS: skeleton ? (F * (1 - e)) / Ps : F / Ps,
  }
}

/** Units in play: what is left, and the rubbish of what was used. */
export const wholeOf = ({ item, left, used }: InPlay) => left + item.leaves * used

/** Litres of all its pieces, a unit of it: of a kind, the mean of its range. */
export function litresOf(item: Item): number {
  if (item.litresFrom !== 'kind') return item.litres * item.count
  const { low, typical, high } = item.litresRange!
  return ((low + typical + high) / 3) * item.count
}

/** Of each container's contents, the share that does not fit. */
function overflowShare(container: Item, play: InPlay[]): number {
  const inside = play.filter(it => it.item.inside === container.id)
  const litres = inside.reduce((sum, it) => sum + wholeOf(it) * litresOf(it.item), 0)
  const over = litres - container.holdsLitres! * container.count
  return over > 0 ? over / litres : 0
}

const containerOf = (item: Item, play: InPlay[]) => play.find(other => other.item.id === item.inside)!.item

export function heapOf(play: InPlay[], softWater: number): Heap {
  const heap: Heap = { rigid: 0, soft: softWater }
  for (const it of play) {
    const { item } = it
    const litres = wholeOf(it) * litresOf(item)
    if (item.inside !== null) heap.soft += litres * overflowShare(containerOf(item, play), play)
    else if (item.stow === 'main-body') heap[item.build] += litres
  }
  return heap
}

const WIDTH: Record<Exclude<LitresFrom, 'kind'>, number> = {
  filled: 0.03,
  dimensions: 0.1,
  stated: 0.15,
  guess: 0.3,
}
export const BY_HABIT = ['stated', 'guess', 'kind']
const MASS_WIDTH = { scale: 0.005, stated: 0.05, guess: 0.2 }

/** Of a kind: the triangular distribution's u = √((l² + t² + h² − lt − lh − th) / 18), over its mean. */
function relativeU(item: Item): number {
  if (item.litresFrom !== 'kind') return WIDTH[item.litresFrom] / Math.sqrt(3)
  const { low: l, typical: t, high: h } = item.litresRange!
  const variance = (l * l + t * t + h * h - l * t - l * h - t * h) / 18
  return l + t + h > 0 ? Math.sqrt(Math.max(0, variance)) / ((l + t + h) / 3) : 0
}

/** The GUM's full double sum: every item with every item. */
export function doubleSum(terms: { group: string; u: number }[], r: number): number {
  let variance = 0
  for (const [i, a] of terms.entries())
    for (const [j, b] of terms.entries()) {
      const together = a.group === b.group && BY_HABIT.includes(a.group) ? r : 0
      variance += (i === j ? 1 : together) * a.u * b.u
    }
  return variance
}

/** A thing as section 9 lists it. */
export interface Listed {
  id: string
  litres: number
  litresFrom: LitresFrom
  u: number
}

/** What section 6 says of a heap for F = 1: W, d and each thing's u. */
export function uncertain(plan: Plan, play: InPlay[], heap: Heap) {
  const { habitCorrelation: r, personalFactorSpread } = plan.settings
  const { V: W, slopeR, slopeS } = packing(plan, heap, { F: 1 })
  const none = packing(plan, heap, { F: 1, e: 0 }).V
  const all = packing(plan, heap, { F: 1, e: 1 }).V
  const d = W === 0 || personalFactorSpread !== null ? 0 : (none - all) / (W * Math.sqrt(12))
  const slopeOf = ({ inside, build, stow }: Item): number => {
    if (inside !== null) return slopeS * overflowWeight(inside, play, r)
    if (stow !== 'main-body') return 0
    return build === 'rigid' ? slopeR : slopeS
  }
  const things = play.map((it): Listed => {
    const { item } = it
    const c = slopeOf(item)
    const v = wholeOf(it) * litresOf(item)
    const u = W === 0 ? 0 : (c * v * relativeU(item)) / W
    return { id: item.id, litres: litresOf({ ...item, count: 1 }), litresFrom: item.litresFrom, u }
  })
  return { W, d, things }
}

/** w of section 6: what of an error inside a container reaches the main body. */
function overflowWeight(id: string, play: InPlay[], r: number): number {
  const container = play.find(({ item }) => item.id === id)!.item
  const inside = play.filter(({ item }) => item.inside === id)
  const t = inside.reduce((sum, it) => sum + wholeOf(it) * litresOf(it.item), 0)
  const H = container.holdsLitres! * container.count
  if (t >= H) return 1
  const sigma = Math.sqrt(
    doubleSum(
      inside.map(it => ({
        group: it.item.litresFrom,
        u: wholeOf(it) * litresOf(it.item) * relativeU(it.item),
      })),
      r,
    ),
  )
  return sigma === 0 ? 0 : Math.max(0, 1 - (H - t) / (1.2816 * sigma))
}

export function sigmaM(plan: Plan, play: InPlay[]): number {
  const gear = play.map(it => it.item)
  const terms = play
    .filter(it => ridesOf(it.item, gear) !== 'worn')
    .map(it => ({
      group: it.item.massFrom,
      u: (wholeOf(it) * it.item.massKg * it.item.count * MASS_WIDTH[it.item.massFrom]) / Math.sqrt(3),
    }))
  return Math.sqrt(doubleSum(terms, plan.settings.habitCorrelation))
}
