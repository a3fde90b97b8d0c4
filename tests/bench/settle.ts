// How long one keystroke takes in a trip with very many items: settle, then reckon, and settle where things are missing.
//   npx tsx tests/bench/settle.ts

import { type Draft, emptyDraft, quickTrip, setField, settle } from '../../src/plan'
import { reckon } from '../../src/reckon'

let ids = 0
const newId = () => `n${++ids}`
const uses = ['kept', 'kept', 'kept', 'daily', 'nightly', 'spread'] as const

function draftOf(items: number, gaps: boolean): Draft {
  const gear = Array.from({ length: items }, (_, i) => ({
    id: newId(),
    name: `Thing ${i}`,
    group: `Group ${i % 12}`,
    massKg: 0.05 + (i % 7) / 100,
    ...(gaps && i % 2 ? {} : { litres: 0.1 }),
    use: uses[i % uses.length]!,
    kcalPerKg: 4300,
  }))
  const setups = [{ id: newId(), name: 'as sold', massKg: 1.4, frame: 'framed' as const, ratedKg: 15 }]
  const packs = Array.from({ length: 10 }, (_, i) => ({
    id: newId(),
    name: `Pack ${i}`,
    bodyLitres: 30 + 5 * i,
    setups,
  }))
  return { ...quickTrip(emptyDraft(), { days: 5 }, newId), carrier: { massKg: 70 }, gear, packs }
}

/** Median milliseconds of a run, each on the draft as one more keystroke left it. */
function median(runs: number, draft: Draft, run: (draft: Draft) => void): string {
  let current = draft
  const times = Array.from({ length: runs }, (_, n) => {
    const { id } = current.gear[n % current.gear.length]!
    current = setField(current, `gear/${id}/massKg`, 0.1 + n / 1000)
    const start = performance.now()
    run(current)
    return performance.now() - start
  })
  return times
    .sort((a, b) => a - b)
    [Math.floor(runs / 2)]!.toFixed(1)
    .padStart(10)
}

console.log(
  `${'items'.padEnd(10)}${'settle'.padStart(10)}${'reckon'.padStart(10)}${'with gaps'.padStart(12)}  ms`,
)
for (const items of [100, 1000, 5000, 20_000]) {
  const runs = items > 5000 ? 7 : 15
  const whole = draftOf(items, false)
  const { plan } = settle(whole)
  const settled = median(runs, whole, draft => settle(draft))
  const reckoned = median(runs, whole, () => reckon(plan))
  const gaps = median(Math.min(runs, 5), draftOf(items, true), draft => settle(draft))
  console.log(`${String(items).padEnd(10)}${settled}${reckoned}${gaps.padStart(12)}`)
}
