// How long a reckoning takes: prints the median and the 95th percentile in milliseconds for five plans.
//   npx tsx tests/bench/reckon.ts

import { type ItemDocument, type PackDocument, type Plan, parsePlan, type StopDocument } from '../../src/plan'
import { reckon } from '../../src/reckon'

interface Size {
  items: number
  stops: number
  packs: number
  nights: number
  ration?: 'fixed' | 'energy'
  /** Share of the items that are containers of food. */
  containers?: number
}

function planOf({ items, stops, packs, nights, ration = 'fixed', containers = 0 }: Size): Plan {
  const way = (i: number): StopDocument => ({
    name: `Stop ${i}`,
    water: i % 2 ? 'sure' : 'none',
    nights: i <= nights ? 1 : 0,
    resupply: i % 7 === 0,
    leg: { km: 12, ascentM: 500, descentM: 450 },
  })
  const boxes = Math.floor(items * containers)
  const uses = ['kept', 'kept', 'kept', 'daily', 'nightly', 'spread'] as const
  const gear = Array.from({ length: items }, (_, i): ItemDocument => {
    const thing = { id: `${i}`, massKg: 0.05, litres: 0.1 }
    if (i < boxes) return { ...thing, build: 'rigid', holdsLitres: 0.1 + i / 1000 }
    if (i < 2 * boxes) return { ...thing, use: 'daily', inside: `${i - boxes}` }
    return { ...thing, use: uses[i % uses.length]!, kcalPerKg: 4300, holdsWaterLitres: i % 10 ? 0 : 1 }
  })
  const parsed = parsePlan({
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
    gear: [...gear, { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 }],
    packs: Array.from(
      { length: packs },
      (_, i): PackDocument => ({
        name: `Pack ${i}`,
        bodyLitres: 30 + 5 * i,
        setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ratedKg: 10 + i }],
      }),
    ),
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.plan
}

function time(name: string, plan: Plan, runs: number) {
  for (let i = 0; i < Math.min(3, runs); i++) reckon(plan)
  const times = Array.from({ length: runs }, () => {
    const start = performance.now()
    const { ok } = reckon(plan)
    if (!ok) throw new Error(`${name}: refused`)
    return performance.now() - start
  }).sort((a, b) => a - b)
  const at = (share: number) => times[Math.min(runs - 1, Math.floor(share * runs))]!.toFixed(2).padStart(9)
  console.log(`${name.padEnd(44)}${at(0.5)}${at(0.95)}`)
}

console.log(`${'plan'.padEnd(44)}${'median'.padStart(9)}${'p95'.padStart(9)}  ms`)
time('40 items, 10 stops, 10 packs', planOf({ items: 40, stops: 10, packs: 10, nights: 4 }), 200)
time('500 items, 60 days, 10 packs', planOf({ items: 500, stops: 61, packs: 10, nights: 59 }), 50)
time('10,000 items, 10 stops, 10 packs', planOf({ items: 10_000, stops: 10, packs: 10, nights: 4 }), 20)
time(
  '30 days, ration by energy, 40 items',
  planOf({ items: 40, stops: 31, packs: 10, nights: 29, ration: 'energy' }),
  50,
)
time(
  '1,000 items, 300 containers, 10 packs',
  planOf({ items: 1000, stops: 10, packs: 10, nights: 4, containers: 0.3 }),
  10,
)
