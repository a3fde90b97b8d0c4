// The packs as the lines of a table: a set-up each, with its answer and all its figures, in the order asked for.

import { type DraftPack, type DraftSetup, type Plan, packName, setupName } from '../../plan'
import type { Answer, Reckoning } from '../../reckon'
import type { Formats } from '../formats'
import { missingOf } from '../missing'
import type { Comparison } from './compare'
import { type JudgedPack, rankOf, type SetupAnswer } from './judged-packs'
import { FIGURE_NAMES, type FigureName, figureOf, type KnownSetup } from './pack-figures'

export interface PackLine {
  key: string
  packId: string
  /** Null: the pack has none. */
  setupId: string | null
  /** Its place in `reckoning.packs`; null where only part of it is known. */
  setup: number | null
  /** With its set-up, where the pack has more than one. */
  name: string
  /** Of that name the end that tells the set-up; empty where there is none. */
  setupName: string
  /** Null: too little is known of it to be judged. */
  answer: Answer | null
  /** Why, as short as a list can say it. */
  short: (formats: Formats) => string
  figures: Readonly<Partial<Record<FigureName, number>>>
  currency: string | null
  isStarred: boolean
  /** Why it is set aside, perhaps in no words; null: it is not. */
  aside: string | null
}

interface Judged {
  plan: Plan
  reckoning: Reckoning
  /** One for each of `reckoning.packs`. */
  comparisons: readonly Comparison[]
  judged: ReadonlyMap<string, JudgedPack>
}

/** A line for every set-up, and one for a pack that has none, in the order of the list. */
export function linesOf(packs: readonly DraftPack[], context: Judged): PackLine[] {
  const { judged, ...known } = context
  const noGear = missingOf(known.plan).gear
  return packs.flatMap((pack, index) => {
    const name = packName(pack, index)
    const its = judged.get(pack.id)?.setups
    if (pack.setups.length === 0) return lineOf(pack, null, { name, setupName: '' }, undefined, typedOf(pack))
    return pack.setups.map((setup, i) => {
      const end = pack.setups.length > 1 ? `, ${setupName(setup, i)}` : ''
      const answer = its?.get(setup.id)
      const figures =
        answer && answer.at !== null ? figuresAt(answer.at, known, noGear) : typedOf(pack, setup)
      return lineOf(pack, setup, { name: name + end, setupName: end }, answer, figures)
    })
  })
}

function figuresAt(
  at: number,
  { plan, reckoning, comparisons }: Omit<Judged, 'judged'>,
  noGear: boolean,
): PackLine['figures'] {
  const judged = reckoning.packs[at]!
  const pack = plan.packs[judged.pack]!
  const known = { pack, setup: pack.setups[judged.index]!, judged, compared: comparisons[at]!, noGear }
  return new Figures(known) as PackLine['figures']
}

/** All figures of a set-up, each worked out when it is asked for: of a thousand packs a chart and a table ask for few. */
class Figures {
  readonly #known: KnownSetup
  constructor(known: KnownSetup) {
    this.#known = known
  }
  static {
    for (const name of FIGURE_NAMES)
      Object.defineProperty(Figures.prototype, name, {
        get(this: Figures) {
          return figureOf(name, this.#known) ?? undefined
        },
      })
  }
}

/** Of what lacks its litres or mass only what was typed is told. */
const typedOf = ({ bodyLitres, price }: DraftPack, setup?: DraftSetup): PackLine['figures'] =>
  Object.fromEntries(
    Object.entries({ body: bodyLitres, price, mass: setup?.massKg, rated: setup?.ratedKg }).filter(
      ([, value]) => value !== undefined && value !== null,
    ),
  )

const lineOf = (
  { id, currency, starred, aside }: DraftPack,
  setup: DraftSetup | null,
  names: Pick<PackLine, 'name' | 'setupName'>,
  judged: SetupAnswer | undefined,
  figures: PackLine['figures'],
): PackLine => ({
  ...names,
  key: setup ? `${id}/${setup.id}` : id,
  packId: id,
  setupId: setup?.id ?? null,
  setup: judged?.at ?? null,
  answer: judged?.answer ?? null,
  short: judged?.short ?? (() => ''),
  figures,
  currency: currency ?? null,
  isStarred: starred === true,
  aside: aside ?? null,
})

export interface LineOrder {
  by: FigureName | 'name' | 'answer'
  isDown: boolean
  /** Whatever the answers are; else those that do stand first. */
  isMixed: boolean
}

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })

/**
 * The lines in order: answers together unless they are to be mixed, those set aside last, what is not known last in
 * its part; equals stay as they are.
 */
export function inLineOrder(lines: readonly PackLine[], { by, isDown, isMixed }: LineOrder): PackLine[] {
  const way = isDown ? -1 : 1
  const ranked = lines.map(line => ({ line, rank: rankOf(line.answer) }))
  const rankWay = by === 'answer' ? way : 1
  const keeps = by === 'answer' || !isMixed
  return ranked
    .sort((a, b) => {
      const aside = Number(a.line.aside !== null) - Number(b.line.aside !== null)
      if (aside !== 0) return aside
      if (keeps && a.rank !== b.rank) return rankWay * (a.rank - b.rank)
      if (by === 'answer') return 0
      if (by === 'name') return way * byName.compare(a.line.name, b.line.name)
      const [x, y] = [a.line.figures[by], b.line.figures[by]]
      if (x === undefined || y === undefined) return Number(x === undefined) - Number(y === undefined)
      return way * (x - y)
    })
    .map(({ line }) => line)
}

/** A part of the chart: from one value to another of each of its figures, in the units they are kept in. */
export type Area = Readonly<Partial<Record<FigureName, readonly [from: number, to: number]>>>

/** Whether all figures of the area are known and within it. */
export const isInArea = ({ figures }: PackLine, area: Area): boolean =>
  (Object.keys(area) as FigureName[]).every(name => {
    const [value, [from, to]] = [figures[name], area[name]!]
    return value !== undefined && value >= from && value <= to
  })
