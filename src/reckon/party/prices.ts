// A strain that no choice can go below: what is shared gets a price, and each piece goes where it costs least (Lagrangian
// bound, Held & Karp, Math. Program. 1 (1971) 6–25, from memory). It holds for any prices ≥ 0.

import { isLimit, type Row, type Sharing, type Side } from './problem'
import { type Limit, type Relaxed, relaxed } from './simplex'

export interface Prices {
  /** The `costs[i × sides + s]` of all pieces, and a constant, come to no more than the strain. */
  costs: Float64Array
  /** The least cost of each piece, over the sides that may take it. */
  least: Float64Array
  /** The strain that no choice goes below; +∞: no choice keeps the caps. */
  bound: number
  /** Where each piece goes for the most part, as if it could be cut. */
  rounded: Int32Array
}

/** Rounds in which limits that the last answer broke are taken in. */
const ROUNDS = 12
/** Broken by less is rounding. */
const BROKEN_BY = 1e-7
/** A broken cap costs so much more than strain. */
const BROKEN = 1e3
/** With more pieces the limits are priced as they come, without solving anything. */
const MOST_SHARES = 1500

/** `start`: a choice to begin from, a side for each piece that may take it. */
export function priced(sharing: Sharing, start: Int32Array): Prices {
  const { pieces, sides } = sharing
  const whole = new Float64Array(pieces * sides.length)
  start.forEach((s, i) => {
    whole[i * sides.length + s] = 1
  })
  const limits: Limit[] = []
  // Of each side the limits that are tightest: first at the start, then wherever pieces come to be.
  takeIn(sharing, limits, {
    shares: whole,
    strain: Number.NEGATIVE_INFINITY,
    broken: Number.NEGATIVE_INFINITY,
  })
  if (whole.length > MOST_SHARES) return bounded(sharing, limits, plainPrices(sharing, limits), whole)
  const by = { start, allowed: sides.map(side => side.allowed) }
  const solved = (costs: { strain: number; broken: number }) => {
    let last = relaxed(limits, by, costs)
    for (let round = 0; round < ROUNDS && takeIn(sharing, limits, last); round++)
      last = relaxed(limits, by, costs)
    return last
  }
  const found = solved({ strain: 1, broken: BROKEN })
  if (found.broken > BROKEN_BY) {
    const caps = solved({ strain: 0, broken: 1 })
    if (isImpossible(sharing, limits, caps.prices))
      return { ...bounded(sharing, limits, caps.prices, caps.shares), bound: Number.POSITIVE_INFINITY }
  }
  return bounded(sharing, limits, found.prices, found.shares)
}

/** Adds of each side the limit that is broken most by these shares of pieces, if any is; whether any was. */
function takeIn(
  { pieces, sides }: Sharing,
  limits: Limit[],
  { shares, strain, broken }: Pick<Relaxed, 'shares' | 'strain' | 'broken'>,
): boolean {
  const before = limits.length
  sides.forEach((side, place) => {
    const has = (row: Row) =>
      row.each.reduce((sum, each, i) => sum + each * shares[i * sides.length + place]!, row.fixed)
    const fullest = (rows: Row[]) => rows.reduce((a, b) => (has(b) > has(a) ? b : a))
    const add = (kind: Limit['kind'], row: Row, less: number, scale: number) => {
      const level = (has(row) - less) / scale
      if (level <= (kind === 'strain' ? strain : broken) + BROKEN_BY) return
      const gives = row.each.map(each => each / scale)
      limits.push({ side: place, kind, fixed: (row.fixed - less) / scale, gives })
    }
    const { loads, baseKg, divisor, counts, capKg, packKg, room } = side
    const heaviest = fullest(loads)
    if (counts) add('strain', heaviest, -baseKg, divisor)
    const mostKg = Math.min(capKg, packKg)
    if (isLimit(mostKg)) add('cap', heaviest, mostKg, Math.max(1, mostKg))
    if (!room) return
    const { hardlyLitres } = room
    for (const row of fullRows(room, fullest)) add('cap', row, hardlyLitres, Math.max(1, hardlyLitres))
  })
  return limits.length > before && pieces > 0
}

/** What fills a room the most, with what spills from the pockets and without. */
function fullRows(
  { rows, pockets, pocketLitres, perPocketLitre }: NonNullable<Side['room']>,
  fullest: (rows: Row[]) => Row,
): Row[] {
  const body = fullest(rows)
  if (!isLimit(pocketLitres)) return [body]
  const pocket = fullest(pockets)
  const spilling = {
    fixed: body.fixed + perPocketLitre * (pocket.fixed - pocketLitres),
    each: body.each.map((litres, i) => litres + perPocketLitre * pocket.each[i]!),
  }
  return [body, spilling]
}

/** The strains by what each side may carry, without sides that are over what comes of it. */
function plainPrices(sharing: Sharing, limits: Limit[]): number[] {
  const divisor = ({ side }: Limit) => sharing.sides[side]!.divisor
  let bearing = limits.filter(({ kind }) => kind === 'strain')
  for (;;) {
    const whole = bearing.reduce((sum, limit) => sum + divisor(limit), 0)
    const prices = limits.map(limit => (bearing.includes(limit) ? divisor(limit) / whole : 0))
    const { bound } = bounded(sharing, limits, prices, new Float64Array(0))
    const rest = bearing.filter(({ fixed }) => fixed < bound)
    if (rest.length === bearing.length || rest.length === 0) return prices
    bearing = rest
  }
}

/** Whether the caps alone, at these prices, cannot all hold. */
function isImpossible(sharing: Sharing, limits: readonly Limit[], prices: readonly number[]): boolean {
  const { constant, least } = costed(
    sharing,
    limits,
    prices.map((price, r) => (limits[r]!.kind === 'cap' ? price : 0)),
  )
  return least.reduce((sum, cost) => sum + cost, constant) > BROKEN_BY
}

function costed({ pieces, sides }: Sharing, limits: readonly Limit[], prices: readonly number[]) {
  const costs = new Float64Array(pieces * sides.length)
  let constant = 0
  limits.forEach(({ side, fixed, gives }, r) => {
    const price = prices[r]!
    if (price === 0) return
    constant += price * fixed
    for (let i = 0; i < pieces; i++) costs[i * sides.length + side]! += price * gives[i]!
  })
  const least = Float64Array.from({ length: pieces }, (_, i) =>
    Math.min(...sides.flatMap((side, s) => (side.allowed[i] ? [costs[i * sides.length + s]!] : []))),
  )
  return { constant, costs, least }
}

function bounded(
  sharing: Sharing,
  limits: readonly Limit[],
  given: readonly number[],
  shares: Float64Array,
): Prices {
  const strains = limits.reduce((sum, { kind }, r) => (kind === 'strain' ? sum + given[r]! : sum), 0)
  const prices = given.map(price => (strains > 0 ? price / strains : 0))
  const { constant, costs, least } = costed(sharing, limits, prices)
  const { pieces, sides } = sharing
  const rounded = Int32Array.from({ length: pieces }, (_, i) => {
    const may = sides.flatMap((side, s) => (side.allowed[i] ? [s] : []))
    const part = (s: number) => shares[i * sides.length + s] ?? 0
    return may.reduce((a, b) => (part(b) > part(a) ? b : a))
  })
  return { costs, least, bound: least.reduce((sum, cost) => sum + cost, constant), rounded }
}
