// The sharing out of a party against every choice there is, on random parties.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PartyDocument } from '../../src/plan'
import { naive } from './naive'
import { bestOfAll, type Judge } from './party-naive'
import { parties, partyReckoned } from './party-plans'
import { type Kind, planOf } from './plans'
import { reckoned } from './small-plans'

const byEngine: Judge = document => {
  const { need, packs } = reckoned(planOf(document))
  return { peakKg: need.peakLoadFullWaterKg, setup: packs[0] ?? null }
}
const byThePage: Judge = document => {
  const page = naive(planOf(document))
  if (page === 'unsettled') throw new Error('unsettled')
  return { peakKg: page.need.peakLoadFullWaterKg, setup: page.packs[0] ?? null }
}

function compare(document: PartyDocument, judge: Judge) {
  const { people, split } = partyReckoned(document)
  const best = bestOfAll(document, judge)
  expect({
    carries: people.map(({ carries }) => carries),
    youngOver: split.youngOver,
    fails: split.fails,
    moved: split.moved,
    proven: split.proven,
  }).toEqual({
    carries: best.carries,
    youngOver: best.youngOver,
    fails: best.fails,
    moved: best.moved,
    proven: true,
  })
  people.forEach(({ strain }, p) => {
    expect(strain).toBeCloseTo(best.strains[p]!, 9)
  })
  expect(split.worstStrain).toBe(Math.max(...people.map(({ strain }) => strain)))
  expect(split.boundStrain).toBeLessThanOrEqual(split.worstStrain + 1e-9)
}

const runs = (usual: number) => Number(process.env.PARTIES ?? usual)
const fixed: Kind = { ration: 'fixed', litresPerHour: 'number' }
const packed = { ...fixed, packed: true }
const heated: Kind = { ration: 'fixed', litresPerHour: 'from-heat' }

/** A plan of one hiker has no word for another share of what heat asks for. */
const drinksAll = (document: PartyDocument): PartyDocument => ({
  ...document,
  people: document.people.map(({ waterShare: _, ...person }) => person),
})

describe('the sharing out and every choice there is, each reckoned in full', () => {
  it.each([
    { people: 2, movable: 7, kind: fixed, judge: byEngine, times: 70 },
    { people: 3, movable: 5, kind: fixed, judge: byEngine, times: 70 },
    { people: 3, movable: 4, kind: packed, judge: byEngine, times: 40 },
    { people: 3, movable: 4, kind: heated, judge: byEngine, times: 20 },
    { people: 4, movable: 3, kind: fixed, judge: byThePage, times: 30 },
  ])(
    'agree: $people people, at most $movable pieces, $kind',
    { timeout: 600_000 },
    ({ kind, judge, times, ...size }) => {
      const drawn = kind === heated ? parties(kind, size).map(drinksAll) : parties(kind, size)
      const asserted = { numRuns: runs(times), endOnFailure: true }
      fc.assert(
        fc.property(drawn, document => compare(document, judge)),
        asserted,
      )
    },
  )
})

describe('the random parties', () => {
  it('fail in every way and move things often enough to matter', () => {
    const splits = fc
      .sample(parties(fixed, { people: 3, movable: 5 }), { numRuns: 120, seed: 3 })
      .map(document => partyReckoned(document).split)
    const often = (holds: (split: (typeof splits)[number]) => boolean) =>
      expect(splits.filter(holds).length).toBeGreaterThan(10)
    often(({ youngOver }) => youngOver > 0)
    often(({ fails }) => fails > 0)
    often(({ fails, youngOver }) => fails === 0 && youngOver === 0)
    often(({ moved }) => moved > 0)
  })
})
