// What a search for the least choice may hope for: the most that so many choices can give to a row, and the least
// they can cost while every row is mended (Lagrangian bound: shortfalls are priced instead of kept out).

export interface Choice {
  /** At most one choice of a group is taken. */
  group: number
  /** A whole number ≥ 0. */
  cost: number
}

/** Mended when the chosen gives add up to the need. A choice may also take (give less than 0). */
export interface Row {
  need: number
  gives: number[]
}

export interface Choosing {
  choices: Choice[]
  /** A function: what a set of so many choices has to mend. */
  rows: Row[] | ((size: number) => Row[])
}

export interface Bounds {
  /** How many choices are taken in all. */
  size: number
  /** The rows' needs and gives as the search reads them: scaled, and joined by an implied row. */
  needs: number[]
  gives: number[][]
  /** The most that `count` choices among the groups from `from` on can give to a row. */
  mostGiven: (row: number, from: number, count: number) => number
  /** No `count` choices among the groups from `from` on that mend what is still needed cost less. */
  leastCost: (from: number, count: number, needs: number[]) => number
}

/** Of the most that one choice gives: so little is let off from the start, so that no bound takes rounding for a shortfall. */
const ROUNDING = 1e-9

/** Rounds of pricing. The bound holds at any prices; more rounds only sharpen it. */
const PRICE_ROUNDS = 60

/** A row's gives over the largest of them, and the most that so many of them come to. */
interface Prepared {
  scale: number
  gives: number[]
  most: number[][]
}

/** Bounds for sets of exactly so many choices; null when no such set mends every row. */
export function boundsOf({ choices, rows }: Choosing, groups: number[][]): (size: number) => Bounds | null {
  const costs = choices.map(choice => choice.cost)
  const free = costs.map(() => 0)
  const plain = tails(groups, groups.length, choice => costs[choice]!)
  const mostOf = (gives: number[]) => tails(groups, groups.length, choice => -gives[choice]!)
  // What a row's choices give is the same for every number of them; only what is needed may differ.
  const prepared = new Map<number[], Prepared>()
  const preparedOf = ({ gives }: Row): Prepared => {
    const known = prepared.get(gives)
    if (known) return known
    const scale = Math.max(...gives.map(Math.abs)) || 1
    const scaled = gives.map(give => give / scale)
    const made = { scale, gives: scaled, most: mostOf(scaled) }
    prepared.set(gives, made)
    return made
  }

  return size => {
    const asked = rowsFor(rows, size).map(row => ({ row, ...preparedOf(row) }))
    const scaled = asked.map(({ row, scale, gives }) => ({ need: row.need / scale - ROUNDING, gives }))
    const most = asked.map(it => it.most)
    if (scaled.some(({ need }, r) => need > -most[r]![0]![size]!)) return null
    const all = [...scaled]
    const tables = [...most]
    if (scaled.length > 1) {
      // The rows weighed together make one more that must be mended; it often shows first that a branch is dead.
      const { prices, bound } = priced(scaled, groups, { size, costs: free, target: 1, enough: 0 })
      if (bound > 0) return null
      const gives = costs.map((_, c) => sum(scaled.map((row, r) => prices[r]! * row.gives[c]!)))
      const joint = { need: sum(scaled.map((row, r) => prices[r]! * row.need)), gives }
      all.push(joint)
      tables.push(mostOf(joint.gives))
    }
    const target = sum([...costs].sort((a, b) => b - a).slice(0, size)) || 1
    const { prices } = priced(all, groups, { size, costs, target })
    const reduced = tails(groups, size, choice => reducedCost(costs[choice]!, choice, all, prices))
    return {
      size,
      needs: all.map(row => row.need),
      gives: all.map(row => row.gives),
      mostGiven: (row, from, count) => -tables[row]![from]![count]!,
      leastCost: (from, count, needs) => {
        let lagrangian = reduced[from]![count]!
        for (let row = 0; row < needs.length; row++) lagrangian += prices[row]! * needs[row]!
        return Math.max(plain[from]![count]!, lagrangian)
      },
    }
  }
}

/** The rows that a set of so many choices has to mend. */
export const rowsFor = (rows: Choosing['rows'], size: number): Row[] =>
  typeof rows === 'function' ? rows(size) : rows

const sum = (numbers: number[]) => numbers.reduce((total, n) => total + n, 0)

function reducedCost(cost: number, choice: number, rows: Row[], prices: number[]): number {
  return rows.reduce((left, row, r) => left - prices[r]! * row.gives[choice]!, cost)
}

/** The sum of the `count` smallest values, one a group, among the groups from `from` on: [from][count]. */
function tails(groups: number[][], size: number, value: (choice: number) => number): number[][] {
  const table: number[][] = []
  let sorted: number[] = []
  for (let from = groups.length; from >= 0; from--) {
    if (from < groups.length) {
      const least = Math.min(...groups[from]!.map(value))
      const at = sorted.findIndex(other => other > least)
      sorted = at < 0 ? [...sorted, least] : [...sorted.slice(0, at), least, ...sorted.slice(at)]
    }
    const sums = [0]
    for (let count = 1; count <= size; count++)
      sums.push(count > sorted.length ? Number.POSITIVE_INFINITY : sums[count - 1]! + sorted[count - 1]!)
    table[from] = sums
  }
  return table
}

interface Pricing {
  size: number
  costs: number[]
  target: number
  /** A bound above this needs no sharpening. */
  enough?: number
}

/** Prices ≥ 0 of the rows at which the bound is high, by subgradient steps. */
function priced(
  rows: Row[],
  groups: number[][],
  { size, costs, target, enough = Number.POSITIVE_INFINITY }: Pricing,
): { prices: number[]; bound: number } {
  let prices = rows.map(() => 0)
  let best = { prices, bound: Number.NEGATIVE_INFINITY }
  let stride = 1.5
  const reduced = new Float64Array(costs.length)
  const values = new Float64Array(groups.length)
  const choices = new Int32Array(groups.length)
  const order = new Int32Array(groups.length)
  for (let round = 0; round < PRICE_ROUNDS; round++) {
    reduced.set(costs)
    for (let r = 0; r < rows.length; r++) {
      const { gives } = rows[r]!
      const price = prices[r]!
      if (price !== 0) for (let c = 0; c < reduced.length; c++) reduced[c]! -= price * gives[c]!
    }
    for (let g = 0; g < groups.length; g++) {
      let least = groups[g]![0]!
      for (const choice of groups[g]!) if (reduced[choice]! < reduced[least]!) least = choice
      choices[g] = least
      values[g] = reduced[least]!
      order[g] = g
    }
    const cheapest = order.sort((a, b) => values[a]! - values[b]!).subarray(0, size)
    let bound = 0
    for (const g of cheapest) bound += values[g]!
    for (let r = 0; r < rows.length; r++) bound += prices[r]! * rows[r]!.need
    if (bound > best.bound) best = { prices, bound }
    else stride *= 0.85
    if (best.bound > enough) break
    const short = rows.map(({ need, gives }) => {
      let left = need
      for (const g of cheapest) left -= gives[choices[g]!]!
      return left
    })
    const steepness = sum(short.map(s => s * s))
    if (steepness < ROUNDING ** 2) break
    const step = (stride * Math.max(target - bound, target * 1e-3)) / steepness
    prices = prices.map((price, r) => Math.max(0, price + step * short[r]!))
  }
  return best
}
