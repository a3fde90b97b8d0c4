// The litres of the fullest moment once more, by trying: every thing's litres and the packing drawn at chance from a
// seed, as JCGM 101:2008 does, to see what the formula of need.ts leaves out: the bend of the packing model's max(), and
// that of a container that overflows in some trials and not in others. The hiker's packings are left aside: what is
// tried is the model before they narrow it.
// Things of one habit: a Gaussian copula with one common factor a group (see `correlationOfNormals`).

import type { Item, LitresRange, Plan, Settings } from '../plan/types'
import { handSpreadOf } from './calibration'
import { unitsInPlay } from './ledger'
import { fullestOf, type Parts } from './need'
import { normalCdf, SURE_SIGMAS } from './normal'
import { partsOf } from './remedies-parts'
import { meanFilling, type Packing, packingOf, roomFor } from './room'
import { type Draws, drawsFrom } from './simulation-draws'
import { spreadOf } from './spread'
import type { Moment, Need, Reckoning } from './types'
import { correlationIn, LITRES_HALF_WIDTH } from './uncertainty'

export interface SimulationOptions {
  /** How many heaps to try, 2 to 1,000,000. */
  runs: number
  /** The same seed gives the same draws; a whole number of 32 bits. */
  seed: number
  /** Told every thousand heaps how many there are. */
  onTried?: (tried: number) => void
}

const TOLD_EVERY = 1000

export interface Simulation {
  runs: number
  meanLitres: number
  sdLitres: number
  /** How far the mean may lie off by chance alone: its standard error. */
  standardError: number
  /** Litres that so many of 100 heaps stay within. */
  quantiles: { p5: number; p10: number; p50: number; p90: number; p95: number }
  /** What the formula says of the same, without the hiker's packings, and how far the trials lie from it. */
  formula: Pick<Need, 'bodyLitres' | 'sigmaV' | 'bodyLitresSafe'>
  /** Trials less formula, L. Where no term of the model overtakes the other these are sampling error. */
  bendLitres: { mean: number; sd: number; p90: number }
  /** Share of the trials in which the other term of the model ruled than at the stated litres. */
  otherTermShare: number
}

/** A thing with a part in the main body, or that would have one if its container overflowed. */
interface Drawn {
  group: string
  correlation: number
  /** Where its litres are added up: the rigid ones, the soft ones, or a container's contents. */
  at: string
  /** In play as stated, L, and as drawn at a chance from 0 to 1. */
  litres: number
  litresAt: (chance: number) => number
}

const RIGID = 'rigid'
const SOFT = 'soft'
const inside = (id: string) => `inside ${id}`

/** Throws RangeError for a number of runs outside 2 to 1,000,000. `reckoning` must be what `reckon(plan)` gave. */
export function simulate(
  plan: Plan,
  reckoning: Reckoning,
  { runs, seed, onTried }: SimulationOptions,
): Simulation {
  if (!(Number.isInteger(runs) && runs >= 2 && runs <= 1_000_000))
    throw new RangeError(`runs: ${runs} is not a whole number from 2 to 1000000`)
  const fullest = fullestOf(reckoning.moments)
  const moment = reckoning.moments[fullest]!
  const parts = partsOf(plan, reckoning)
  const packing = packingOf(plan.settings, plan.settings.personalFactor)
  const drawn = drawnIn(parts, fullest)
  const groups = [...new Set(drawn.map(it => it.group))]
  const heapOf = heaps(parts, drawn, moment)
  const stated = roomOf(
    heapOf(it => it.litres),
    packing,
  )
  const draws = drawsFrom(seed)

  let others = 0
  const results = Array.from({ length: runs }, (_, tried) => {
    if (tried % TOLD_EVERY === 0) onTried?.(tried)
    const common = new Map(groups.map(group => [group, draws.normal()]))
    const heap = heapOf(({ group, correlation, litresAt }) => {
      const z = Math.sqrt(correlation) * common.get(group)! + Math.sqrt(1 - correlation) * draws.normal()
      return litresAt(normalCdf(z))
    })
    const room = roomOf(heap, packingDrawn(plan.settings, packing, draws))
    if (room.rules !== stated.rules) others += 1
    return room.bodyLitres
  })
  const { share } = spreadOf({ ...parts, plan: { ...plan, packings: [] } }, moment, parts.stocks[fullest]!)
  const sigmaV = share * stated.bodyLitres
  const formula = {
    bodyLitres: stated.bodyLitres,
    sigmaV,
    bodyLitresSafe: stated.bodyLitres + SURE_SIGMAS * sigmaV,
  }
  return summary(results, { formula, otherTermShare: others / runs })
}

/**
 * The hand is normal about the factor. How well gaps fill has the mean that the model takes and the variance of a
 * filling that is anywhere from 0 to 1 as likely: the beta distribution of both, which at a setting of 0.5 is just that.
 * Where the hiker says how sure the factor is, that stands for all of it.
 */
function packingDrawn(settings: Settings, packing: Packing, draws: Draws): Packing {
  const factor = packing.factor * (1 + handSpreadOf(settings) * draws.normal())
  if (settings.personalFactorSpread !== null) return { ...packing, factor }
  return { ...packing, factor, filling: fillingAt(meanFilling(settings.fillEfficiency), draws) }
}

/** Of the beta distribution with this mean, 1/3 to 2/3, and the variance 1/12. */
function fillingAt(mean: number, draws: Draws): number {
  const weight = 12 * mean * (1 - mean) - 1
  return draws.beta(mean * weight, (1 - mean) * weight)
}

interface Heap {
  rigid: number
  soft: number
}

const roomOf = ({ rigid, soft }: Heap, packing: Packing) => roomFor(rigid, soft, packing)

function drawnIn({ plan, gear, stowOf, stocks }: Parts, moment: number): Drawn[] {
  return gear.flatMap((item): Drawn[] => {
    const litres = item.litres * item.count * unitsInPlay(item, stocks[moment]!)
    if (litres === 0 || (item.inside === null && stowOf(item) !== 'main-body')) return []
    const group = item.litresFrom
    const correlation = correlationOfNormals(group, correlationIn(group, plan.settings.habitCorrelation))
    const at = item.inside !== null ? inside(item.inside) : item.build === 'rigid' ? RIGID : SOFT
    return [{ group, correlation, at, litres, litresAt: distributionOf(item, litres) }]
  })
}

/** Adds up a heap from each thing's litres: containers keep what they hold, and water, which is exact, stays. */
function heaps({ ledger }: Parts, drawn: Drawn[], moment: Moment): (litresOf: (it: Drawn) => number) => Heap {
  const rooms = [...ledger.containers].map(([id, { roomLitres }]) => ({ at: inside(id), roomLitres }))
  const added = (litresOf: (it: Drawn) => number): Heap => {
    const sums = new Map<string, number>()
    for (const it of drawn) sums.set(it.at, (sums.get(it.at) ?? 0) + litresOf(it))
    const over = rooms.reduce(
      (sum, { at, roomLitres }) => sum + Math.max(0, (sums.get(at) ?? 0) - roomLitres),
      0,
    )
    return { rigid: sums.get(RIGID) ?? 0, soft: (sums.get(SOFT) ?? 0) + over }
  }
  const waterLitres = Math.max(0, moment.softLitres - added(it => it.litres).soft)
  return litresOf => {
    const { rigid, soft } = added(litresOf)
    return { rigid, soft: soft + waterLitres }
  }
}

/**
 * The correlation that two normals need so that what is made of them is correlated by `r`. For uniform distributions
 * 2 sin(π r / 6), exactly (Pearson's grade correlation, from memory). The triangular ones of a kind are so near to
 * normal that r is taken as it is. Theirs then comes out lower, measured over a million draws: by less than 0.02 where
 * they are skewed alike, by 0.03 at r = 0.5 and 0.07 at r = 1 where they are skewed opposite ways.
 */
function correlationOfNormals(group: string, r: number): number {
  return group === 'kind' ? r : 2 * Math.sin((Math.PI * r) / 6)
}

/** The thing's litres at a chance from 0 to 1, `litres` of it being in play. */
function distributionOf(item: Item, litres: number): (chance: number) => number {
  if (item.litresFrom === 'kind') {
    const inPlay = litres / item.litres
    const range = item.litresRange!
    return chance => inPlay * triangularAt(range, chance)
  }
  const halfWidth = LITRES_HALF_WIDTH[item.litresFrom]
  return chance => litres * (1 + halfWidth * (2 * chance - 1))
}

function triangularAt({ low, typical, high }: LitresRange, chance: number): number {
  const width = high - low
  if (width === 0) return low
  const rising = (typical - low) / width
  return chance < rising
    ? low + Math.sqrt(chance * width * (typical - low))
    : high - Math.sqrt((1 - chance) * width * (high - typical))
}

function summary(
  results: number[],
  { formula, otherTermShare }: Pick<Simulation, 'formula' | 'otherTermShare'>,
): Simulation {
  const runs = results.length
  const meanLitres = results.reduce((sum, litres) => sum + litres, 0) / runs
  const squares = results.reduce((sum, litres) => sum + (litres - meanLitres) ** 2, 0)
  const sdLitres = Math.sqrt(squares / (runs - 1))
  const sorted = Float64Array.from(results).sort()
  const at = (share: number) => {
    const place = share * (runs - 1)
    const below = Math.floor(place)
    const next = sorted[Math.min(below + 1, runs - 1)]!
    return sorted[below]! + (place - below) * (next - sorted[below]!)
  }
  const { bodyLitres, sigmaV, bodyLitresSafe } = formula
  const quantiles = { p5: at(0.05), p10: at(0.1), p50: at(0.5), p90: at(0.9), p95: at(0.95) }
  return {
    runs,
    meanLitres,
    sdLitres,
    standardError: sdLitres / Math.sqrt(runs),
    quantiles,
    formula,
    bendLitres: {
      mean: meanLitres - bodyLitres,
      sd: sdLitres - sigmaV,
      p90: quantiles.p90 - bodyLitresSafe,
    },
    otherTermShare,
  }
}
