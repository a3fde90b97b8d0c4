// How long the remedies of a set-up take, with ten to forty things that may move or stay, on a week's walk.
// Run with: npx tsx tests/bench/remedies.ts

import type { PlanDocument, StopDocument } from '../../src/plan'
import { parsePlan } from '../../src/plan'
import { reckon, remediesFor } from '../../src/reckon'

/** Numbers that scatter and are the same in every run. */
function scattered(start: number) {
  let state = start
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31
    return state / 2 ** 31
  }
}

function plan(movable: number, seed: number) {
  const next = scattered(seed)
  const stops: StopDocument[] = Array.from({ length: 9 }, (_, i) => ({
    name: `Stop ${i}`,
    ...(i > 0 ? { leg: { km: 8 + 6 * next(), ascentM: 400 * next() } } : {}),
    ...(i > 0 && i < 8 ? { nights: 1, water: i % 2 ? 'none' : 'sure' } : {}),
  }))
  const things = Array.from({ length: movable }, (_, i) => ({
    id: `thing ${i}`,
    massKg: 0.05 + 0.6 * next(),
    litres: 0.1 + 1.5 * next(),
    build: next() < 0.3 ? ('rigid' as const) : ('soft' as const),
    optional: i % 3 !== 1,
    mayRideOutside: i % 3 !== 0,
  }))
  const document: PlanDocument = {
    format: 'pack-reckoner/plan',
    version: 1,
    carrier: { massKg: 75 },
    trip: { stops },
    gear: [
      ...things,
      ...Array.from({ length: 20 }, (_, i) => ({ id: `kept ${i}`, massKg: 0.2, litres: 0.8 })),
      { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily' as const },
      { id: 'water bag', massKg: 0.1, litres: 0.2, holdsWaterLitres: 6 },
    ],
    packs: [],
  }
  const bare = parsePlan(document)
  if (!bare.ok) throw new Error('refused')
  const reckoned = reckon(bare.plan)
  if (!reckoned.ok) throw new Error('unsettled')
  const { need } = reckoned.reckoning
  const bodyLitres = need.bodyLitres - (0.02 + 0.25 * next()) * movable
  const ratedKg = need.peakLoadKg + 1 - (next() < 0.5 ? 0.05 * movable * next() : 0)
  const setups = [{ name: 'it', massKg: 0.9, frame: 'framed' as const, ratedKg }]
  const collar = next() < 0.5 ? { collarLitres: 6 } : {}
  const parsed = parsePlan({
    ...document,
    packs: [{ name: 'P', bodyLitres, outsideLitres: 12, ...collar, setups }],
  })
  if (!parsed.ok) throw new Error('refused')
  return parsed.plan
}

for (const movable of [10, 20, 30, 40]) {
  const times: number[] = []
  let found = 0
  for (let seed = 1; seed <= 60; seed++) {
    const p = plan(movable, seed)
    const reckoned = reckon(p)
    if (!reckoned.ok) continue
    const start = performance.now()
    const remedies = remediesFor(p, reckoned.reckoning, 0)
    times.push(performance.now() - start)
    if (remedies.length) found++
  }
  times.sort((a, b) => a - b)
  const at = (share: number) => `${times[Math.floor(share * (times.length - 1))]!.toFixed(1)} ms`
  console.log(
    `${movable} candidates: median ${at(0.5)}, nine in ten under ${at(0.9)}, longest ${at(1)}; ${found} of ${times.length} could be mended`,
  )
}
