// Several trips, one shelf: the fewest packs that do for all of them, and what a single pack for all would have to offer.
// Exact: with up to twenty packs every set of them is looked at.

import type { Plan } from '../plan/types'
import { type Requirement, requirementOf } from './remedies-shortfall'
import type { Reckoning } from './types'

/** A trip judged for the shelf's packs. */
export interface JudgedTrip {
  name: string
  plan: Plan
  reckoning: Reckoning
}

export interface CoveringPack {
  name: string
  /** As in the first trip that has the pack; null: not known. Prices are added up as numbers, whatever the currency. */
  price: number | null
  /** Of its lightest set-up that does for any of the trips. */
  massKg: number
  /** The trips it does for, and the lightest set-up that does. */
  trips: { trip: number; setup: string }[]
}

export type Cover =
  | {
      ok: true
      /** The chosen packs, as the first trip that names them orders them. */
      packs: CoveringPack[]
      /** Indexes of the trips for which no pack does. */
      uncovered: number[]
    }
  | { ok: false; reason: 'too-many-packs'; packs: number; limit: number }

export interface CoverOptions {
  /** What is least first: the number of packs (then price, then mass), or the price (then number, then mass). */
  least?: 'packs' | 'price'
}

/** Every set of so many packs can be looked at in good time. */
const MOST_COVERING_PACKS = 20

/**
 * The least set of packs that does for every trip for which any does. Packs are matched between trips by name, and
 * their set-ups by theirs; a pack does for a trip when one of its set-ups suffices. A pack whose price is not known
 * counts as dearer than any other. Packs that another betters in everything do not count towards the limit.
 */
export function coverOf(trips: JudgedTrip[], { least = 'packs' }: CoverOptions = {}): Cover {
  const shelf = shelfOf(trips)
  const useful = shelf.filter(pack => pack.trips.length > 0)
  const sets = useful.map(({ price, massKg, trips: does }) => {
    const unknown = price === null ? 1 : 0
    const cost = least === 'packs' ? [1, unknown, price ?? 0, massKg] : [unknown, price ?? 0, 1, massKg]
    return { covers: does.map(({ trip }) => trip), cost }
  })
  const chosen = leastCover(sets)
  if (chosen === null)
    return { ok: false, reason: 'too-many-packs', packs: useful.length, limit: MOST_COVERING_PACKS }
  const uncovered = trips.flatMap((_, i) => (sets.some(set => set.covers.includes(i)) ? [] : [i]))
  return { ok: true, packs: chosen.map(i => useful[i]!), uncovered }
}

function shelfOf(trips: JudgedTrip[]): CoveringPack[] {
  const shelf = new Map<string, CoveringPack>()
  for (const { plan, reckoning } of trips)
    for (const { name, pack, index } of reckoning.packs) {
      const { price, setups } = plan.packs[pack]!
      if (!shelf.has(name)) shelf.set(name, { name, price, massKg: setups[index]!.massKg, trips: [] })
    }
  trips.forEach(({ plan, reckoning }, trip) => {
    const lightestFirst = reckoning.packs
      .map(judged => ({ judged, massKg: plan.packs[judged.pack]!.setups[judged.index]!.massKg }))
      .sort((a, b) => a.massKg - b.massKg)
    for (const { judged, massKg } of lightestFirst) {
      const known = shelf.get(judged.name)!
      if (!judged.suffices || known.trips.some(does => does.trip === trip)) continue
      known.massKg = known.trips.length ? Math.min(known.massKg, massKg) : massKg
      known.trips.push({ trip, setup: judged.setup })
    }
  })
  return [...shelf.values()]
}

export interface CoverSet {
  covers: number[]
  /** Points in order of weight, each ≥ 0: a later one decides only between equals in the earlier. */
  cost: number[]
}

/**
 * Indexes of the sets that together cover all that any covers, at the least total cost; earlier sets win ties.
 * Null when more than twenty are left once those were dropped that another set replaces.
 */
export function leastCover(sets: CoverSet[]): number[] | null {
  const kept = sets.flatMap((set, i) => (sets.some((other, j) => replaces(other, set, j < i)) ? [] : [i]))
  if (kept.length > MOST_COVERING_PACKS) return null
  const all = [...new Set(sets.flatMap(set => set.covers))]
  // For each thing to cover, the sets that do, as bits.
  const coverers = all.map(it =>
    kept.reduce((bits, i, bit) => (sets[i]!.covers.includes(it) ? bits | (1 << bit) : bits), 0),
  )
  const nothing = sets[0]?.cost.map(() => 0) ?? []
  let best: { bits: number; cost: number[] } | null = null
  visit(0, 0, nothing)
  const { bits } = best as unknown as { bits: number }
  return kept.filter((_, bit) => bits & (1 << bit))

  /** Every set of packs, except those that cost no less than one that covers already: more packs only add cost. */
  function visit(bit: number, bits: number, cost: number[]) {
    if (best && !isLess(cost, best.cost)) return
    if (coverers.every(mask => mask & bits)) {
      best = { bits, cost }
      return
    }
    const toCome = -1 << bit
    if (coverers.some(mask => (mask & (bits | toCome)) === 0) || bit === kept.length) return
    const { cost: more } = sets[kept[bit]!]!
    visit(
      bit + 1,
      bits | (1 << bit),
      cost.map((point, p) => point + more[p]!),
    )
    visit(bit + 1, bits, cost)
  }
}

function replaces(other: CoverSet, set: CoverSet, earlier: boolean): boolean {
  if (other === set || !set.covers.every(it => other.covers.includes(it))) return false
  if (isLess(set.cost, other.cost)) return false
  const alike = other.covers.length === set.covers.length && !isLess(other.cost, set.cost)
  return !alike || earlier
}

/** Sums that differ only by rounding are equal. */
const ROUNDING = 1e-9

function isLess(a: number[], b: number[]): boolean {
  const at = a.findIndex((value, i) => Math.abs(value - b[i]!) > ROUNDING * Math.max(1, Math.abs(value)))
  return at >= 0 && a[at]! < b[at]!
}

/** The most that any of the trips asks of a pack that itself weighs `packKg`; null without trips. */
export function requirementOfAll(
  trips: readonly Pick<JudgedTrip, 'plan' | 'reckoning'>[],
  packKg: number,
): Requirement | null {
  const [first, ...rest] = trips.map(({ plan, reckoning }) => requirementOf(plan, reckoning, packKg))
  if (!first) return null
  return rest.reduce(
    (a, b) => ({
      bodyLitresSafe: Math.max(a.bodyLitresSafe, b.bodyLitresSafe),
      contentsKg: Math.max(a.contentsKg, b.contentsKg),
      ratedKg: Math.max(a.ratedKg, b.ratedKg),
      frame: a.frame || b.frame,
      outsideLitres: Math.max(a.outsideLitres, b.outsideLitres),
      innerHeightCm: largest(a.innerHeightCm, b.innerHeightCm),
      innerWidthCm: largest(a.innerWidthCm, b.innerWidthCm),
    }),
    first,
  )
}

function largest(a: number | null, b: number | null): number | null {
  if (a === null || b === null) return a ?? b
  return Math.max(a, b)
}
