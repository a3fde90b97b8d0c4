// Every choice in turn, but for those that cannot do: depth first, piece by piece. A branch is left when a side is over
// its limits, or when the strain it has, or the least it can come to, is over what is asked for.

import type { Prices } from './prices'
import { type Sharing, Sums } from './problem'

export interface Exploring {
  prices: Prices
  /** The pieces in the order in which they are handed out. */
  order: readonly number[]
  /** Of each piece an equal one that is handed out before it; −1: none. The later one goes to no earlier side. */
  twins: readonly number[]
  /** Sides in the order in which they are tried for a piece: `cheapest` for the strain, or as they are listed. */
  sidesBy: 'cheapest' | 'list'
  /** The most that the strain may be; it may fall as choices are found. */
  mostStrain: () => number
  /** A second figure, added up over the pieces by side (`piece × sides + side`), that must stay under its limit. */
  dues?: { of: Float64Array; under: () => number }
  /** Handed each choice that keeps all limits, with its strain; what it returns ends the search if true. */
  found: (carriers: Int32Array, strain: number) => boolean
  /** So many branches are looked at; an asking counts as many. */
  budget: { left: number }
}

const ASKING = 1000
/** Of more pieces nothing is proven: what there is was found by other means. */
const MOST_PIECES = 300

/** True: nothing was left out for want of work, so that what was not found does not exist. */
export function explore(sharing: Sharing, exploring: Exploring): boolean {
  const { sides, pieces } = sharing
  if (pieces > MOST_PIECES) return false
  const { prices, order, twins, sidesBy, mostStrain, dues, found, budget } = exploring
  const width = sides.length
  const sums = sides.map(side => new Sums(side))
  const carriers = new Int32Array(pieces).fill(-1)
  const handed: number[][] = sides.map(() => [])
  const listed = sides.map((_, s) => s)
  const byCost = Array.from({ length: pieces }, (_, i) =>
    sidesBy === 'list'
      ? listed
      : listed.toSorted((a, b) => prices.costs[i * width + a]! - prices.costs[i * width + b]!),
  )
  const dueRest = new Float64Array(pieces + 1)
  if (dues)
    for (let k = pieces - 1; k >= 0; k--) {
      const i = order[k]!
      const least = Math.min(...listed.filter(s => sides[s]!.allowed[i]).map(s => dues.of[i * width + s]!))
      dueRest[k] = dueRest[k + 1]! + least
    }
  let ended = false

  if (!sums.every(sum => sum.keepsWithin(mostStrain()))) return true
  const longest = Math.max(...sums.map(sum => sum.values.length))
  const saved = Array.from({ length: pieces }, () => new Float64Array(longest))
  const whole = step(0, prices.bound, 0)
  return whole || ended

  function step(k: number, bound: number, due: number): boolean {
    if (k === pieces) return settled()
    const piece = order[k]!
    const twin = twins[piece]!
    const first = twin < 0 ? 0 : carriers[twin]!
    let whole = true
    for (const s of byCost[piece]!) {
      const side = sides[s]!
      if (s < first || !side.allowed[piece]) continue
      const then = bound + prices.costs[piece * width + s]! - prices.least[piece]!
      if (then > mostStrain() + 1e-12) continue
      const owed = dues ? due + dues.of[piece * width + s]! : 0
      if (dues && owed + dueRest[k + 1]! >= dues.under()) continue
      if (budget.left-- <= 0) return false
      const sum = sums[s]!
      const { values } = sum
      const before = saved[k]!
      for (let r = 0; r < values.length; r++) before[r] = values[r]!
      sum.add(piece)
      if (sum.keepsWithin(mostStrain())) {
        carriers[piece] = s
        handed[s]!.push(piece)
        whole = step(k + 1, then, owed) && whole
        handed[s]!.pop()
        carriers[piece] = -1
      }
      for (let r = 0; r < values.length; r++) values[r] = before[r]!
      if (ended) return true
      if (budget.left <= 0) return false
    }
    return whole
  }

  /** All is handed out: what the sums cannot say is asked. */
  function settled(): boolean {
    let strain = 0
    for (const [s, sum] of sums.entries()) {
      const { ask, counts, capKg, baseKg, divisor, isExact } = sum.side
      let own = sum.strain
      if (!sum.isClear) {
        budget.left -= ASKING
        const asked = ask(handed[s]!)
        if (!asked.holds) return true
        if (!isExact) own = asked.strain
        if (own * divisor - baseKg > capKg) return true
      }
      if (counts) strain = Math.max(strain, own)
    }
    if (strain > mostStrain()) return true
    ended = found(carriers, strain)
    return true
  }
}
