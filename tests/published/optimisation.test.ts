// Known instances of choosing and covering, solved by the searches behind the remedies, the frontier and the cover.
// Each names its source and its standing. What is chosen here is what is left out or moved, as in a pack.

import { describe, expect, it } from 'vitest'
import { leastChoice, leastCover, notBeaten } from '../../src/reckon'

/** The most profit within a capacity: the least profit left behind that frees enough of it. */
function knapsack({
  profits,
  weights,
  capacity,
}: {
  profits: number[]
  weights: number[]
  capacity: number
}) {
  const all = profits.map((_, i) => i)
  const over = weights.reduce((sum, w) => sum + w, 0) - capacity
  const { chosen, proven } = leastChoice(
    { choices: all.map(i => ({ group: i, cost: profits[i]! })), rows: [{ need: over, gives: weights }] },
    { fewestFirst: false },
  )
  const kept = all.filter(i => !chosen!.includes(i))
  const total = (figures: number[]) => kept.reduce((sum, i) => sum + figures[i]!, 0)
  return { proven, kept: kept.map(i => i + 1), profit: total(profits), weight: total(weights) }
}

describe('knapsack instances', () => {
  it('P01 gives items 1, 2, 3, 4, 6 with weight 165 and profit 309', () => {
    // Data: Kreher & Stinson, instance P01 of the Florida State University knapsack set; from memory.
    // The optimum 309: computed from the data.
    const answer = knapsack({
      capacity: 165,
      weights: [23, 31, 29, 44, 53, 38, 63, 85, 89, 82],
      profits: [92, 57, 49, 68, 60, 43, 67, 84, 87, 72],
    })
    expect(answer).toEqual({ proven: true, kept: [1, 2, 3, 4, 6], profit: 309, weight: 165 })
  })

  it('the ten-item example gives 65', () => {
    // Data: third-party copy of the worked example in a solver's documentation, which was not read again here
    // and whose name was not kept. The optimum 65: computed from the data.
    const answer = knapsack({
      capacity: 33,
      weights: [16, 16, 8, 8, 4, 4, 2, 2, 1, 1],
      profits: [32, 32, 15, 15, 6, 6, 1, 1, 1, 1],
    })
    expect(answer).toMatchObject({ proven: true, profit: 65 })
  })
})

describe('moving at least 6 L outside', () => {
  // An instance of ours; the answers: computed by trying every choice.
  const litres = [4.0, 2.8, 13, 1.5, 0.9, 6.5]
  const costs = [3, 5, 2, 4, 6, 9]
  const cheapest = (movable: number[]) => {
    const rows = [{ need: 6, gives: movable.map(i => litres[i]!) }]
    const { chosen } = leastChoice(
      { choices: movable.map(i => ({ group: i, cost: costs[i]! })), rows },
      { fewestFirst: false },
    )
    const moved = chosen!.map(i => movable[i]!)
    return { litres: moved.map(i => litres[i]), cost: moved.reduce((sum, i) => sum + costs[i]!, 0) }
  }

  it('moves the 13 L alone, at cost 2', () => {
    expect(cheapest([0, 1, 2, 3, 4, 5])).toEqual({ litres: [13], cost: 2 })
  })

  it('moves 4.0 L and 2.8 L, at cost 8, where the 13 L cannot move', () => {
    expect(cheapest([0, 1, 3, 4, 5])).toEqual({ litres: [4, 2.8], cost: 8 })
  })
})

describe('covering trips A to F', () => {
  it('takes P1 and P3 for 330, where taking the cheapest for each new trip in turn costs 420', () => {
    // An instance of ours; 330: computed by trying every set.
    const packs = {
      P1: ['ABC', 180],
      P2: ['CD', 120],
      P3: ['DEF', 150],
      P4: ['ADEF', 260],
      P5: ['BC', 90],
    } as const
    const sets = Object.values(packs).map(([trips, price]) => ({
      covers: [...trips].map(trip => trip.charCodeAt(0)),
      cost: [price],
    }))
    const chosen = leastCover(sets)!
    expect(chosen.map(i => Object.keys(packs)[i])).toEqual(['P1', 'P3'])
    expect(chosen.reduce((sum, i) => sum + sets[i]!.cost[0]!, 0)).toBe(330)
    expect(greedyPrice(sets)).toBe(420)
  })
})

/** The next set is the cheapest for each thing it adds: shown only to be dearer. */
function greedyPrice(sets: { covers: number[]; cost: number[] }[]): number {
  const open = new Set(sets.flatMap(set => set.covers))
  let price = 0
  while (open.size) {
    const adds = (set: (typeof sets)[number]) => set.covers.filter(it => open.has(it)).length
    const [best] = sets.filter(adds).sort((a, b) => a.cost[0]! / adds(a) - b.cost[0]! / adds(b))
    for (const it of best!.covers) open.delete(it)
    price += best!.cost[0]!
  }
  return price
}

describe('packs that no other beats in mass and price', () => {
  it('are B, C and E', () => {
    // An instance of ours; the answer: computed by comparing every pair.
    const packs = { A: [1.9, 260], B: [1.1, 380], C: [1.4, 240], D: [1.5, 300], E: [0.9, 450], F: [1.4, 260] }
    const on = notBeaten(Object.values(packs))
    expect(Object.keys(packs).filter((_, i) => on[i])).toEqual(['B', 'C', 'E'])
  })
})
