// Which few of many choices mend every shortfall at the least cost: an exact 0/1 search of our own (branch and bound;
// the bounds are Lagrangian, Held & Karp, Math. Program. 1 (1971) 6–25, from memory). It knows nothing of packs.

import { type Bounds, boundsOf, type Choosing, rowsFor } from './remedies-bounds'

export type { Choice, Choosing, Row } from './remedies-bounds'

export interface Chosen {
  /** Indexes into the choices; null: none mends every row, or none was found within the work allowed. */
  chosen: number[] | null
  /** The answer is proven: the search ended before its work ran out. */
  proven: boolean
}

export interface Search {
  /** True: as few choices as possible, and the cost decides among those. False: the cost alone. */
  fewestFirst: boolean
  /** The last word on a set of choices that mends every row; once refused, the next cheapest is asked about. */
  accepts?: (chosen: number[]) => boolean
  /** A set that is accepted, to do better than; only with the fewest first. */
  known?: number[] | null
  /** Branches looked at, and sets that `accepts` refuses, at most. */
  mostSteps?: number
  mostRefused?: number
}

/**
 * The choices, at most one of each group, for which every row's gives add up to its need, at the least cost.
 * Exact: sets of 0, 1, 2 … choices are searched depth first, and a branch is left only when the best that its
 * remaining choices could give cannot mend some row, or the least they could cost is no less than the best found.
 * Both are bounds that hold for every set below the branch. Costs are whole numbers. Rows that are mended but for
 * rounding count as mended: `accepts` has the last word.
 */
export function leastChoice(problem: Choosing, search: Search): Chosen {
  const { fewestFirst, accepts = () => true, known = null, mostSteps = 120_000, mostRefused = 30 } = search
  const groups = groupsOf(problem)
  const boundsAt = boundsOf(problem, groups)
  const excluded = new Set<string>()
  let best: Answer | null = null
  let steps = 0
  const spent = () => steps > mostSteps || excluded.size > mostRefused

  const most = known ? known.length : groups.length
  for (let size = 0; size <= most && !spent(); size++) {
    const bounds = boundsAt(size)
    // Fewer things are better at any cost.
    if (known && size === most) best = { chosen: known, cost: costOf(known) }
    for (let asking = bounds !== null; bounds && asking && !spent(); ) {
      const better = cheaper(best, bounds)
      asking = better !== null && !accepts(better.chosen)
      if (asking) excluded.add(better!.chosen.join())
      else best = better ?? best
    }
    if (fewestFirst && best) break
  }
  return { chosen: best?.chosen ?? known, proven: !spent() }

  function costOf(chosen: number[]): number {
    return chosen.reduce((sum, i) => sum + problem.choices[i]!.cost, 0)
  }

  /** The cheapest set of the bounds' size that costs less than `than` and is not excluded. */
  function cheaper(than: Answer | null, bounds: Bounds): Answer | null {
    let found: Answer | null = null
    descend(0, { picked: [], cost: 0, needs: bounds.needs })
    return found

    function descend(from: number, so: SoFar) {
      if (++steps > mostSteps) return
      const toPick = bounds.size - so.picked.length
      if (toPick === 0) return finish(so)
      if (groups.length - from < toPick) return
      if (so.needs.some((need, row) => need > bounds.mostGiven(row, from, toPick))) return
      const limit = found ?? than
      if (limit && so.cost + bounds.leastCost(from, toPick, so.needs) > limit.cost - 1 + 1e-6) return
      for (const choice of groups[from]!) descend(from + 1, withChoice(so, choice, bounds))
      descend(from + 1, so)
    }

    function finish({ picked, cost, needs }: SoFar) {
      const limit = found ?? than
      if (needs.some(need => need > 0) || (limit && cost >= limit.cost)) return
      const chosen = [...picked].sort((a, b) => a - b)
      if (!excluded.has(chosen.join())) found = { chosen, cost }
    }
  }

  function withChoice({ picked, cost, needs }: SoFar, choice: number, { gives }: Bounds): SoFar {
    return {
      picked: [...picked, choice],
      cost: cost + problem.choices[choice]!.cost,
      needs: needs.map((need, row) => need - gives[row]![choice]!),
    }
  }
}

interface Answer {
  chosen: number[]
  cost: number
}

interface SoFar {
  picked: number[]
  cost: number
  needs: number[]
}

/** Choices by group, the groups that give most (against what is needed) first. */
function groupsOf({ choices, rows: asked }: Choosing): number[][] {
  const rows = rowsFor(asked, 0)
  const byGroup = new Map<number, number[]>()
  choices.forEach(({ group }, i) => {
    const members = byGroup.get(group)
    if (members) members.push(i)
    else byGroup.set(group, [i])
  })
  const worth = (choice: number) =>
    rows.reduce((sum, { gives, need }) => sum + gives[choice]! / Math.max(Math.abs(need), 1e-9), 0)
  const best = (group: number[]) => Math.max(...group.map(worth))
  return [...byGroup.values()].sort((a, b) => best(b) - best(a))
}
