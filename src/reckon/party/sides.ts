// From people and pieces to the problem of sharing out: what each would carry at the moments that matter, and up to
// where their pack does. Loads and litres are sums over pieces; what is not is asked of the full reckoning.

import type { Item, Pack, PartyPlan } from '../../plan/types'
import { tooLargeIn } from '../box-fit'
import { handSpreadOf } from '../calibration'
import { withFuelMass } from '../energy'
import { ledgerOf, stowsOf } from '../ledger'
import { momentsOf } from '../moments'
import { rigidInBody } from '../need'
import { stockAtMoments, unitsOf } from '../provisions'
import { reckon } from '../reckon'
import { packingOf, packingTerms, type Term } from '../room'
import { type Route, routeOf } from '../route'
import type { Moment, Reckoning } from '../types'
import { BODY_HALF_WIDTH, uniformSigma } from '../uncertainty'
import { contentsLimitKg } from '../verdicts'
import { personPlan } from './person-plan'
import { carriedWith, type Handing } from './pieces'
import { type Asked, type Room, type Row, SAME_STRAIN, type Side } from './problem'
import { undominated } from './undominated'

/** A side, and what its person asks for besides. */
export interface Sharer {
  side: Side
  /** Under 18 years: the most the contents may weigh within the limit of their own; else null. */
  youngKg: number | null
}

const ADULT_FROM_YEARS = 18
/** Between these lies what packings of one's own can make of the factor, if it is not the plan's. */
const FACTOR_FROM_PACKINGS = { least: 0.5, most: 2 } as const

/** What the pieces come to at each moment of the trip, one after the other. */
type AtMoments = (moment: number) => Moment[]

export function sharersOf(party: PartyPlan, handing: Handing): Sharer[] {
  const gear = withFuelMass(party.gear)
  const [first] = party.people.map((_, who) => personPlan(party, who, []))
  const route = routeOf(first!)
  const stocks = stockAtMoments(
    first!,
    route,
    route.days.map(() => 1),
  )
  const packing = packingOf(party.settings, 1)
  const inPieces = handing.pieces.map(({ items }) => items.map(i => gear[i]!))
  const ledgers = inPieces.map(items => ledgerOf(items, stowsOf(items)))
  // Two moments with the same of everything that may move differ in what stays alone.
  const streams = unitsInUse(ledgers)
  const unitsAt = stocks.map(stock => {
    const units = unitsOf(stock)
    return streams.map(supply => units[supply]!)
  })
  const known = new Map<number, Moment[]>()
  const piecesAt: AtMoments = m => {
    const before = known.get(m)
    if (before) return before
    const at: Route = { ...route, moments: [route.moments[m]!] }
    const dry = { litres: 0, softBodyLitres: 0, bodyLitres: 0 }
    const then = ledgers.map(
      ledger => momentsOf(at, ledger, { stocks: [stocks[m]!], water: [dry], packing })[0]!,
    )
    known.set(m, then)
    return then
  }
  const holdWater = inPieces.some(items => items.some(item => item.holdsWaterLitres * item.count > 0))
  return party.people.map((_, who) =>
    sharerOf(party, handing, who, { gear, inPieces, unitsAt, piecesAt, holdWater }),
  )
}

/** Supplies of which any of the pieces has something. */
function unitsInUse(ledgers: ReturnType<typeof ledgerOf>[]): number[] {
  const [first] = ledgers
  return (first?.accounts ?? []).flatMap((_, supply) =>
    ledgers.some(({ accounts, containers }) => {
      const inside = [...containers.values()].some(({ contents }) =>
        contents.some(it => it.supply === supply),
      )
      return inside || Object.values(accounts[supply]!).some(value => value > 0)
    })
      ? [supply]
      : [],
  )
}

interface Pieces {
  gear: Item[]
  inPieces: Item[][]
  unitsAt: number[][]
  piecesAt: AtMoments
  /** Some of the pieces hold water: how it rides is then no sum. */
  holdWater: boolean
}

function sharerOf(party: PartyPlan, handing: Handing, who: number, pieces: Pieces): Sharer {
  const { people, packs, split, settings, trip } = party
  const { massKg, loadShareLimit, ageYears, pack: choice } = people[who]!
  const gearOf = (carried: readonly number[]) => carried.map(i => party.gear[i]!)
  const reckonWith = (carried: readonly number[]): Reckoning => {
    const reckoned = reckon(personPlan(party, who, gearOf(carried)))
    // Only rations by energy fail to settle, and here everybody eats rations of 1.
    if (!reckoned.ok) throw new RangeError(reckoned.problem.message)
    return reckoned.reckoning
  }
  const alone = reckonWith(handing.fixed[who]!)
  const [setup] = alone.packs
  const limitKg = loadShareLimit * massKg
  const divisor = split.by === 'mass' ? 1 : limitKg
  const baseKg = setup && choice ? setup.linerKg + packs[choice.pack]!.setups[choice.setup]!.massKg : 0
  const rowsOf = rowsFrom(alone.moments, pieces)
  const tooLarge = setup?.verdicts.some(code => code === 'too-long' || code === 'too-wide') ?? false
  const bornKg = setup ? contentsLimitKg(setup, alone.need) : null
  const isHeated = trip.water.litresPerHour === 'from-heat' && !(ageYears !== null && ageYears < 14)
  const side: Side = {
    loads: rowsOf(
      moment => moment.kg.total + moment.wantedLitres,
      moment => moment.kg.total,
    ),
    baseKg,
    divisor,
    counts: true,
    capKg: Number.POSITIVE_INFINITY,
    // What is too large of its own leaves room for nothing.
    packKg: tooLarge ? -1 : (bornKg ?? Number.POSITIVE_INFINITY),
    room: setup && choice ? roomOf() : null,
    allowed: pieces.inPieces.map(items => !choice || !isTooLarge(items)),
    isExact: !isHeated,
    ask: asking(),
  }
  const isYoung = ageYears !== null && ageYears < ADULT_FROM_YEARS
  return { side, youngKg: isYoung ? (1 + SAME_STRAIN) * limitKg - baseKg : null }

  function isTooLarge(items: Item[]): boolean {
    const rigid = rigidInBody({ gear: items, stowOf: stowsOf(items) })
    return rigid.some(item => tooLargeIn(packs[choice!.pack]!, item).length > 0)
  }

  function roomOf(): Room {
    const pack = packs[choice!.pack]!
    const hasPackings = personPlan(party, who, []).packings.length > 0
    const { personalFactor, readingSpread } = settings
    const { least, most } = FACTOR_FROM_PACKINGS
    const [low, high] = hasPackings
      ? [Math.min(least, personalFactor), Math.max(most, personalFactor)]
      : [personalFactor, personalFactor]
    const hand = handSpreadOf(settings)
    const leastSpread = hasPackings ? Math.min(hand, readingSpread) : hand
    const rows = Object.values(packingTerms(packingOf(settings, 1))).flatMap(term =>
      rowsOf(
        moment => litresBy(term, moment) - (pieces.holdWater ? term.perSoftLitre * moment.litres.water : 0),
        moment => litresBy(term, moment),
      ),
    )
    return {
      rows,
      pockets: rowsOf(
        moment => moment.outsideLitres,
        moment => moment.outsideLitres,
      ),
      pocketLitres: pack.outsideLitres ?? Number.POSITIVE_INFINITY,
      perPocketLitre: 1 / settings.softPacking,
      surelyLitres: pieces.holdWater ? -1 : pack.bodyLitres / high,
      hardlyLitres: Math.max(pack.bodyLitres, mostWithCollar(pack, leastSpread)) / low,
    }
  }

  function asking(): Side['ask'] {
    const known = new Map<string, Asked>()
    return handed => {
      const carried = carriedWith(handing, who, handed)
      const key = carried.join()
      const before = known.get(key)
      if (before) return before
      const { need, packs: judged } = reckonWith(carried)
      const carriedKg = judged[0]?.carriedKg ?? need.peakLoadFullWaterKg
      const asked = { holds: judged[0]?.suffices ?? true, strain: carriedKg / divisor }
      known.set(key, asked)
      return asked
    }
  }
}

/** Nine times in ten, a hair less. */
const SURE_AT_LEAST = 1.2815

/** The most litres that can fit nine times in ten with the collar raised, when they are unsure by so much at least. */
function mostWithCollar({ bodyLitres, collarLitres, bodyFrom }: Pack, leastSpread: number): number {
  if (collarLitres === 0) return 0
  const whole = bodyLitres + collarLitres
  const ofNeed = 1 - (SURE_AT_LEAST * leastSpread) ** 2
  const ofPack = 1 - (SURE_AT_LEAST * uniformSigma(BODY_HALF_WIDTH[bodyFrom])) ** 2
  // The lesser root of (whole − V)² = z² (spread² V² + σ²), which is where the chance is 0.9.
  return (whole * (1 - Math.sqrt(1 - ofNeed * ofPack))) / ofNeed
}

const litresBy = ({ perRigidLitre, perSoftLitre }: Term, { rigidLitres, softLitres }: Moment): number =>
  perRigidLitre * rigidLitres + perSoftLitre * softLitres

/** Rows of what stays by one figure of a moment and what each piece adds by another, at the moments that matter for it. */
function rowsFrom(alone: Moment[], { unitsAt, piecesAt }: Pieces) {
  return (ofAlone: (moment: Moment) => number, ofPiece: (moment: Moment) => number): Row[] => {
    // What there is of everything tells without a look at the pieces, which may be many.
    const likely = undominated(alone.map((moment, m) => [ofAlone(moment), ...unitsAt[m]!]))
    const rows = likely.map(m => ({
      fixed: ofAlone(alone[m]!),
      each: Float64Array.from(piecesAt(m), ofPiece),
    }))
    return undominated(rows.map(({ fixed, each }) => [fixed, ...each])).map(at => rows[at]!)
  }
}
