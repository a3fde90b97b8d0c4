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
  rows: Row[]
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

/** Of a row's largest number: so little is let off from the start, so that no bound takes rounding for a shortfall. */
const ROUNDING = 1e-9

/** Rounds of pricing. The bound holds at any prices; more rounds only sharpen it. */
const PRICE_ROUNDS = 60

/** Bounds for sets of exactly so many choices; null when no such set mends every row. */
export function boundsOf({ choices, rows }: Choosing, groups: number[][]): (size: number) => Bounds | null {
  const scaled = rows.map(({ need, gives }) => {
    const scale = Math.max(...gives.map(Math.abs), Math.abs(need)) || 1
    return { need: need / scale - ROUNDING, gives: gives.map(give => give / scale) }
  })
  const costs = choices.map(choice => choice.cost)
  const free = costs.map(() => 0)
  const plain = tails(groups, groups.length, choice => costs[choice]!)
  const mostOf = (row: Row) => tails(groups, groups.length, choice => -row.gives[choice]!)
  const most = scaled.map(mostOf)
  const hopeless = (table: number[][], row: Row, size: number) => row.need > -table[0]![size]!

  return size => {
    if (scaled.some((row, r) => hopeless(most[r]!, row, size))) return null
    const all = [...scaled]
    const tables = [...most]
    if (scaled.length > 1) {
      // The rows weighed together make one more that must be mended; it often shows first that a branch is dead.
      const { prices, bound } = priced(scaled, groups, { size, costs: free, target: 1 })
      if (bound > 0) return null
      const gives = costs.map((_, c) => sum(scaled.map((row, r) => prices[r]! * row.gives[c]!)))
      const joint = { need: sum(scaled.map((row, r) => prices[r]! * row.need)), gives }
      all.push(joint)
      tables.push(mostOf(joint))
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

/** Prices ≥ 0 of the rows at which the bound is high, by subgradient steps. */
function priced(
  rows: Row[],
  groups: number[][],
  { size, costs, target }: { size: number; costs: number[]; target: number },
): { prices: number[]; bound: number } {
  let prices = rows.map(() => 0)
  let best = { prices, bound: Number.NEGATIVE_INFINITY }
  let stride = 1.5
  for (let round = 0; round < PRICE_ROUNDS; round++) {
    const cheapest = groups
      .map(group => {
        const values = group.map(choice => reducedCost(costs[choice]!, choice, rows, prices))
        const value = Math.min(...values)
        return { value, choice: group[values.indexOf(value)]! }
      })
      .sort((a, b) => a.value - b.value)
      .slice(0, size)
    const bound = sum(cheapest.map(c => c.value)) + sum(rows.map((row, r) => prices[r]! * row.need))
    if (bound > best.bound) best = { prices, bound }
    else stride *= 0.85
    const short = rows.map(row => row.need - sum(cheapest.map(c => row.gives[c.choice]!)))
    const steepness = sum(short.map(s => s * s))
    if (steepness < ROUNDING ** 2) break
    const step = (stride * Math.max(target - bound, target * 1e-3)) / steepness
    prices = prices.map((price, r) => Math.max(0, price + step * short[r]!))
  }
  return best
}
