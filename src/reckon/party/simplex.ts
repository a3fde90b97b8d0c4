// Prices for limits that are shared: the linear relaxation of handing out pieces, by the primal simplex method (Dantzig,
// with Bland's rule against cycling; from memory). Only the prices are taken from it, and any prices give a true bound:
// an early end or rounding makes the bound weaker and never wrong.

/** Σ over pieces of `gives[i]` × its share on this side + `fixed` ≤ the level of its kind. */
export interface Limit {
  side: number
  kind: 'strain' | 'cap'
  fixed: number
  gives: Float64Array
}

export interface Relaxed {
  /** ≥ 0, one for each limit. */
  prices: number[]
  /** Of piece i the share that goes to side s: `shares[i × sides + s]`. */
  shares: Float64Array
  strain: number
  /** By how much caps are over, as the limits are scaled: 0 where all hold. */
  broken: number
}

const TINY = 1e-9
const MOST_PIVOTS = 2000

/**
 * The least level of strain while caps hold, as far as they can; a broken cap costs `broken` times as much, a strain
 * `strain` times. `start`: a side for each piece, `allowed` tells which sides may take it.
 */
export function relaxed(
  limits: readonly Limit[],
  { start, allowed }: { start: ArrayLike<number>; allowed: boolean[][] },
  costs: { strain: number; broken: number },
): Relaxed {
  const pieces = start.length
  const columns: { piece: number; side: number }[] = []
  for (let piece = 0; piece < pieces; piece++)
    for (let side = 0; side < allowed.length; side++) if (allowed[side]![piece]) columns.push({ piece, side })
  const [strain, broken] = [columns.length, columns.length + 1]
  const slack = columns.length + 2
  const width = slack + limits.length + 1
  const rhs = width - 1
  const table = Array.from({ length: pieces + limits.length + 1 }, () => new Float64Array(width))
  const goal = table.at(-1)!
  columns.forEach(({ piece, side }, column) => {
    table[piece]![column] = 1
    limits.forEach((limit, r) => {
      if (limit.side === side) table[pieces + r]![column] = limit.gives[piece]!
    })
  })
  for (let piece = 0; piece < pieces; piece++) table[piece]![rhs] = 1
  limits.forEach(({ kind, fixed }, r) => {
    const row = table[pieces + r]!
    row[kind === 'strain' ? strain : broken] = -1
    row[slack + r] = 1
    row[rhs] = -fixed
  })
  goal[strain] = costs.strain
  goal[broken] = costs.broken

  /** The column that each row stands for. */
  const basis = Array.from({ length: pieces + limits.length }, (_, row) => slack + row - pieces)
  const pivot = (at: number, column: number) => {
    basis[at] = column
    const row = table[at]!
    const by = row[column]!
    for (let j = 0; j < width; j++) row[j]! /= by
    for (const other of table) {
      const times = other[column]!
      if (other === row || times === 0) continue
      for (let j = 0; j < width; j++) other[j]! -= times * row[j]!
    }
  }

  columns.forEach(({ piece, side }, column) => {
    if (start[piece] === side) pivot(piece, column)
  })
  for (const [kind, column] of [
    ['strain', strain],
    ['cap', broken],
  ] as const) {
    let worst = -1
    limits.forEach((limit, r) => {
      const value = table[pieces + r]![rhs]!
      if (limit.kind === kind && value < (worst < 0 ? 0 : table[pieces + worst]![rhs]!)) worst = r
    })
    if (worst >= 0) pivot(pieces + worst, column)
  }

  let stalled = 0
  for (let pivots = 0; pivots < MOST_PIVOTS; pivots++) {
    const column = entering(goal, rhs, stalled > 30)
    if (column < 0) break
    const at = leaving(table, column, rhs)
    if (at < 0) break
    stalled = table[at]![rhs]! > TINY ? 0 : stalled + 1
    pivot(at, column)
  }
  const values = new Float64Array(width)
  for (let row = 0; row < basis.length; row++) values[basis[row]!] = table[row]![rhs]!
  const shares = new Float64Array(pieces * allowed.length)
  columns.forEach(({ piece, side }, column) => {
    shares[piece * allowed.length + side] = values[column]!
  })
  return {
    prices: limits.map((_, r) => Math.max(0, goal[slack + r]!)),
    shares,
    strain: values[strain]!,
    broken: values[broken]!,
  }
}

/** The column that lowers the goal the most, or with `first` the first that does; −1: none. */
function entering(goal: Float64Array, rhs: number, first: boolean): number {
  let best = -1
  for (let j = 0; j < rhs; j++) {
    if (goal[j]! >= -TINY) continue
    if (first) return j
    if (best < 0 || goal[j]! < goal[best]!) best = j
  }
  return best
}

/** The row that is exhausted first as the column comes in; −1: none. */
function leaving(table: Float64Array[], column: number, rhs: number): number {
  let best = -1
  let least = Number.POSITIVE_INFINITY
  for (let r = 0; r < table.length - 1; r++) {
    const by = table[r]![column]!
    if (by <= TINY) continue
    const ratio = Math.max(0, table[r]![rhs]!) / by
    if (ratio < least) {
      best = r
      least = ratio
    }
  }
  return best
}
