// Several people on screen, in words: what is told of a choice that was searched for, of one made by hand, and of people of
// whom too little is known.

import { expect, it } from 'vitest'
import { type PartyPlan, parseAny } from '../../src/plan'
import { reckonAsShared, reckonParty } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { partyTold } from '../../src/report/party'
import { family } from '../engine/family'

const formats = formatsIn('metric')
const planOf = (document: typeof family): PartyPlan => {
  const parsed = parseAny(document)
  if (!parsed.ok || !('people' in parsed.plan)) throw new Error('refused')
  return parsed.plan
}
const plan = planOf(family)
const searched = (of = plan) => {
  const found = reckonParty(of)
  if (!found.ok) throw new Error('refused')
  return { plan: of, party: found.party, withoutMass: [], proof: found.party.split }
}
const byHand = (shared: Record<string, string>) => {
  const found = reckonAsShared(plan, shared)
  if (!found.ok) throw new Error('refused')
  return { plan, party: found.party, withoutMass: [], proof: null }
}
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ')

it('a choice that was searched for is told with its proof and each one’s share', () => {
  const told = partyTold(searched(), formats)
  expect(told.fair[0]).toMatch(/^No fairer share exists/)
  expect(told.people.map(({ load }) => plain(load))).toEqual(
    told.people.map(() => expect.stringMatching(/% of body mass, limit (15|20) %$/)),
  )
  expect(told.young).toEqual([expect.stringMatching(/^Cy stays within the limit/)])
  expect(told.unknown).toEqual([])
})

it('a choice made by hand claims nothing of fairness, nor that no better one was found', () => {
  const told = partyTold(byHand({ tent: 'cy', rope: 'cy', stove: 'cy', food: 'cy' }), formats)
  expect(told.fair).toEqual([])
  expect(plain(told.young[0]!)).toMatch(/^Cy carries too much: .* Share out again\.$/)
})

it('nothing is said of the limit of somebody without a body mass, and a child is warned of', () => {
  const told = partyTold({ ...searched(), withoutMass: ['cy'] }, formats)
  expect(told.young).toEqual([])
  expect(told.people[2]!.load).toMatch(/can’t tell if that is too much$/)
  expect(told.unknown[0]).toMatch(/^Can’t tell yet how much Cy may carry: .* a child may get too much\.$/)
})

it('somebody over the limit besides the one who is strained most is told, with who has room', () => {
  const heavy = family.gear!.map(item => (item.id === 'kit of cy' ? { ...item, massKg: 9 } : item))
  const gear = heavy.map(item => (item.id === 'kit of ada' ? { ...item, massKg: 12 } : item))
  const told = partyTold(searched(planOf({ ...family, gear })), formats)
  expect(told.fair.at(-1)).toBe(
    'Cy is strained most, and that is made as little as can be. Ada is over the limit too while Bo has room: give Bo more by hand.',
  )
})

it('who drinks and owns no bottle is named, and the figures of cautions are not asked of another person', () => {
  const gear = family.gear!.filter(({ id }) => id !== 'bottle of cy')
  const told = partyTold(searched(planOf({ ...family, gear })), formats)
  expect(told.bottles).toMatch(/^No bottle yet for Cy: all the water/)
  for (const caution of [...told.cautions.first, ...told.cautions.others])
    expect(caution).not.toHaveProperty('asks')
})
