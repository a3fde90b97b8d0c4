// Every verdict with its sentence, each found in an invented pack that gets it: the packs are made from the need of the
// help's trip, so that the sentences hold whatever the engine says of it.

import type { ItemDocument, PackDocument, PlanDocument, SetupDocument } from '../../plan'
import type { Formats } from '../formats'
import { TOLD_CODES, type ToldCode } from '../verdict-words'
import { setupInWords, type Verdict } from '../verdicts'
import type { About } from '../why'
import { type Change, type Example, exampleOf } from './example'

export interface VerdictExample extends Verdict {
  /** The plan that it was found in, and the set-up there. */
  of: Example
  setup: number
  /** The figure there whose reason it is. */
  about: About
}

const WEIGHTS: readonly Verdict['weight'][] = ['fails', 'warns', 'leaves-open', 'says']

/** The first of each verdict, what fails first; within a weight in the order in which they are told. */
export function verdictExamples(formats: Formats): VerdictExample[] {
  const found = new Map<ToldCode, VerdictExample>()
  for (const change of CASES) {
    const of = exampleOf(change)
    of.reckoning.packs.forEach((judged, setup) => {
      const { verdicts } = setupInWords(judged, { ...of, formats })
      for (const verdict of verdicts)
        if (!found.has(verdict.code))
          found.set(verdict.code, { ...verdict, of, setup, about: aboutOf(verdict, of, setup) })
    })
  }
  const all = TOLD_CODES.flatMap(code => found.get(code) ?? [])
  return WEIGHTS.flatMap(weight => all.filter(each => each.weight === weight))
}

/** How a thing goes in is a reason of its own; the thing is the one that the case adds, the last. */
const aboutOf = ({ code }: Verdict, { plan, reckoning }: Example, setup: number): About =>
  code === 'fitting'
    ? { kind: 'fit', pack: reckoning.packs[setup]!.pack, item: plan.gear.at(-1)!.id }
    : { kind: 'set-up', setup }

interface Asked {
  likely: number
  safe: number
  load: number
}

const askedBy = ({ reckoning: { need } }: Example): Asked => ({
  likely: need.bodyLitres,
  safe: need.bodyLitresSafe,
  load: need.peakLoadFullWaterKg,
})

/** A framed pack that the trip suits, but for what is said of it. */
const pack = (
  { safe, load }: Asked,
  { setup = {}, ...more }: Partial<Omit<PackDocument, 'setups'>> & { setup?: Partial<SetupDocument> } = {},
): PackDocument => ({
  name: 'Invented pack',
  bodyLitres: 1.1 * safe,
  outsideLitres: 10,
  ...more,
  setups: [{ name: 'as it arrives', massKg: 1, frame: 'framed', ...ratedFor(load, setup), ...setup }],
})

/** A frameless one whose maker says nothing has none. */
const ratedFor = (load: number, { frame }: Partial<SetupDocument>) =>
  frame === 'frameless' ? {} : { ratedKg: 1.5 * load }

const INNER = { innerHeightCm: 60, innerWidthCm: 32, innerDepthCm: 26 }

const packsFor =
  (make: (asked: Asked, document: PlanDocument) => PackDocument[]): Change =>
  document => ({ ...document, packs: make(askedBy(exampleOf()), document) })

const CASES: readonly Change[] = [
  packsFor((asked, { carrier }) => [
    pack(asked, { bodyLitres: 0.8 * asked.likely }),
    pack(asked, { bodyLitres: (asked.likely + asked.safe) / 2 }),
    pack(asked, { bodyLitres: 0.95 * asked.likely, collarLitres: 0.5 * asked.safe }),
    pack(asked, { bodyLitres: 2 * asked.safe }),
    pack(asked, { setup: { ratedKg: 0.9 * asked.load } }),
    pack(asked, { setup: { ratedKg: 1.05 * (asked.load + 1) } }),
    pack(asked, { setup: { frame: 'frameless' } }),
    pack(asked, { outsideLitres: 1 }),
    pack(asked, { ...INNER, innerHeightCm: 22 }),
    pack(asked, { ...INNER, innerDepthCm: 15 }),
    pack(asked, { setup: { massKg: 0.2 * carrier.massKg + 0.2 - asked.load } }),
    pack(asked, { bodyLitres: 1.05 * asked.safe }),
  ]),
  change(
    packsFor(asked => [pack(asked)]),
    document => ({
      ...document,
      settings: { headroomLitres: 20, lightGramsPerLitre: 25 },
    }),
  ),
  change(
    packsFor(asked => [pack(asked, { ...INNER, innerHeightCm: 28.5 })]),
    withGear({
      id: 'board',
      name: 'Map case',
      massKg: 0.3,
      litres: 2,
      build: 'rigid',
      lengthCm: 27,
      widthCm: 29,
      depthCm: 4,
    }),
  ),
  change(
    packsFor(asked => [pack(asked, INNER)]),
    withGear({
      id: 'tube',
      name: 'Map tube',
      massKg: 0.1,
      litres: 6,
      build: 'rigid',
      lengthCm: 55,
      diameterCm: 16,
    }),
  ),
  change(
    packsFor(asked => [pack(asked)]),
    withGear({ id: 'rope', name: 'Rope', massKg: 1, litres: null }),
  ),
  change(
    packsFor(asked => [pack(asked)]),
    withGear({ id: 'rope', name: 'Rope', massKg: null, litres: 3 }),
  ),
  change(
    packsFor(asked => [pack(asked)]),
    withGear({ id: 'rope', name: 'Rope', massKg: null, litres: null }),
  ),
  change(
    packsFor(asked => [pack(asked)]),
    document => ({ ...document, gear: [] }),
  ),
]

/** One change after another. */
function change(...changes: readonly Change[]): Change {
  return document => changes.reduce((before, next) => next(before), document)
}

function withGear(item: ItemDocument): Change {
  return document => ({ ...document, gear: [...(document.gear ?? []), item] })
}
