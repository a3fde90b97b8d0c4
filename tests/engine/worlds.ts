// Worlds in which "9 in 10" can be counted: random lists, each packed at chance by many hikers whose things, hands and
// gaps differ as the model page says, and how often the litres that should be enough nine times in ten are.

import { type Item, type PastPacking, type Plan, parsePlan } from '../../src/plan'
import { drawsFrom, normalCdf } from '../../src/reckon'
import { packing } from './naive-heap'

type Draws = ReturnType<typeof drawsFrom>

export const ROWS = ['soft', 'rigid', 'full box', 'packed before', 'other things packed'] as const
export type Row = (typeof ROWS)[number]

/** What an engine says of a plan, with these packings of one hiker: the litres that should do nine times in ten. */
export type Safe = (plan: Plan, packings: PastPacking[]) => number

/** What a packing says of its list before it is packed. */
export type ListOf = (plan: Plan) => Pick<PastPacking, 'W' | 'd' | 'things'>

export interface Coverage {
  /** Share of the worlds in which the true litres are at most those that should be enough. */
  covered: number
  /** Its standard error by the plans, as worlds of one plan are not independent of its list. */
  standardError: number
}

const HAND = 0.08
const READING = 0.03
const PACK = { stated: 0.1, measured: 0.05, guess: 0.18, 'test-method': 0.05 } as const
const WIDTH = { filled: 0.03, dimensions: 0.1, stated: 0.15, guess: 0.3 } as const
const SOURCES = ['filled', 'dimensions', 'stated', 'guess', 'kind'] as const
/** Of normals that are to give uniform distributions the correlation 0.5 (Pearson). */
const HALF = 2 * Math.sin(Math.PI / 12)

export function coverageOf(
  row: Row,
  { plans, worlds, seed }: { plans: number; worlds: number; seed: number },
  { safe, listOf }: { safe: Safe; listOf: ListOf },
): Coverage {
  const draws = drawsFrom(seed)
  const shares = Array.from({ length: plans }, () => {
    const plan = randomPlan(row, draws)
    const before = pastOf(row, plan, draws).map(past => ({ plan: past, list: listOf(past) }))
    const without = before.length === 0 ? safe(plan, []) : null
    let within = 0
    for (let world = 0; world < worlds; world++) {
      const hiker = hikerOf(draws)
      const packings = before.map(({ plan: past, list }, k) => packed(past, list, hiker, `pack ${k % 2}`))
      if (trueLitres(plan, hiker) <= (without ?? safe(plan, packings))) within += 1
    }
    return within / worlds
  })
  const covered = shares.reduce((sum, share) => sum + share, 0) / plans
  const squares = shares.reduce((sum, share) => sum + (share - covered) ** 2, 0)
  return { covered, standardError: Math.sqrt(squares / (plans - 1) / plans) }
}

interface Hiker {
  draws: Draws
  hand: number
  /** What stays of how this hiker fills gaps, a normal. */
  gaps: number
  /** Each habit of judging, a normal. */
  habits: Map<string, number>
  /** What each thing is off by, a normal: the same at every packing. */
  things: Map<string, number>
  /** What each pack's litres are off by, from −1 to 1. */
  packs: Map<string, number>
}

const hikerOf = (draws: Draws): Hiker => ({
  draws,
  hand: 1 + HAND * draws.normal(),
  gaps: draws.normal(),
  habits: new Map(),
  things: new Map(),
  packs: new Map(),
})

function known(map: Map<string, number>, key: string, draw: () => number): number {
  const found = map.get(key) ?? draw()
  map.set(key, found)
  return found
}

/** What the list takes when this hiker packs it, once. */
function trueLitres(plan: Plan, hiker: Hiker): number {
  const { draws } = hiker
  const inside = new Map<string, number>()
  const heap = { rigid: 0, soft: 0 }
  for (const item of plan.gear) {
    const litres = trueOf(item, plan.settings.habitCorrelation, hiker)
    if (item.inside !== null) inside.set(item.inside, (inside.get(item.inside) ?? 0) + litres)
    else heap[item.build] += litres
  }
  for (const { id, holdsLitres } of plan.gear)
    if (holdsLitres !== null) heap.soft += Math.max(0, (inside.get(id) ?? 0) - holdsLitres)
  // Half of how gaps fill stays with the hiker, half is this packing's; any filling is as likely.
  const filling = normalCdf(Math.sqrt(HALF) * hiker.gaps + Math.sqrt(1 - HALF) * draws.normal())
  return hiker.hand * packing(plan, heap, { e: filling, F: 1 }).V
}

function trueOf({ id, litres, litresFrom, litresRange }: Item, r: number, hiker: Hiker): number {
  const { draws, habits, things } = hiker
  const ofHabit = ['stated', 'guess', 'kind'].includes(litresFrom)
  const rho = !ofHabit ? 0 : litresFrom === 'kind' ? r : 2 * Math.sin((Math.PI * r) / 6)
  const habit = known(habits, litresFrom, draws.normal)
  const own = known(things, id, draws.normal)
  const chance = normalCdf(Math.sqrt(rho) * habit + Math.sqrt(1 - rho) * own)
  if (litresFrom !== 'kind') return litres * (1 + WIDTH[litresFrom] * (2 * chance - 1))
  const { low, typical, high } = litresRange!
  const width = high - low
  return chance < (typical - low) / width
    ? low + Math.sqrt(chance * width * (typical - low))
    : high - Math.sqrt((1 - chance) * width * (high - typical))
}

/** What the hiker then notes: the pack's litres and how full it was, both a little off. */
function packed(plan: Plan, list: ReturnType<ListOf>, hiker: Hiker, pack: string): PastPacking {
  const { draws } = hiker
  const packFrom = 'stated'
  const packLitres = list.W / 0.9
  const off = known(hiker.packs, pack, () => 2 * draws.uniform() - 1)
  const truly = packLitres * (1 + PACK[packFrom] * off)
  const p = trueLitres(plan, hiker) / truly + READING * draws.normal()
  return { ...list, date: '2026-05-02', p, pack, packLitres, packFrom }
}

/** The lists that were packed before. */
function pastOf(row: Row, plan: Plan, draws: Draws): Plan[] {
  if (row === 'packed before') return Array.from({ length: between(draws, 1, 3) }, () => plan)
  if (row !== 'other things packed') return []
  return Array.from({ length: between(draws, 1, 3) }, (_, k) => {
    const other = randomPlan(row, draws)
    return { ...other, gear: other.gear.map(item => ({ ...item, id: `${item.id} of list ${k}` })) }
  })
}

const between = (draws: Draws, least: number, most: number) =>
  least + Math.floor(draws.uniform() * (most - least + 1))

function randomPlan(row: Row, draws: Draws): Plan {
  const rigidShare = row === 'soft' ? 0 : row === 'rigid' ? 0.7 : 0.3
  const thing = (id: string) => {
    const litres = 0.3 * 20 ** draws.uniform()
    const litresFrom = SOURCES[between(draws, 0, SOURCES.length - 1)]!
    const low = litres * (0.4 + 0.5 * draws.uniform())
    const range = { low, typical: litres, high: litres * (1.1 + 0.9 * draws.uniform()) }
    const how = litresFrom === 'kind' ? { litresFrom, litresRange: range } : { litresFrom, litres }
    return { id, massKg: 0.3, ...how }
  }
  const loose = Array.from({ length: between(draws, 6, 16) }, (_, i) => ({
    ...thing(`thing ${i}`),
    build: draws.uniform() < rigidShare ? 'rigid' : 'soft',
  }))
  const inside = Array.from({ length: row === 'full box' ? between(draws, 2, 8) : 0 }, (_, i) => ({
    ...thing(`inside ${i}`),
    inside: 'box',
  }))
  const litres = inside.reduce(
    (sum, { litres = 0, litresRange: range }) =>
      sum + (range ? (range.low + range.typical + range.high) / 3 : litres),
    0,
  )
  // From a little too small to a tenth of room.
  const holdsLitres = litres * (0.9 + 0.2 * draws.uniform())
  const box = { id: 'box', massKg: 1, litres: holdsLitres * 1.1, litresFrom: 'dimensions', holdsLitres }
  const parsed = parsePlan({
    format: 'pack-reckoner/plan',
    version: 1,
    carrier: { massKg: 70 },
    trip: {
      stops: [{ name: 'Start' }, { name: 'End', leg: { km: 4 } }],
      water: { litresPerHour: 0, campLitres: 0, reserveLitres: 0 },
    },
    gear: [...loose, ...(inside.length > 0 ? [box, ...inside] : [])],
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.plan
}
