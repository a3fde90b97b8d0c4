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

export function packing({ settings }: Plan, { rigid: R, soft: S }: Heap, e = settings.fillEfficiency) {
  const { rigidPacking: Pr, softPacking: Ps, personalFactor: F } = settings
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
const BY_HABIT = ['stated', 'guess', 'kind']
const MASS_WIDTH = { scale: 0.005, stated: 0.05, guess: 0.2 }

/** Of a kind: the triangular distribution's u = √((l² + t² + h² − lt − lh − th) / 18), over its mean. */
function relativeU(item: Item): number {
  if (item.litresFrom !== 'kind') return WIDTH[item.litresFrom] / Math.sqrt(3)
  const { low: l, typical: t, high: h } = item.litresRange!
  const variance = (l * l + t * t + h * h - l * t - l * h - t * h) / 18
  return l + t + h > 0 ? Math.sqrt(Math.max(0, variance)) / ((l + t + h) / 3) : 0
}

/** The GUM's full double sum: every item with every item. */
function doubleSum(terms: { group: string; u: number }[], r: number): number {
  let variance = 0
  for (const [i, a] of terms.entries())
    for (const [j, b] of terms.entries()) {
      const together = a.group === b.group && BY_HABIT.includes(a.group) ? r : 0
      variance += (i === j ? 1 : together) * a.u * b.u
    }
  return variance
}

export function sigmaV(plan: Plan, play: InPlay[], heap: Heap): number {
  const { V, slopeR, slopeS } = packing(plan, heap)
  const terms = play.map(it => {
    const { item } = it
    const litres = wholeOf(it) * litresOf(item)
    const a = relativeU(item)
    if (item.inside !== null)
      return {
        group: item.litresFrom,
        u: slopeS * litres * overflowShare(containerOf(item, play), play) * a,
      }
    const slope = item.stow !== 'main-body' ? 0 : item.build === 'rigid' ? slopeR : slopeS
    return { group: item.litresFrom, u: slope * litres * a }
  })
  const measuring = doubleSum(terms, plan.settings.habitCorrelation)
  const spread = plan.settings.personalFactorSpread
  const model =
    spread === null ? (packing(plan, heap, 0).V - packing(plan, heap, 1).V) ** 2 / 12 : (V * spread) ** 2
  return Math.sqrt(measuring + model)
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
