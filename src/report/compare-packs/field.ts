// What this trip asks of packs, as guides on their chart: the corner of those that are large and strong enough, and the
// line of what a pack weighs when it is full. Its sentence says the same.

import type { Plan } from '../../plan'
import type { Answer, Reckoning } from '../../reckon'
import { counted, countText } from '../../units'
import { ANSWERS } from '../answers'
import type { Formats } from '../formats'
import { leastText, missingOf } from '../missing'
import { momentIndex } from '../places'
import { type FigureName, figureText, PACK_FIGURES } from './pack-figures'
import type { PackLine } from './pack-lines'

export interface Corner {
  /** Where the need begins, and its likely range about it; no end while items lack their litres. */
  litres: number
  lowLitres: number
  safeLitres: number
  loadKg: number
  label: string
}

/** Null where nothing is taken: there is nothing to be enough for. */
export function cornerOf(plan: Plan, { need }: Reckoning, formats: Formats): Corner | null {
  const missing = missingOf(plan)
  if (missing.gear) return null
  const { bodyLitres, bodyLitresSafe, peakLoadFullWaterKg } = need
  const isOpen = missing.litres.length > 0
  const litres = leastText(missing, 'litres', formats.litres(isOpen ? bodyLitres : bodyLitresSafe))
  return {
    litres: bodyLitres,
    lowLitres: isOpen ? bodyLitres : Math.max(0, 2 * bodyLitres - bodyLitresSafe),
    safeLitres: isOpen ? Number.POSITIVE_INFINITY : bodyLitresSafe,
    loadKg: peakLoadFullWaterKg,
    label: `this trip: ${litres}, ${leastText(missing, 'mass', formats.kg(peakLoadFullWaterKg))}`,
  }
}

/** What the contents of a full pack weigh: so much for each litre of main body, and what rides outside it. */
export interface BrimLine {
  kgPerLitre: number
  outsideKg: number
}

/** Null where nothing rides in the main body. Without gear: as heavy as is usual. */
export function brimLineOf(plan: Plan, { need, moments }: Reckoning): BrimLine | null {
  if (missingOf(plan).gear) return { kgPerLitre: plan.settings.brimKgPerLitre, outsideKg: 0 }
  const full = moments[momentIndex(moments, need.bodyAt)]
  if (need.packedDensity === null || !full) return null
  return { kgPerLitre: need.packedDensity, outsideKg: full.kg.total - full.bodyKg }
}

/** "Of 60 packs: 9 do, 6 do with care, 2 set aside …": the chart in a sentence or two; each line is told once. */
export function fieldText(
  lines: readonly PackLine[],
  corner: Corner | null,
  { kind = 'pack', hasAnswers = true } = {},
): string {
  const part = (those: readonly PackLine[], one: string, many = one) =>
    those.length > 0 ? `${countText(those.length)} ${those.length === 1 ? one : many}` : []
  const inUse = lines.filter(({ aside }) => aside === null)
  const answers = (Object.keys(ANSWERS) as Answer[]).flatMap(answer =>
    part(
      inUse.filter(line => line.answer === answer),
      ANSWERS[answer].ofOne,
      ANSWERS[answer].ofMany,
    ),
  )
  const open = part(
    inUse.filter(({ answer }) => answer === null),
    'is not judged',
    'are not judged',
  )
  const counts = [
    ...(hasAnswers ? [...answers, open].flat() : []),
    ...[
      part(
        lines.filter(({ aside }) => aside !== null),
        'set aside',
      ),
    ].flat(),
  ].join(', ')
  const all = counted(lines.length, kind)
  const asked = corner ? ` ${corner.label.replace('this trip:', 'This trip asks for')}.` : ''
  return hasAnswers && counts
    ? `Of ${all}: ${counts}.${asked}`
    : `${[all, counts].filter(Boolean).join(', ')}.${asked}`
}

/** Of those that do, which has the least of a figure, or the most where more is better; empty where none is known. */
export function foremostText(lines: readonly PackLine[], by: FigureName, formats: Formats): string {
  const isMore = PACK_FIGURES[by].isMore === true
  const suitable = lines.filter(
    ({ answer, aside, figures }) => answer === 'does' && aside === null && figures[by] !== undefined,
  )
  const [first, ...rest] = suitable
  if (!first) return ''
  const best = rest.reduce(
    (a, b) => ((isMore ? b.figures[by]! > a.figures[by]! : b.figures[by]! < a.figures[by]!) ? b : a),
    first,
  )
  const text = figureText(by, best.figures[by]!, { formats, currency: best.currency })
  return `Of the suitable packs, ${best.name} has the ${isMore ? 'most' : 'least'}: ${PACK_FIGURES[by].name.toLowerCase()} ${text}.`
}
