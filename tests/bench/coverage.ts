// How often the litres that should be enough in 9 of 10 cases are: 300 random plans, 400 hikers each, two seeds.
//   npx tsx tests/bench/coverage.ts [plans] [worlds]
// Prints shares, judges nothing; tests/engine/coverage.test.ts judges a smaller run.

import { packedListAt, reckon } from '../../src/reckon'
import { coverageOf, type ListOf, ROWS, type Safe } from '../engine/worlds'

const [plans = 300, worlds = 400] = process.argv.slice(2).map(Number)

const safe: Safe = (plan, packings) => {
  const reckoned = reckon({ ...plan, packings })
  if (!reckoned.ok) throw new Error(reckoned.problem.message)
  return reckoned.reckoning.need.bodyLitresSafe
}
const listOf: ListOf = plan => {
  const reckoned = reckon(plan)
  if (!reckoned.ok) throw new Error(reckoned.problem.message)
  return packedListAt(plan, reckoned.reckoning, 0)
}

console.log(`${plans} plans, ${worlds} worlds each: share covered, with its standard error`)
for (const row of ROWS) {
  const shares = [1, 2].map(seed => {
    const { covered, standardError } = coverageOf(row, { plans, worlds, seed }, { safe, listOf })
    return `${covered.toFixed(3)} ± ${standardError.toFixed(3)}`
  })
  console.log(`${row.padEnd(22)}${shares.join('   ')}`)
}
