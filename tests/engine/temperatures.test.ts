// Temperatures in the reader's units, wherever words are made: cautions, reasons, the readable report.

import { describe, expect, it } from 'vitest'
import { textReport } from '../../src/cli/report'
import type { ItemDocument } from '../../src/plan'
import type { Notice } from '../../src/reckon'
import { cautionsOf, formatsIn } from '../../src/report'
import { type About, explain } from '../../src/report/why'
import type { System } from '../../src/units'
import { reckoned, smallPlan } from './small-plans'
import { contextOf } from './why-context'

const gas: ItemDocument = {
  id: 'gas',
  massKg: 0.2,
  litres: 0.5,
  use: 'nightly',
  fuel: { kind: 'gas', boilLitres: 1, meltLitres: 1 },
}
const stops = [
  { name: 'Start' },
  { name: 'Camp', nights: 1, leg: { km: 8, airC: 38 } },
  { name: 'Pass', leg: { km: 8, airC: 27 } },
  { name: 'End', leg: { km: 8 } },
]

const ABOUTS: About[] = [
  { kind: 'leg-water', leg: 0 },
  { kind: 'leg-water', leg: 2 },
  { kind: 'heat', leg: 0 },
  { kind: 'fuel', item: 'gas' },
]

/** All the words that a plan in heat and with fuel makes. */
function wordsIn(system: System, litresPerHour: number | 'from-heat'): string {
  const plan = smallPlan({ stops, gear: [gas], water: { litresPerHour } })
  const reckoning = reckoned(plan)
  const notices: Notice[] = [...reckoning.notices, { code: 'water-cap-hour', leg: 0, name: 'Camp' }]
  const told = cautionsOf(plan, { ...reckoning, notices }, formatsIn(system)).map(({ text }) => text)
  const reasons = ABOUTS.flatMap(about => explain(about, contextOf(plan, reckoning, system)))
  return [...told, JSON.stringify(reasons), textReport(plan, reckoning, system)].join('\n')
}

describe('a temperature', () => {
  it.each([
    ['us', '°F', '°C'],
    ['metric', '°C', '°F'],
  ] as const)('in the %s system is told in %s and nowhere in %s', (system, own, other) => {
    for (const rate of ['from-heat', 0.5] as const) {
      const words = wordsIn(system, rate)
      expect(words).toContain(own)
      expect(words.match(new RegExp(`.{0,60}${other}`, 'g'))).toBeNull()
      // A bare difference in kelvin is a temperature too.
      expect(words).not.toMatch(/\d\s?K\b/)
    }
  })
})
