// Of many moments those that can be the worst: one at which there is no more of anything than at another is left out.

/** Places of the lists of amounts that no other's are all at least as large as; of equal ones the first. */
export function undominated(amounts: readonly (readonly number[])[]): number[] {
  const kept: number[] = []
  // By their sums: what comes later in this order dominates nothing before it.
  const total = amounts.map(each => each.reduce((sum, amount) => sum + amount, 0))
  const order = [...amounts.keys()].sort((a, b) => total[b]! - total[a]! || a - b)
  for (const m of order) {
    const own = amounts[m]!
    if (!kept.some(other => amounts[other]!.every((amount, i) => amount >= own[i]!))) kept.push(m)
  }
  return kept.sort((a, b) => a - b)
}
