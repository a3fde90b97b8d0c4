// What the main-body litres of a changed list must keep under, so that a set-up fits nine times in ten. How sure the
// litres are depends on the choice, so that the limit is a curve: litres + z σ ≤ capacity. σ is the length of a vector
// whose parts fall as things are taken out, so a plane that touches it lies under it everywhere (the outer
// approximation of Duran and Grossmann, Math. Program. 36 (1986) 307–339, from memory): rows that no choice breaks which
// keeps the limit. The full reckoning has the last word on what they let through.

import type { Item } from '../plan/types'
import { handSpreadOf, modelSpreadOf } from './calibration'
import { unitsInPlay } from './ledger'
import type { Parts } from './need'
import { type Candidate, judgedIn } from './remedies-candidate'
import type { MovableItem } from './remedies-movable'
import { overflowingBy } from './remedies-parts'
import { packingOf, packingTerms, roomFor, roomRange, type Term } from './room'
import { spreadOf } from './spread'
import type { Moment } from './types'
import { BODY_HALF_WIDTH, correlationIn, uniformSigma } from './uncertainty'

/** A linear limit: what every litre and every thing in the main body counts, and what is counted besides. */
export interface Line {
  /** Litres with the collar raised. */
  capacityLitres: number
  perLitre: number
  /** Litres counted for a thing, by id, while it is in the main body. */
  forThing: ReadonlyMap<string, number>
  /** Litres counted besides, once so many things are out; never rises with their number. */
  besides: (size: number) => number
}

/** Litres: so much more is more. */
const ROUNDING = 1e-9

/** z of 0.9, rounded down, so that nothing is left out that fits nine times in ten. */
const SURE_Z = 1.2815

function capacityOf({ plan, reckoning }: Candidate) {
  const { bodyLitres, collarLitres, bodyFrom } = plan.packs[0]!
  const { need } = reckoning
  const litres = bodyLitres + collarLitres
  // What the pockets cannot take rides inside, whatever is chosen.
  const spill = judgedIn({ reckoning }).bodyNeedLitres - need.bodyLitres
  return { litres: litres - spill, sigma: litres * uniformSigma(BODY_HALF_WIDTH[bodyFrom]) }
}

/** The limit for litres that are as sure as those of the candidate: near the curve, and on neither side of it for certain. */
export function lineAsItStands(candidate: Candidate): Line {
  const capacity = capacityOf(candidate)
  const spread = SURE_Z * Math.hypot(candidate.reckoning.need.sigmaV, capacity.sigma)
  return { capacityLitres: capacity.litres, perLitre: 1, forThing: new Map(), besides: () => spread }
}

interface Choice {
  things: MovableItem[]
  /** Those that are out where the line touches the curve. */
  chosen: MovableItem[]
  /** At most so many are taken out. */
  mostOut: number
}

/** A limit outside every other: litres as sure as can be. */
export function surestLine(candidate: Candidate): Line {
  const capacity = capacityOf(candidate)
  const spread = SURE_Z * capacity.sigma
  return { capacityLitres: capacity.litres, perLitre: 1, forThing: new Map(), besides: () => spread }
}

/** The limit that touches the curve where the `chosen` of the things are out, and lies outside it everywhere. */
export function touchingLine(candidate: Candidate, parts: Parts, choice: Choice): Line {
  const capacity = capacityOf(candidate)
  const terms = Object.values(packingTerms(parts.packing))
  const heaps = candidate.reckoning.moments.flatMap((moment, m) =>
    terms.map(term => heapAt({ ...choice, parts, moment, m, term })),
  )
  const touches = heaps
    .filter(heap => !heaps.some(other => staysFuller(other, heap)))
    .sort((a, b) => b.mostLitres - a.mostLitres)
    .map(heap => touchAt(heap, { ...choice, parts, sigmaC: capacity.sigma }))
  // Whichever of them is the fullest after the change, its σ is no less than the least.
  const counted: typeof touches = []
  let line = lineOf(counted)
  for (const touch of touches) {
    if (counted.length > 0 && atMost(line, touch.mostLitres) <= capacity.litres) break
    counted.push(touch)
    line = lineOf(counted)
  }
  return line

  function lineOf(of: typeof touches): Line {
    const least = (figure: (touch: (typeof touches)[number]) => number) => Math.min(...of.map(figure))
    const ids = of[0] ? [...of[0].perThing.keys()] : []
    return {
      capacityLitres: capacity.litres,
      perLitre: 1 + SURE_Z * least(it => it.perLitre),
      forThing: new Map(ids.map(id => [id, SURE_Z * least(it => it.perThing.get(id) ?? 0)])),
      besides: size => SURE_Z * least(it => it.besides(size)),
    }
  }
}

/** Whether a moment counts as the fuller of two whichever things are taken out: of two alike, the earlier does. */
function staysFuller(one: Heap, other: Heap): boolean {
  const least = one.m < other.m ? -1e-12 * one.mostLitres : ROUNDING
  const more = one.mostLitres - other.mostLitres
  if (one === other || more <= least) return false
  let lost = 0
  for (let i = 0; i < one.mayGive.length; i++) {
    lost += Math.max(0, one.mayGive[i]! - other.gives[i]!)
    if (more - lost <= least) return false
  }
  return true
}

/** What the litres of a moment count to while nothing is out: the most they ever do. */
const atMost = ({ perLitre, forThing, besides }: Line, litres: number) =>
  litres * perLitre + [...forThing.values()].reduce((sum, more) => sum + more, 0) + besides(0)

type Heap = ReturnType<typeof heapAt>

interface HeapAsked extends Choice {
  parts: Parts
  moment: Moment
  m: number
  term: Term
}

/** One moment under one term of the packing model: its litres, and what the things take of them. */
function heapAt({ parts, things, moment, m, term }: HeapAsked) {
  const slopeOf = ({ build }: Item) => (build === 'rigid' ? term.perRigidLitre : term.perSoftLitre)
  // What is left in a container that may be emptied spills less, by how much the choice decides.
  const opened = new Set(things.map(({ item }) => item.inside).filter(id => id !== null))
  const overflow = [...opened].reduce((sum, id) => sum + Math.max(0, overflowingBy(parts, m, id)), 0)
  const giveOf = ({ item }: MovableItem, spilled: number) => {
    if (item.inside !== null) return spilled * term.perSoftLitre
    if (item.stow !== 'main-body') return 0
    return item.litres * item.count * unitsInPlay(item, parts.stocks[m]!) * slopeOf(item)
  }
  return {
    moment,
    m,
    term,
    opened,
    overflow,
    mostLitres: moment.rigidLitres * term.perRigidLitre + moment.softLitres * term.perSoftLitre,
    /** Litres that taking out each of the things saves: of one in a container, at most all that spills, at least none. */
    mayGive: things.map(it => giveOf(it, overflow)),
    gives: things.map(it => giveOf(it, 0)),
  }
}

interface TouchAsked extends Choice {
  parts: Parts
  /** Of the capacity, L. */
  sigmaC: number
}

/** The plane that touches the σ of a heap where the chosen are out. */
function touchAt(heap: Heap, { parts, things, chosen, mostOut, sigmaC }: TouchAsked) {
  const { moment, m, term, opened, overflow, mostLitres } = heap
  const { plan } = parts
  const { settings } = plan
  const ofOne = packingOf(settings, 1)
  const now = roomFor(moment.rigidLitres, moment.softLitres, ofOne)
  const gone = new Set(chosen.map(({ item }) => item.id))
  const mayGo = new Set(things.map(({ item }) => item.id))
  const inBody = spreadOf(parts, moment, parts.stocks[m]!)
    .terms.filter(({ item, bodyLitres }) => bodyLitres > 0 && !opened.has(item.inside ?? ''))
    .map(({ item, bodyLitres, group, sigma }) => {
      const isRigid = item.build === 'rigid' && item.inside === null
      const per = isRigid ? 'perRigidLitre' : 'perSoftLitre'
      return { item, litres: bodyLitres / now[per], group, isRigid, sigma: (sigma * term[per]) / now[per] }
    })

  const kept = inBody.filter(({ item }) => !gone.has(item.id))
  const groups = new Map<string, number>()
  for (const { group, sigma } of kept) groups.set(group, (groups.get(group) ?? 0) + sigma)
  /** Of a thing's σ with the vector that is touched, by the rule for figures of one group. */
  const along = ({ item, group, sigma }: (typeof inBody)[number]) => {
    const r = correlationIn(group, settings.habitCorrelation)
    return sigma * ((1 - r) * (gone.has(item.id) ? 0 : sigma) + r * (groups.get(group) ?? 0))
  }
  const measuring = kept.reduce((sum, it) => sum + along(it), 0)

  const out = inBody.filter(({ item }) => gone.has(item.id))
  const touched = {
    rigidLitres: moment.rigidLitres - litresOf(out, true),
    softLitres: moment.softLitres - litresOf(out, false),
  }
  const touchedLitres = touched.rigidLitres * term.perRigidLitre + touched.softLitres * term.perSoftLitre
  const model = modelParts(touched)
  const length = Math.sqrt(measuring + model.fixed + model.perLitre2 * touchedLitres ** 2 + sigmaC ** 2) || 1
  const mayGoNow = inBody.filter(({ item }) => mayGo.has(item.id))
  const most = { rigid: sums(mayGoNow, true), soft: sums(mayGoNow, false) }
  const leastSoft = (size: number) => Math.max(0, moment.softLitres - overflow - most.soft(size))
  // With soft goods to spare the model's doubt is so much a rigid litre, however many soft ones are left.
  const { rigidLitres } = touched
  const isByRigid =
    rigidLitres > 0 &&
    modelParts({ rigidLitres: moment.rigidLitres, softLitres: leastSoft(mostOut) }).fixed >=
      model.fixed * (moment.rigidLitres / rigidLitres) ** 2 * (1 - ROUNDING)
  const perRigid = isByRigid ? model.fixed / rigidLitres / length : 0
  return {
    mostLitres,
    perLitre: (model.perLitre2 * touchedLitres) / length,
    perThing: new Map(
      inBody.map(it => [it.item.id, along(it) / length + (it.isRigid ? it.litres * perRigid : 0)]),
    ),
    besides: (size: number) => {
      const rigid = Math.max(0, moment.rigidLitres - most.rigid(size))
      const least = modelParts({ rigidLitres: rigid, softLitres: leastSoft(size) })
      const fixed = isByRigid ? 0 : Math.sqrt(least.fixed * model.fixed)
      return (fixed + sigmaC ** 2) / length
    },
  }

  /** Variance by the heap alone, which is the packing model's, and for each litre squared, which is the hand's. */
  function modelParts({ rigidLitres, softLitres }: { rigidLitres: number; softLitres: number }) {
    const { low, high } = roomRange(rigidLitres, softLitres, ofOne)
    const open = modelSpreadOf(settings, (parts.packing.factor * (high - low)) / Math.sqrt(12))
    return { fixed: open ** 2, perLitre2: handSpreadOf(settings) ** 2 }
  }
}

interface Litres {
  isRigid: boolean
  litres: number
}

const litresOf = (them: Litres[], rigid: boolean) =>
  them.reduce((sum, { isRigid, litres }) => sum + (isRigid === rigid ? litres : 0), 0)

/** The most litres of so many of them. */
function sums(them: Litres[], rigid: boolean): (count: number) => number {
  const sorted = them.filter(({ isRigid }) => isRigid === rigid).map(({ litres }) => litres)
  const upTo = [0]
  for (const litres of sorted.sort((a, b) => b - a)) upTo.push(upTo.at(-1)! + litres)
  return count => upTo[Math.min(count, upTo.length - 1)]!
}
