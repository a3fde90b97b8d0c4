// The plans that the engine is timed on: as large as asked, with all ways in which amounts change.

import { type ItemDocument, type PackDocument, type Plan, parsePlan, type StopDocument } from '../../src/plan'

export interface Size {
  items: number
  stops: number
  nights: number
  /** One set-up each. */
  packs: number
  ration?: 'fixed' | 'energy'
  /** How many of the items are containers, each with one food in it that is another item. */
  containers?: number
}

const uses = ['kept', 'kept', 'kept', 'daily', 'nightly', 'spread'] as const

/** As a file holds it. */
export function documentOf({ items, stops, nights, packs, ration = 'fixed', containers = 0 }: Size) {
  const way = (i: number): StopDocument => ({
    name: `Stop ${i}`,
    water: i % 2 ? 'sure' : 'none',
    nights: i <= nights ? 1 : 0,
    resupply: i % 7 === 0,
    leg: { km: 12, ascentM: 500, descentM: 450 },
  })
  const item = (i: number): ItemDocument => {
    const thing = { id: `${i}`, massKg: 0.05, litres: 0.1 }
    if (i < containers) return { ...thing, build: 'rigid', holdsLitres: 0.1 + (0.3 * i) / containers }
    if (i < 2 * containers) return { ...thing, use: 'daily', inside: `${i - containers}` }
    const build = i % 5 ? 'soft' : 'rigid'
    return { ...thing, build, use: uses[i % uses.length]!, holdsWaterLitres: i % 10 ? 0 : 1 }
  }
  const pack = (i: number): PackDocument => ({
    name: `Pack ${i}`,
    bodyLitres: 30 + ((5 * i) % 100),
    outsideLitres: i % 3 ? 6 : 0,
    setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ratedKg: 10 + (i % 20) }],
  })
  return {
    format: 'pack-reckoner/plan',
    version: 1,
    carrier: { massKg: 75, heightCm: 178, ageYears: 35, sex: 'male' },
    trip: {
      stops: [
        { name: 'Start' },
        ...Array.from({ length: stops - 2 }, (_, i) => way(i + 1)),
        { name: 'End', leg: { km: 9 } },
      ],
      meals: { ration },
    },
    gear: [
      ...Array.from({ length: items }, (_, i) => item(i)),
      { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 },
    ],
    packs: Array.from({ length: packs }, (_, i) => pack(i)),
  }
}

export function planOf(size: Size): Plan {
  const parsed = parsePlan(documentOf(size))
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.plan
}

/** The plan after one edit: another mass for one of its items. */
export function withMass(plan: Plan, item: number, massKg: number): Plan {
  return { ...plan, gear: plan.gear.with(item, { ...plan.gear[item]!, massKg }) }
}
