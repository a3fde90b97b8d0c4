// How long sharing out takes, and how much of it is proven: 2 to 4 people and ten to forty pieces on a week's walk, with
// packs and without, a child among them or not.
// Run with: npx tsx tests/bench/party.ts [parties of each size]

import type { ItemDocument, PartyDocument, StopDocument } from '../../src/plan'
import { isParty, parseAny } from '../../src/plan'
import { reckonParty } from '../../src/reckon'
import { printTable } from './print-table'

/** Numbers that scatter and are the same in every run. */
function scattered(start: number) {
  let state = start
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31
    return state / 2 ** 31
  }
}

function party(people: number, pieces: number, seed: number): PartyDocument {
  const next = scattered(seed)
  for (let i = 0; i < 5; i++) next()
  const stops: StopDocument[] = Array.from({ length: 8 }, (_, i) => ({
    name: `Stop ${i}`,
    ...(i > 0 ? { leg: { km: 8 + 6 * next(), ascentM: 500 * next() } } : {}),
    ...(i > 0 && i < 7 ? { nights: 1, water: next() < 0.4 ? ('none' as const) : ('sure' as const) } : {}),
    ...(i === 4 && next() < 0.3 ? { resupply: true } : {}),
  }))
  const ids = Array.from({ length: people }, (_, i) => `p${i}`)
  const uses = ['kept', 'kept', 'kept', 'kept', 'daily', 'nightly'] as const
  const shared = Array.from({ length: pieces }, (_, i): ItemDocument => {
    const use = uses[Math.floor(next() * uses.length)]!
    const whose = next()
    return {
      id: `thing ${i}`,
      use,
      massKg:
        use === 'daily'
          ? 0.1 + 0.4 * next()
          : use === 'nightly'
            ? 0.03 + 0.1 * next()
            : 0.05 + 2 * next() ** 3,
      litres: use === 'kept' ? 0.2 + 5 * next() ** 2 : 0.5,
      build: next() < 0.3 ? 'rigid' : 'soft',
      ...(whose < 0.4 ? { owner: ids[Math.floor(next() * people)]!, shareable: true } : {}),
    }
  })
  const own = ids.flatMap((owner): ItemDocument[] => [
    { id: `${owner} kit`, owner, massKg: 2 + 2 * next(), litres: 18 },
    { id: `${owner} bottle`, owner, massKg: 0.1, litres: 0.2, holdsWaterLitres: 4 },
  ])
  const hasPacks = next() < 0.7
  const hasChild = next() < 0.4
  return {
    format: 'pack-reckoner/plan',
    version: 1,
    people: ids.map((id, i) => ({
      id,
      massKg: 55 + 30 * next(),
      ...(hasChild && i === people - 1 ? { massKg: 34, ageYears: 10, waterShare: 0.7 } : {}),
      ...(hasPacks ? { pack: { pack: i } } : {}),
    })),
    trip: { stops },
    gear: [...own, ...shared],
    packs: ids.map((id, i) => ({
      name: id,
      bodyLitres: (people > 2 ? 40 : 55) + pieces * 0.3 + 15 * next(),
      outsideLitres: 8,
      ...(i === 1 ? { collarLitres: 8 } : {}),
      setups: [{ name: 'as it is', massKg: 1.2, frame: 'framed', ratedKg: 13 + 8 * next() }],
    })),
  }
}

const SIZES = [10, 12, 25, 40]
const count = Number(process.argv[2] ?? 30)
const rows: string[][] = []
for (const people of [2, 3, 4])
  for (const pieces of SIZES) {
    const times: number[] = []
    const gaps: number[] = []
    for (let seed = 1; seed <= count; seed++) {
      const parsed = parseAny(party(people, pieces, seed))
      if (!parsed.ok || !isParty(parsed.plan)) throw new Error('refused')
      const start = performance.now()
      const reckoned = reckonParty(parsed.plan)
      times.push(performance.now() - start)
      if (!reckoned.ok) throw new Error('unsettled')
      const { proven, worstStrain, boundStrain } = reckoned.party.split
      gaps.push(proven ? 0 : worstStrain / boundStrain - 1)
    }
    times.sort((a, b) => a - b)
    const at = (share: number) => `${times[Math.floor(share * (times.length - 1))]!.toFixed(0)} ms`
    const worstGap = Math.max(...gaps)
    rows.push([
      `${people} people, ${pieces} pieces`,
      at(0.5),
      at(0.9),
      at(1),
      `${gaps.filter(gap => gap === 0).length} of ${count}`,
      worstGap === 0 ? '–' : `${(100 * worstGap).toFixed(3)} %`,
    ])
  }
printTable(['party', 'median', 'nine in ten', 'longest', 'proven', 'widest gap to the bound'], rows)
