// The sentences of the cutaway.

import type { Formats } from '../../report'
import { likelyText } from '../../report/confidence'
import { capital } from '../../units'
import type { Amounts, Body } from './cutaway-plan'
import { isolate } from './words'

export type LitreFormat = Pick<Formats, 'system' | 'litres' | 'litresUp'>

export interface CutawayWords {
  brim: string
  in: string
  range: string
  /** What the chosen moment does to the body, as one sentence. */
  now: string
  /** What the trip needs at its fullest. */
  most: string
  /** The whole picture in full sentences. */
  all: string
}

/**
 * `at` is the chosen moment in words ("leaving Larch Spring, day 2"). What the trip needs is told in the whole litres it
 * is headed with, its likely range too; `atLeast`: something is not counted, so there is no range.
 */
export function cutawayWords(
  amounts: Amounts,
  {
    name,
    at,
    known,
    need,
    atLeast,
    format,
  }: { name: string; at: string; known: boolean; need: Body['need']; atLeast: boolean; format: LitreFormat },
): CutawayWords {
  const { litres } = format
  const { brimLitres, inLitres, overBrimLitres, lowLitres, highLitres } = amounts
  const over = overWords(amounts, litres)
  const spread = !atLeast && highLitres > lowLitres
  const between = likelyText(need, format)
  const whole = `${atLeast ? 'at least ' : ''}${format.litresUp(need.bodyLitres)}`
  const fits = over || `${litres(Math.max(0, brimLitres - inLitres))} free`
  const now = known
    ? `${capital(at)}: ${litres(inLitres)} in a body of ${litres(brimLitres)}, ${fits}.`
    : `${capital(at)}: ${litres(inLitres)} in the main body.`
  const most = `The trip needs ${whole} at its fullest${spread ? `, likely ${between}` : ''}.`
  return {
    brim: known ? `brim ${litres(brimLitres)}` : '',
    in: over ? `${litres(overBrimLitres)} over the brim` : `holds ${litres(inLitres)}`,
    range: spread ? `likely need ${between}` : atLeast ? whole : `most ${whole}`,
    now,
    most,
    all: `${isolate(name)}, cut open and seen from the front. ${now} ${most}`,
  }
}

function overWords(
  { overBrimLitres, overCollarLitres, collarLitres }: Amounts,
  litres: (value: number) => string,
) {
  if (!(overBrimLitres > 0)) return ''
  const over = `${litres(overBrimLitres)} over the brim`
  if (!(collarLitres > 0)) return over
  return overCollarLitres > 0
    ? `${over}, ${litres(overCollarLitres)} more than the collar takes`
    : `${over}, inside the collar`
}
