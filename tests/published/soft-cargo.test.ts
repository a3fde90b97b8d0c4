// The density of soft, hand-packed goods against the bags it was printed for, and the light that it gives on a list.
// Source: nasa-ctb (third-party copy); the limits are our judgement.

import { describe, expect, it } from 'vitest'
import demo from '../../data/demo-plan.json'
import sources from '../../data/sources.json'
import { softCargo } from '../../src/equations'
import { type ItemDocument, parsePlan } from '../../src/plan'
import { cautionsOf, formatsIn } from '../../src/report'
import { noWater, reckoned, smallPlan } from '../engine/small-plans'
import collection from './soft-cargo.values.json'

const model = (gear: ItemDocument[]) => {
  const plan = smallPlan({ gear, water: noWater })
  return cautionsOf(plan, reckoned(plan), formatsIn('metric'))
    .filter(({ about, text }) => about === 'model' && text.startsWith('The soft items'))
    .map(({ text }) => text.replace(/[\u00a0\u202f]/g, ' '))
}
const soft = (massKg: number, litres: number): ItemDocument => ({ id: 'soft', massKg, litres })

describe('soft goods packed by hand', () => {
  it.each(collection.values)('$id weighs $expectedKgPerM3 kg/m³ ($kind, $source)', bag => {
    const [a, b, c] = bag.sidesCm as [number, number, number]
    const kgPerM3 = bag.loadedKg / (a * b * c * 1e-6)
    expect(Math.abs(kgPerM3 - bag.expectedKgPerM3)).toBeLessThanOrEqual(bag.tolerance)
    expect(softCargo.typicalKgPerLitre * 1000).toBe(bag.expectedKgPerM3)
  })

  it('are held to limits around it whose standing is said', () => {
    const { min, max, source } = softCargo.plausibleKgPerLitre
    expect([min, max, source]).toEqual([0.12, 0.45, 'our-judgement'])
    expect(sources[softCargo.source].standing).toBe('third-party copy')
  })
})

describe('the soft things of a plan', () => {
  // Packed, 19 L of soft things take 20 L.
  it('are passed over while they are about as heavy as such things are', () => {
    expect(model([soft(2.4, 19)])).toEqual([])
    expect(model([soft(9, 19)])).toEqual([])
  })

  it('are told as too light or too heavy for their litres, with both figures', () => {
    expect(model([soft(2.39, 19)])).toEqual([
      expect.stringMatching(/0\.12 kg\/L: 2\.4 kg in 20\.0 L.*too many litres/),
    ])
    expect(model([soft(9.1, 19)])).toEqual([expect.stringMatching(/9\.1 kg in 20\.0 L.*too few litres/)])
  })

  it('say nothing while there are few of them, nor of rigid things, of water, or of what rides outside', () => {
    expect(model([soft(9, 9)])).toEqual([])
    expect(model([{ ...soft(40, 19), build: 'rigid' }])).toEqual([])
    expect(model([{ ...soft(40, 19), stow: 'outside-pocket' }])).toEqual([])
    expect(model([soft(5, 19), { id: 'bag', massKg: 0.1, litres: 0, holdsWaterLitres: 20 }])).toEqual([])
  })

  it('of the demo plan are plausible', () => {
    const parsed = parsePlan(demo)
    if (!parsed.ok) throw new Error('the demo plan is refused')
    const texts = cautionsOf(parsed.plan, reckoned(parsed.plan), formatsIn('metric')).map(({ text }) => text)
    expect(texts.filter(text => text.startsWith('The soft items'))).toEqual([])
  })
})
