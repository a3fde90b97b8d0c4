// Which whole gas cartridges to take: cartridges are bought full and their empties stay in the load.
// Size classes: en-417 and retail practice; empty masses and outer litres are from memory and stand as such.

import { firstOutside, found, type Outcome, type Range } from './outcome'

export interface CartridgeClass {
  readonly netG: number
  /** From memory. */
  readonly emptyG: number
  /** From remembered outer dimensions. */
  readonly outerLitres: number
}

/** Largest first. */
export const cartridgeClasses: readonly CartridgeClass[] = [
  { netG: 450, emptyG: 215, outerLitres: 1.43 },
  { netG: 230, emptyG: 150, outerLitres: 0.86 },
  { netG: 100, emptyG: 98, outerLitres: 0.43 },
]

export const cartridgeRanges = {
  needG: { min: 0, max: 5000, unit: 'g', source: 'our-judgement' },
} as const satisfies Record<string, Range>

export interface CartridgeChoice {
  /** How many of each class; classes not taken are left out. */
  pieces: { netG: number; count: number }[]
  netG: number
  emptyG: number
  fullG: number
  outerLitres: number
}

interface Candidate extends Omit<CartridgeChoice, 'pieces'> {
  counts: number[]
  count: number
}

const none: Candidate = { counts: [], count: 0, netG: 0, emptyG: 0, fullG: 0, outerLitres: 0 }

function withMore(start: Candidate, { netG, emptyG, outerLitres }: CartridgeClass, count: number): Candidate {
  return {
    counts: [...start.counts, count],
    count: start.count + count,
    netG: start.netG + count * netG,
    emptyG: start.emptyG + count * emptyG,
    fullG: start.fullG + count * (netG + emptyG),
    outerLitres: start.outerLitres + count * outerLitres,
  }
}

/** One more where the quotient's rounding would leave the last trace uncovered. */
function piecesFor(needG: number, netG: number): number {
  const count = Math.max(0, Math.ceil(needG / netG))
  return count * netG < needG ? count + 1 : count
}

/** Every combination that covers the need and has no spare piece of its last class. */
function covering(needG: number, start: Candidate, classes: readonly CartridgeClass[]): Candidate[] {
  const [first, ...rest] = classes
  if (!first) return [start]
  const enough = piecesFor(needG - start.netG, first.netG)
  if (rest.length === 0) return [withMore(start, first, enough)]
  return Array.from({ length: enough + 1 }, (_, count) => withMore(start, first, count)).flatMap(candidate =>
    covering(needG, candidate, rest),
  )
}

const lighter = (a: Candidate, b: Candidate) => a.fullG - b.fullG || a.count - b.count

/**
 * The lightest whole cartridges that hold at least a need of gas; of equally light ones, the fewest.
 *
 * Source: en-417 (size classes), our-judgement (the choice by full mass). The search is exact.
 * Symbols: needG already contains any margin. Ignores: price, burner fit, part-used cartridges at home.
 *
 * @example
 * cartridgesFor({ needG: 240 }) // { pieces: [{ netG: 230, count: 1 }, { netG: 100, count: 1 }], netG: 330, emptyG: 248, fullG: 578, outerLitres: 1.29 }
 * cartridgesFor({ needG: 0 }) // { pieces: [], netG: 0, emptyG: 0, fullG: 0, outerLitres: 0 }
 */
export function cartridgesFor(need: { needG: number }): Outcome<CartridgeChoice> {
  const refusal = firstOutside(cartridgeRanges, need)
  if (refusal) return refusal
  const best = covering(need.needG, none, cartridgeClasses).reduce((a, b) => (lighter(b, a) < 0 ? b : a))
  const { counts, netG, emptyG, fullG, outerLitres } = best
  const pieces = cartridgeClasses.flatMap((cartridge, index) => {
    const count = counts[index] ?? 0
    return count > 0 ? [{ netG: cartridge.netG, count }] : []
  })
  return found({ pieces, netG, emptyG, fullG, outerLitres })
}
