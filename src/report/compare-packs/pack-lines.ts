// The packs as the lines of a table: a set-up each, with its answer and all its figures, in the order asked for.

import type { DraftPack, Plan } from '../../plan'
import type { Answer, Reckoning } from '../../reckon'
import { ANSWERS } from '../answers'
import { missingOf } from '../missing'
import type { Comparison } from './compare'
import { FIGURE_NAMES, type FigureName, PACK_FIGURES } from './pack-figures'

export interface PackLine {
  key: string
  packId: string
  /** Its place in `reckoning.packs`; null where it is not judged. */
  setup: number | null
  /** With its set-up, where the pack has more than one. */
  name: string
  /** Of that name the end that tells the set-up; empty where there is none. */
  setupName: string
  /** Null: too little is known of it to be judged. */
  answer: Answer | null
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
  /** The id of each pack of the plan. */
  packIds: readonly string[]
}

/** A line for every set-up that is judged, and one for each pack of which none is, in the order of the list. */
export function linesOf(
  packs: readonly DraftPack[],
  { plan, reckoning, comparisons, packIds }: Judged,
): PackLine[] {
  const noGear = missingOf(plan).gear
  const byPack = new Map<string, PackLine[]>()
  const own = new Map(packs.map(pack => [pack.id, ownOf(pack)]))
  reckoning.packs.forEach((judged, i) => {
    const pack = plan.packs[judged.pack]!
    const packId = packIds[judged.pack] ?? ''
    const facts = own.get(packId)
    if (!facts) return
    const known = { pack, setup: pack.setups[judged.index]!, judged, compared: comparisons[i]!, noGear }
    const figures: Partial<Record<FigureName, number>> = {}
    for (const name of FIGURE_NAMES) {
      const value = PACK_FIGURES[name].of(known)
      if (value !== null) figures[name] = value
    }
    const line: PackLine = {
      ...facts,
      key: `${packId}/${judged.index}`,
      setup: i,
      ...namesOf(judged, pack.setups.length),
      answer: judged.answer,
      figures,
    }
    const lines = byPack.get(packId)
    if (lines) lines.push(line)
    else byPack.set(packId, [line])
  })
  return packs.flatMap((pack, i) => byPack.get(pack.id) ?? unjudged(pack, i))
}

const namesOf = ({ name, setup }: { name: string; setup: string }, count: number) => {
  const setupName = count > 1 ? `, ${setup}` : ''
  return { name: name + setupName, setupName }
}

const ownOf = ({ id, currency, starred, aside }: DraftPack) => ({
  packId: id,
  currency: currency ?? null,
  isStarred: starred === true,
  aside: aside ?? null,
})

/** Of a pack that lacks its litres or a mass only what was typed is told. */
function unjudged(pack: DraftPack, index: number): PackLine {
  const { bodyLitres, price, setups } = pack
  const [first] = setups
  const typed = {
    body: bodyLitres,
    price,
    ...(setups.length === 1 && { mass: first?.massKg, rated: first?.ratedKg }),
  }
  const figures = Object.fromEntries(Object.entries(typed).filter(([, value]) => value !== undefined))
  return {
    ...ownOf(pack),
    key: pack.id,
    setup: null,
    name: pack.name || `Pack ${index + 1}`,
    setupName: '',
    answer: null,
    figures,
  }
}

export interface LineOrder {
  by: FigureName | 'name' | 'answer'
  isDown: boolean
  /** Whatever the answers are; else those that do stand first. */
  isMixed: boolean
}

/** What does first; what cannot be judged stands before what is known not to do. */
const RANKS: readonly (Answer | null)[] = Object.keys(ANSWERS).toSpliced(-1, 0, null as never) as Answer[]

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })

/**
 * The lines in order: answers together unless they are to be mixed, those set aside last, what is not known last in
 * its part; equals stay as they are.
 */
export function inLineOrder(lines: readonly PackLine[], { by, isDown, isMixed }: LineOrder): PackLine[] {
  const way = isDown ? -1 : 1
  const ranked = lines.map(line => ({ line, rank: RANKS.indexOf(line.answer) }))
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
