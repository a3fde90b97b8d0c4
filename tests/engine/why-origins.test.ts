// Where a default comes from, in the words of the screens, agrees with the standing in the register of sources.

import { describe, expect, it } from 'vitest'
import sources from '../../data/sources.json'
import { defaults } from '../../src/plan'
import { explain } from '../../src/report/why'
import { smallPlan } from './small-plans'
import { contextOf } from './why-context'

const { DEFAULT_ORIGINS } = defaults
type Origin = keyof typeof DEFAULT_ORIGINS

/** The entry of the register behind each default. */
const KEYS: Record<Origin, keyof typeof sources> = {
  pace: 'din-33466',
  litresPerHour: 'common-practice',
  campLitres: 'common-practice',
  reserveLitres: 'our-judgement',
  meals: 'our-judgement',
  loadShareLimit: 'common-practice',
  commonShare: 'common-practice',
  framelessCeilingKg: 'frameless-ceiling',
  roomyRatio: 'our-judgement',
  handSpread: 'our-judgement',
  packing: 'our-judgement',
  linerKg: 'common-practice',
  leaves: 'common-practice',
  humidity: 'our-judgement',
  fuel: 'our-judgement',
  packKgForEnergy: 'our-judgement',
  section: 'our-judgement',
}

describe('the origin of a default', () => {
  it.each(Object.entries(KEYS) as [Origin, keyof typeof sources][])('of %s is that of %s', (origin, key) => {
    const { standing, authors } = sources[key]
    const words = DEFAULT_ORIGINS[origin]
    if (standing === 'judgement of ours') expect(words).toMatch(/^our judgement/)
    else if (standing === 'common practice, no source') expect(words).toBe(standing)
    else {
      expect(words).toContain(standing)
      expect(words).toContain(authors)
    }
  })

  it('is known for each of them', () => {
    expect(Object.keys(KEYS).sort()).toEqual(Object.keys(DEFAULT_ORIGINS).sort())
  })

  it('is said of the share at which common practice stops', () => {
    const plan = smallPlan({ gear: [{ id: 'load', massKg: 30, litres: 20 }] })
    const [share] = explain({ kind: 'load-share' }, contextOf(plan))
    const stops = share!.inputs.find(({ label }) => label === 'Common practice stops at')
    expect(stops?.from).toBe('common practice, no source')
  })

  it('is said of a setting that is as it came, and one that was changed is yours', () => {
    const pack = {
      name: 'Light',
      bodyLitres: 40,
      setups: [{ name: 'as it is', massKg: 0.8, frame: 'frameless' }],
    }
    const ceilingIn = (framelessCeilingKg: number) => {
      const plan = smallPlan({ packs: [pack as never], settings: { framelessCeilingKg } })
      const all = explain({ kind: 'set-up', setup: 0 }, contextOf(plan))
      return all.flatMap(each => each.inputs).find(input => input.label === 'Most without a frame')?.from
    }
    expect(ceilingIn(defaults.SETTINGS.framelessCeilingKg)).toBe('common practice, no source')
    expect(ceilingIn(12)).toBe('yours')
  })
})
