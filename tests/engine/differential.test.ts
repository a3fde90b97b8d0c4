// The engine against the naive reckoning of naive.ts on random plans: every number of the output, to 1e-9.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanDocument } from '../../src/plan'
import { type Notice, type Reckoned, type Reckoning, reckon } from '../../src/reckon'
import { differences } from './agree'
import { type Naive, naive } from './naive'
import { documents, type Kind, planOf } from './plans'

const numRuns = (usual: number) => Number(process.env.PLANS ?? usual)

/** The order of verdicts and notices means nothing, and a shortfall of rounding is none. */
const sorted = ({ packs, notices, ...rest }: Reckoning | Naive) => ({
  ...rest,
  packs: packs.map(pack => ({ ...pack, verdicts: [...pack.verdicts].sort() })),
  notices: (notices as Notice[])
    .filter(notice => notice.code !== 'water-short' || notice.litres > 1e-9)
    .sort((a, b) => JSON.stringify(a).localeCompare(JSON.stringify(b))),
})

function compare(document: PlanDocument): Reckoned {
  const plan = planOf(document)
  const engine = reckon(plan)
  const page = naive(plan)
  if (page === 'unsettled') {
    expect(engine.ok, 'the page refuses this plan').toBe(false)
    return engine
  }
  if (!engine.ok) throw new Error(`refused: ${engine.problem.message}`)
  expect(differences(sorted(engine.reckoning), sorted(page))).toEqual([])
  return engine
}

const kinds: (Kind & { runs: number })[] = [
  { ration: 'fixed', litresPerHour: 'number', runs: 150 },
  { ration: 'energy', litresPerHour: 'number', runs: 70 },
  { ration: 'fixed', litresPerHour: 'from-heat', runs: 50 },
  { ration: 'energy', litresPerHour: 'from-heat', runs: 30 },
]

describe('the engine and a reckoning straight from the page', () => {
  it.each(kinds)(
    'agree in every number: ration $ration, litres per hour $litresPerHour',
    { timeout: 600_000 },
    ({ runs, ...kind }) => {
      fc.assert(
        fc.property(documents(kind), document => void compare(document)),
        { numRuns: numRuns(runs) },
      )
    },
  )
})
