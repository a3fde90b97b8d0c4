// Two to four packs side by side: their figures with the best of each row, and what tells them apart, in words.

import type { Draft, DraftPack, Typed } from '../../plan'
import { FIELDS, packName, settleAny, tableWord } from '../../plan'
import { planOfOne, reckon, takenAlong } from '../../reckon'
import { listText } from '../../units'
import { signedText } from '../changes'
import type { Formats } from '../formats'
import { type Missing, missingOf, toldChance } from '../missing'
import { type Comparison, comparisonOf, priceText } from './compare'
import { type FigureName, PACK_FIGURES, toldFigure } from './pack-figures'

export interface BesideRow {
  what: string
  cells: { text: string; isBest: boolean }[]
}

export interface Beside {
  rows: BesideRow[]
  /** A sentence for each but the first: what it is more or less than the first. */
  differences: string[]
  /** Likely litres of the main body that the trip needs; null where nobody can tell. */
  needLitres: number | null
}

/** What is known of one of them: as it is typed, and as the engine judges it on the trip. */
interface Known {
  pack: DraftPack
  comparison: Comparison | null
  fitChance: string | null
}

/** A pack with one of its set-ups alone, by its place in the list of packs, under a name that no other of them has. */
export function packsApart(
  chosen: readonly { pack: DraftPack; setup: string; index: number }[],
): DraftPack[] {
  const names = new Set<string>()
  return chosen.map(({ pack, setup: id, index }) => {
    const setups = pack.setups.filter(setup => setup.id === id)
    const name = packName(pack, index)
    let title = pack.setups.length > 1 && setups[0]?.name ? `${name}, ${setups[0].name}` : name
    while (names.has(title)) title += '′'
    names.add(title)
    return { ...pack, id: `${pack.id}/${id}`, name: title, setups }
  })
}

/** `packs`: each with one set-up, as `packsApart` gives them; `person`: whose load they are judged by, of several. */
export function packsBeside(
  packs: readonly DraftPack[],
  { draft, typed, person = null }: { draft: Draft; typed: Typed; person?: string | null },
  formats: Formats,
): Beside {
  const { plan: settled, packIds, shared } = settleAny({ ...draft, packs: [...packs] }, typed)
  const listed = planOfOne(settled, shared, person)
  const reckoned = reckon(listed)
  const plan = takenAlong(listed)
  const missing = missingOf(plan)
  const comparisons = reckoned.ok ? comparisonOf(plan, reckoned.reckoning) : []
  const known = packs.map((pack): Known => {
    const at = packIds.indexOf(pack.id)
    const setup = reckoned.ok ? reckoned.reckoning.packs.find(judged => judged.pack === at) : undefined
    return {
      pack,
      comparison: comparisons.find(judged => judged.pack === at) ?? null,
      fitChance: setup ? toldChance(setup.fitChance, { missing, answer: setup.answer }) : null,
    }
  })
  const [first, ...others] = known
  return {
    rows: rowsOf(known, missing, formats),
    differences: first ? others.map(other => differenceText(first, other, formats)) : [],
    needLitres: reckoned.ok && !missing.gear ? reckoned.reckoning.need.bodyLitres : null,
  }
}

type Show = (value: number) => string

/** A row for each figure that is known of any of them. */
function rowsOf(all: readonly Known[], missing: Missing, formats: Formats): BesideRow[] {
  const isOneCurrency =
    new Set(all.flatMap(({ pack }) => (hasPrice(pack) ? (pack.currency ?? '') : []))).size <= 1
  const setupOf = ({ pack }: Known) => pack.setups[0]
  const figure = (
    what: string,
    of: (known: Known) => number | null | undefined,
    show: (value: number, known: Known) => string,
    best?: 'most' | 'least',
  ): BesideRow[] => {
    const values = all.map(known => of(known) ?? null)
    const known = values.filter(value => value !== null)
    if (known.length === 0) return []
    const texts = values.map((value, i) => (value === null ? '–' : show(value, all[i]!)))
    const end = best === 'most' ? Math.max(...known) : Math.min(...known)
    const bestText = texts[values.indexOf(end)]
    const tells = best !== undefined && new Set(texts.filter(text => text !== '–')).size > 1
    return [{ what, cells: texts.map(text => ({ text, isBest: tells && text === bestText })) }]
  }
  const words = (what: string, of: (known: Known) => string | null): BesideRow[] => {
    const texts = all.map(of)
    return texts.every(text => text === null)
      ? []
      : [{ what, cells: texts.map(text => ({ text: text ?? '–', isBest: false })) }]
  }
  const row = (name: FigureName, of: (known: Known) => number | null | undefined, isRanked = false) => {
    const { name: what, isMore } = PACK_FIGURES[name]
    const best = isMore ? 'most' : 'least'
    const show = (value: number, { pack }: Known) =>
      toldFigure(name, value, { missing, formats, currency: pack.currency ?? null })
    return figure(what, of, show, isRanked ? best : undefined)
  }
  return [
    ...row('body', ({ pack }) => pack.bodyLitres),
    ...figure('Collar', ({ pack }) => pack.collarLitres, formats.litres),
    ...figure('Pockets', ({ pack }) => pack.outsideLitres, formats.litres),
    ...row('mass', known => setupOf(known)?.massKg, true),
    ...row('price', ({ pack }) => pack.price, isOneCurrency),
    ...row('litre', ({ comparison }) => comparison?.gramsPerLitre, true),
    ...row('rated', known => setupOf(known)?.ratedKg),
    ...row('bears', ({ comparison }) => comparison?.bearsKg, true),
    ...row('spare-kg', ({ comparison }) => comparison?.spareKg, true),
    ...words('Holds this trip’s gear', ({ fitChance }) => fitChance),
    ...words('Frame', known => frameWord(known)),
  ]
}

const hasPrice = ({ price }: DraftPack) => price !== undefined && price !== null

function frameWord({ pack }: Known): string | null {
  const frame = pack.setups[0]?.frame
  return frame ? tableWord(FIELDS.setup.frame, frame) : null
}

/** "Pass 48 is 6.0 L smaller and 240 g lighter than Ridge 55. It can carry 2.0 kg less." */
function differenceText(first: Known, other: Known, formats: Formats): string {
  const differing = (
    of: (known: Known) => number | null | undefined,
    show: Show,
    [more, less]: readonly [string, string],
  ): string[] => {
    const [one, two] = [of(first) ?? null, of(other) ?? null]
    if (one === null || two === null || signedText(two - one, show) === null) return []
    return [`${show(Math.abs(two - one))} ${two > one ? more : less}`]
  }
  const currency = first.pack.currency ?? ''
  const isSameMoney = currency === (other.pack.currency ?? '')
  const [frame, ofFirst] = [frameWord(other), frameWord(first)]
  const is = [
    ...differing(({ pack }) => pack.bodyLitres, formats.litres, ['bigger', 'smaller']),
    ...differing(({ pack }) => pack.setups[0]?.massKg, formats.gear, ['heavier', 'lighter']),
    ...(isSameMoney
      ? differing(
          ({ pack }) => pack.price,
          value => priceText(value, currency),
          ['dearer', 'cheaper'],
        )
      : []),
  ]
  const does = [
    ...differing(({ comparison }) => comparison?.bearsKg, formats.kg, MORE).map(text => `can carry ${text}`),
    ...differing(({ pack }) => pack.outsideLitres, formats.litres, MORE).map(
      text => `has ${text} in pockets`,
    ),
    ...(frame && ofFirst && frame !== ofFirst ? [`is ${frame}`] : []),
  ]
  const [name, than] = [other.pack.name!, first.pack.name!]
  if (is.length + does.length === 0) return `${name}: as ${than} in all that is known.`
  if (is.length === 0) return `${name} ${listText(does)}, against ${than}.`
  return `${name} is ${listText(is)} than ${than}.${does.length > 0 ? ` It ${listText(does)}.` : ''}`
}

const MORE = ['more', 'less'] as const
