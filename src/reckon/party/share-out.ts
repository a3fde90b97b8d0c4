// The best way to share out, in the order of the aims: few young people over their limit, few packs that do not do, a
// small worst strain, few pieces away from their owner, and the plan's order. Each set of people who may fail is a case.

import { explore } from './explore'
import { firstChoice, goodChoice, sizesBy } from './improve'
import { type Prices, priced } from './prices'
import { isLimit, SAME_STRAIN, type Sharing, type Side, Sums } from './problem'
import type { Sharer } from './sides'

export interface Wish {
  sharers: readonly Sharer[]
  /** Whose each piece is, a place among the sharers; null: everybody's. */
  owners: readonly (number | null)[]
  /** Whose strain comes first; null: nobody's. */
  spared: number | null
}

export interface Shared {
  /** A sharer for each piece. */
  carriers: Int32Array
  proven: boolean
  /** No choice as good in the aims before has a smaller worst strain. */
  bound: number
}

/** Branches looked at, in all: about a second. */
const MOST_BRANCHES = 1_200_000
/** Of these for what comes after the strain. */
const FOR_TIES = 500_000
/** Sets of people who may fail that are looked at, of each number of them. */
const MOST_CASES = 70

interface Found {
  carriers: Int32Array
  strain: number
}

interface Case {
  sharing: Sharing
  prices: Prices
}

export function shareOut(wish: Wish): Shared {
  const { sharers, owners } = wish
  const budget = { left: MOST_BRANCHES - FOR_TIES }
  const twins = twinsOf(wish)
  const young = sharers.flatMap(({ youngKg }, s) => (youngKg === null ? [] : [s]))
  const packed = sharers.flatMap(({ side }, s) => (hasLimits(side) ? [s] : []))
  const isOverAlone = (side: Side) => new Sums(side).isOver
  const alwaysOver = young.filter(s =>
    isOverAlone({ ...withoutPack(sharers[s]!.side), capKg: sharers[s]!.youngKg! }),
  )
  const alwaysFails = packed.filter(s => isOverAlone(sharers[s]!.side))
  let proven = true
  let unsure = Number.POSITIVE_INFINITY
  for (let over = alwaysOver.length; over <= young.length; over++) {
    for (let failing = alwaysFails.length; failing <= packed.length; failing++) {
      const sets = setsOf(young, alwaysOver, over).flatMap(mayBeOver =>
        setsOf(packed, alwaysFails, failing).map(mayFail => ({ mayBeOver, mayFail })),
      )
      if (sets.length > MOST_CASES) proven = false
      const cases = sets.slice(0, MOST_CASES).flatMap(each => caseOf(wish, each) ?? [])
      const level = leastStrain(cases, wish, twins, budget)
      proven &&= level.whole
      if (!level.whole) unsure = Math.min(unsure, level.bound)
      if (level.found) return finished(level.found, level.cases)
    }
  }
  throw new RangeError('sharing out: a piece that nobody may carry')

  function finished(found: Found, cases: Case[]): Shared {
    const ties = { left: FOR_TIES + Math.max(0, budget.left) }
    const settled = fewestMoved(found, cases, { twins, owners, budget: ties })
    const strain = settled.found.strain
    return {
      carriers: settled.found.carriers,
      proven: proven && settled.whole,
      bound: proven ? strain : Math.min(unsure, strain),
    }
  }
}

const hasLimits = ({ packKg, room, allowed }: Side) =>
  isLimit(packKg) || room !== null || allowed.includes(false)

/** As if nothing were asked of the pack. */
const withoutPack = (side: Side): Side => ({
  ...side,
  packKg: Number.POSITIVE_INFINITY,
  room: null,
  allowed: side.allowed.map(() => true),
  ask: pieces => ({ ...side.ask(pieces), holds: true }),
})

/** The sets of so many of `all` that hold `forced`, in order. */
function setsOf(all: readonly number[], forced: readonly number[], size: number): number[][] {
  const free = all.filter(s => !forced.includes(s))
  const choose = (from: number, count: number): number[][] =>
    count === 0
      ? [[]]
      : free
          .slice(from)
          .flatMap((s, i) =>
            from + i + count > free.length ? [] : choose(from + i + 1, count - 1).map(rest => [s, ...rest]),
          )
  return choose(0, size - forced.length).map(chosen => [...forced, ...chosen])
}

/** Null: whoever is not among those who may fail is over a limit without any piece, or a piece goes to nobody. */
function caseOf(
  { sharers, owners }: Wish,
  { mayBeOver, mayFail }: { mayBeOver: readonly number[]; mayFail: readonly number[] },
): Sharing | null {
  const sides = sharers.map(({ side, youngKg }, s) => {
    const own = mayFail.includes(s) ? withoutPack(side) : side
    return youngKg === null || mayBeOver.includes(s) ? own : { ...own, capKg: youngKg }
  })
  if (sides.some(side => new Sums(side).isOver)) return null
  if (owners.some((_, i) => !sides.some(({ allowed }) => allowed[i]))) return null
  return { pieces: owners.length, sides }
}

interface Level {
  found: Found | null
  /** Of the cases those that may hold a choice as good, with their prices. */
  cases: Case[]
  whole: boolean
  /** No choice goes below. */
  bound: number
}

/** The least strain over the cases; of one who is spared theirs first, which then bounds them. */
function leastStrain(sharings: Sharing[], wish: Wish, twins: number[], budget: { left: number }): Level {
  const { spared } = wish
  if (spared === null) return leastWorst(sharings, null, twins, budget)
  const counting = (s: number, side: Side): Side => ({ ...side, counts: s === spared })
  const alone = leastWorst(
    sharings.map(each => ({ ...each, sides: each.sides.map((side, s) => counting(s, side)) })),
    null,
    twins,
    budget,
  )
  if (!alone.found) return alone
  const most = alone.found.strain + SAME_STRAIN
  const bounded = sharings.map(each => ({
    ...each,
    sides: each.sides.map((side, s) =>
      s === spared ? { ...side, capKg: Math.min(side.capKg, most * side.divisor - side.baseKg) } : side,
    ),
  }))
  const { carriers } = alone.found
  const rest = leastWorst(bounded, carriers, twins, budget)
  return { ...rest, whole: rest.whole && alone.whole }
}

function leastWorst(
  sharings: Sharing[],
  start: Int32Array | null,
  twins: number[],
  budget: { left: number },
): Level {
  let found: Found | null = null
  const most = () => (found ? found.strain - SAME_STRAIN : Number.POSITIVE_INFINITY)
  const better = (choice: Found | null) => {
    if (choice && choice.strain <= most()) found = choice
  }
  const begun = sharings
    .map(sharing => {
      const may = start?.every((s, i) => sharing.sides[s]!.allowed[i]) ?? false
      const from = may ? start! : firstChoice(sharing)
      return { sharing, from, prices: priced(sharing, from) }
    })
    .filter(({ prices }) => isLimit(prices.bound))
    .sort((a, b) => a.prices.bound - b.prices.bound)
  for (const { sharing, from, prices } of begun) {
    better(judged(sharing, from))
    if (prices.bound > most()) continue
    better(judged(sharing, goodChoice(sharing, [from, prices.rounded])))
  }
  let whole = true
  let bound = Number.POSITIVE_INFINITY
  for (const { sharing, prices } of begun) {
    if (prices.bound > most()) continue
    const size = sizesBy(sharing, values => Math.max(...values))
    const ended = explore(sharing, {
      prices,
      order: [...size.keys()].sort((a, b) => size[b]! - size[a]! || a - b),
      twins,
      sidesBy: 'cheapest',
      mostStrain: most,
      found: (carriers, strain) => {
        found = { carriers: carriers.slice(), strain }
        return false
      },
      budget,
    })
    if (ended) continue
    whole = false
    bound = Math.min(bound, prices.bound)
    // What the search came upon may be eased further than what it began with.
    const now = found as Found | null
    if (now) better(judged(sharing, goodChoice(sharing, [now.carriers])))
  }
  const strain = (found as Found | null)?.strain ?? Number.POSITIVE_INFINITY
  const cases = begun.filter(({ prices }) => prices.bound <= strain + SAME_STRAIN)
  return { found, cases, whole, bound: Math.min(bound, strain) }
}

/** What the choice comes to; null: it is over a limit. */
function judged({ sides }: Sharing, carriers: Int32Array): Found | null {
  let strain = 0
  for (const [s, side] of sides.entries()) {
    const handed = [...carriers.keys()].filter(i => carriers[i] === s)
    if (handed.some(i => !side.allowed[i])) return null
    const sum = new Sums(side)
    for (const i of handed) sum.add(i)
    if (sum.isOver) return null
    const asked = sum.isClear ? null : side.ask(handed)
    if (asked && !asked.holds) return null
    const own = asked && !side.isExact ? asked.strain : sum.strain
    if (own * side.divisor - side.baseKg > side.capKg) return null
    if (side.counts) strain = Math.max(strain, own)
  }
  return { carriers, strain }
}

/** Of the choices with the same strain one that leaves the most pieces with their owner, the first in the plan's order. */
function fewestMoved(
  best: Found,
  cases: Case[],
  { twins, owners, budget }: { twins: number[]; owners: Wish['owners']; budget: { left: number } },
): { found: Found; whole: boolean } {
  const movedIn = (carriers: Int32Array) =>
    owners.reduce<number>((sum, owner, i) => sum + (owner !== null && owner !== carriers[i] ? 1 : 0), 0)
  const most = best.strain + SAME_STRAIN
  let found = best
  let moved = movedIn(best.carriers)
  let isFirst = false
  let whole = true
  for (const { sharing, prices } of cases) {
    const width = sharing.sides.length
    const of = Float64Array.from({ length: owners.length * width }, (_, at) => {
      const owner = owners[Math.floor(at / width)]!
      return owner !== null && owner !== at % width ? 1 : 0
    })
    // Another case may hold one as good that comes before.
    let under = moved + 0.5
    const ended = explore(sharing, {
      prices,
      order: owners.map((_, i) => i),
      twins,
      sidesBy: 'list',
      mostStrain: () => most,
      dues: { of, under: () => under },
      found: (carriers, strain) => {
        const now = movedIn(carriers)
        under = now
        if (now < moved || !isFirst || isBefore(carriers, found.carriers)) {
          found = { carriers: carriers.slice(), strain }
          isFirst = true
          moved = now
        }
        return now === 0
      },
      budget,
    })
    whole &&= ended
  }
  return { found, whole }
}

function isBefore(a: Int32Array, b: Int32Array): boolean {
  const at = a.findIndex((s, i) => s !== b[i])
  return at >= 0 && a[at]! < b[at]!
}

/** Of each piece the last one before it that is its equal for everybody; −1: none. */
function twinsOf({ sharers, owners }: Wish): number[] {
  const last = new Map<string, number>()
  return owners.map((owner, i) => {
    const key = JSON.stringify([
      owner,
      ...sharers.map(({ side: { loads, room, allowed } }) => [
        allowed[i],
        ...[...loads, ...(room ? [...room.rows, ...room.pockets] : [])].map(({ each }) => each[i]),
      ]),
    ])
    const before = last.get(key) ?? -1
    last.set(key, i)
    return before
  })
}
