// An insulated thing under three squeezes: laid in, by hand, strapped.
// The law and its standing are those of equations/compression.ts; its constants are from memory.

import {
  compressionHalfWidth,
  compressionRanges,
  type Fill,
  insulatedLitres,
  type Squeeze,
} from '../../equations'
import type { Limit, LitresRange } from '../../plan'

export type { Fill, Squeeze } from '../../equations'

/** What may be typed, in kg. */
export const insulationLimit: Limit = { min: 0, max: compressionRanges.fillG.max / 1000, unit: 'kg' }

const squeezeNames: readonly { squeeze: Squeeze; label: string }[] = [
  { squeeze: 'laid', label: 'Laid in loosely' },
  { squeeze: 'hand', label: 'Stuffed by hand' },
  { squeeze: 'strap', label: 'Strapped down hard' },
]

export const squeezeStanding = `From a published law of fibres; its constants are our estimate, not checked against a source: good to about ± ${compressionHalfWidth * 100} %. The shell counts at 300 g a litre, our judgement. Fill power plays no part: it tells loft, not packed litres.`

/** Litres with their ends under each squeeze; none where a mass is outside its limit or both are 0. */
export function squeezed(thing: { fill: Fill; fillKg: number; shellKg: number }) {
  const { fill, fillKg, shellKg } = thing
  if (fillKg + shellKg <= 0) return []
  return squeezeNames.flatMap(({ squeeze, label }) => {
    const outcome = insulatedLitres({ fill, fillG: fillKg * 1000, shellG: shellKg * 1000, squeeze })
    const range: LitresRange | null = outcome.ok ? outcome.value : null
    return range ? [{ squeeze, label, range }] : []
  })
}
