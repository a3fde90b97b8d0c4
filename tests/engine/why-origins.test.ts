// Where a default comes from, in the words of the screens, agrees with the standing in the register of sources.

import { describe, expect, it } from 'vitest'
import sources from '../../data/sources.json'
import { defaults, FIELDS, type FieldRow } from '../../src/plan'
import { explain } from '../../src/report/why'
import { smallPlan } from './small-plans'
import { contextOf } from './why-context'

const PARTS = Object.entries<Readonly<Record<string, FieldRow>>>(FIELDS)
const ORIGINS = Object.fromEntries(
  PARTS.flatMap(([part, rows]) =>
    Object.entries(rows).flatMap(([name, { origin }]) =>
      origin === undefined ? [] : [[`${part}/${name}`, origin]],
    ),
  ),
)

/** The entry of the register behind each default. */
const KEYS: Record<string, keyof typeof sources> = {
  'pace/flatKmh': 'din-33466',
  'pace/climbMPerH': 'din-33466',
  'pace/descendMPerH': 'din-33466',
  'leg/hours': 'din-33466',
  'water/litresPerHour': 'common-practice',
  'water/campLitres': 'common-practice',
  'water/reserveLitres': 'our-judgement',
  'meals/spareDays': 'our-judgement',
  'carrier/loadShareLimit': 'common-practice',
  'person/loadShareLimit': 'common-practice',
  'settings/framelessCeilingKg': 'frameless-ceiling',
  'settings/roomyRatio': 'our-judgement',
  'settings/handSpread': 'our-judgement',
  'settings/rigidPacking': 'our-judgement',
  'settings/softPacking': 'our-judgement',
  'settings/fillEfficiency': 'our-judgement',
  'settings/linerKg': 'common-practice',
  'item/leaves': 'common-practice',
  'weather/humidity': 'our-judgement',
  'fuel/startC': 'our-judgement',
  'settings/packKgForEnergy': 'our-judgement',
  'settings/brimKgPerLitre': 'our-judgement',
  'pack/section': 'our-judgement',
}

describe('the origin of a default', () => {
  it.each(Object.entries(KEYS))('of %s is that of %s', (field, key) => {
    const { standing, authors } = sources[key]
    const words = ORIGINS[field]
    if (standing === 'judgement of ours') expect(words).toMatch(/^our judgement/)
    else if (standing === 'common practice, no source') expect(words).toBe(standing)
    else {
      expect(words).toContain(standing)
      expect(words).toContain(authors)
    }
  })

  it('is known for each of them', () => {
    expect(Object.keys(KEYS).sort()).toEqual(Object.keys(ORIGINS).sort())
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
      return all.flatMap(each => each.inputs).find(input => input.label === 'My limit without a frame')?.from
    }
    expect(ceilingIn(defaults.SETTINGS.framelessCeilingKg)).toBe('common practice, no source')
    expect(ceilingIn(12)).toBe('yours')
  })
})
