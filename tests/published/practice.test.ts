// Two sayings of hikers, held up to the engine as a sanity check.
// Standing of both, and of every figure of the kits: common practice, no source.

import { describe, expect, it } from 'vitest'
import type { ItemDocument, PackDocument, StopDocument } from '../../src/plan'
import { reckonSmall } from '../engine/small-plans'

const leg = { km: 15, ascentM: 500, descentM: 500 }
const night = { water: 'sure', nights: 1, leg } as const
const tripOf = (nights: number): StopDocument[] => [
  { name: 'Start' },
  ...Array.from({ length: nights }, (_, i) => ({ name: `Camp ${i + 1}`, ...night })),
  { name: 'End', leg },
]

const bottles: ItemDocument[] = [
  {
    id: 'bottle',
    massKg: 0.04,
    litres: 1.1,
    count: 2,
    holdsWaterLitres: 1,
    stow: 'outside-pocket',
    build: 'rigid',
  },
]

const pack = (bodyLitres: number, ratedKg: number): PackDocument => ({
  name: `${bodyLitres} L without a frame`,
  bodyLitres,
  setups: [{ name: 'as sold', massKg: 0.5, frame: 'frameless', ratedKg }],
})

describe('ordinary kit for some nights (common practice, no source)', () => {
  const kit: ItemDocument[] = [
    { id: 'shelter', massKg: 0.9, litres: 5 },
    { id: 'bag', massKg: 0.75, litres: 9 },
    { id: 'mat', massKg: 0.45, litres: 2.5 },
    { id: 'clothes', massKg: 1, litres: 5 },
    { id: 'rain', massKg: 0.5, litres: 2.2 },
    { id: 'pot', massKg: 0.3, litres: 1.5, build: 'rigid' },
    { id: 'gas', massKg: 0.38, litres: 0.9, build: 'rigid' },
    { id: 'small', massKg: 0.6, litres: 2.2 },
    { id: 'food', massKg: 0.75, litres: 1.9, use: 'daily' },
    ...bottles,
  ]

  it('outgrows the support of a 50 L frameless pack rated about 9 kg, long before the pack is full', () => {
    // Two litres last from camp to camp on a cool day.
    const water = { litresPerHour: 0.25 }
    const { packs, need } = reckonSmall({ stops: tripOf(1), water, gear: kit, packs: [pack(50, 9)] })
    expect(packs[0]!.verdicts).toContain('outgrows-its-support')
    expect(packs[0]!.suffices).toBe(true)
    expect(need.packedDensity).toBeGreaterThan(0.12)
    expect(need.packedDensity).toBeLessThan(0.45)
  })

  it('does not outgrow the support of a 30 L frameless pack with that rating', () => {
    const light = kit.filter(item => item.id !== 'clothes')
    const { packs } = reckonSmall({ stops: tripOf(1), gear: light, packs: [pack(30, 9)] })
    expect(packs[0]!.verdicts).not.toContain('outgrows-its-support')
  })
})

describe('a pack of about 20 litres (common practice, no source)', () => {
  const withoutCooking: ItemDocument[] = [
    { id: 'tarp', massKg: 0.4, litres: 1.5 },
    { id: 'quilt', massKg: 0.5, litres: 6 },
    { id: 'pad', massKg: 0.3, litres: 1.5 },
    { id: 'jacket', massKg: 0.3, litres: 2.5 },
    { id: 'rain', massKg: 0.3, litres: 1.2 },
    { id: 'small', massKg: 0.4, litres: 1 },
    { id: 'food', massKg: 0.75, litres: 1.9, use: 'daily' },
    ...bottles,
  ]
  const suffices = (gear: ItemDocument[], nights: number) =>
    reckonSmall({ stops: tripOf(nights), gear, packs: [pack(20, 9)] }).packs[0]!.suffices

  it('does for one night without cooking', () => {
    expect(suffices(withoutCooking, 1)).toBe(true)
  })

  it('does not do for four nights, nor for one with a kitchen and warm clothes', () => {
    const kitchen: ItemDocument[] = [
      { id: 'pot', massKg: 0.3, litres: 1.5, build: 'rigid' },
      { id: 'gas', massKg: 0.38, litres: 0.9, build: 'rigid' },
      { id: 'clothes', massKg: 0.9, litres: 4 },
    ]
    expect(suffices(withoutCooking, 4)).toBe(false)
    expect(suffices([...withoutCooking, ...kitchen], 1)).toBe(false)
  })
})
