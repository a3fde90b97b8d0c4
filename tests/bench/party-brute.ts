// The sharing out of twenty random parties of three people and eight pieces that may move against all 6,561 choices,
// each reckoned in full.
// Run with: npx tsx tests/bench/party-brute.ts [seed]

import fc from 'fast-check'
import type { PartyDocument } from '../../src/plan'
import { reckon, reckonParty } from '../../src/reckon'
import { bestOfAll } from '../engine/party-naive'
import { parties, partyPlanOf } from '../engine/party-plans'
import { planOf } from '../engine/plans'

const PIECES = 8

/** Things of all until as many pieces may move as are asked for: drawn lists are mostly shorter. */
function filledUp(document: PartyDocument): PartyDocument {
  const { gear = [] } = document
  const movable = gear.filter(
    it => it.inside === undefined && (it.shareable || (it.owner ?? it.carriedBy) === undefined),
  )
  const more = Array.from({ length: PIECES - movable.length }, (_, i) => ({
    id: `more ${i}`,
    massKg: 0.1 + ((7919 * (i + 1)) % 97) / 60,
    litres: 0.2 + ((6007 * (i + 1)) % 89) / 30,
  }))
  return { ...document, gear: [...gear, ...more] }
}

const seed = Number(process.argv[2] ?? 1)
const drawn = parties({ ration: 'fixed', litresPerHour: 'number' }, { people: 3, movable: PIECES })
let agree = 0
let [searchMs, bruteMs] = [0, 0]
const all = fc.sample(drawn, { numRuns: 20, seed }).map(filledUp)
for (const document of all) {
  let start = performance.now()
  const reckoned = reckonParty(partyPlanOf(document))
  searchMs += performance.now() - start
  if (!reckoned.ok) throw new Error(reckoned.problem.message)
  const { people, split } = reckoned.party
  start = performance.now()
  const best = bestOfAll(document, alone => {
    const result = reckon(planOf(alone))
    if (!result.ok) throw new Error(result.problem.message)
    const { need, packs } = result.reckoning
    return { peakKg: need.peakLoadFullWaterKg, setup: packs[0] ?? null }
  })
  bruteMs += performance.now() - start
  const isSame =
    split.proven &&
    JSON.stringify(people.map(({ carries }) => carries)) === JSON.stringify(best.carries) &&
    people.every(({ strain }, p) => Math.abs(strain - best.strains[p]!) <= 1e-9)
  if (isSame) agree++
  else console.log(`differs: ${JSON.stringify(document)}`)
}
const count = all.length
const each = (ms: number) => `${(ms / count).toFixed(0)} ms`
const times = `search ${each(searchMs)} each, all choices ${each(bruteMs)} each`
console.log(`${agree} of ${count} parties of 3 people and ${PIECES} pieces agree; ${times}`)
