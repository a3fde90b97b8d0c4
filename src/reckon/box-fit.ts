// Rigid things against a pack's inside: too long for its height, too wide for the lesser of its width and depth. A box
// has no one width, so it is too long or too wide where no way to hold it goes in without rounding the pack out.

import { fitOf } from '../equations'
import type { Item, Pack } from '../plan/types'

type Sizes = Pick<Item, 'lengthCm' | 'diameterCm' | 'widthCm' | 'depthCm'>
type Inside = Pick<Pack, 'innerHeightCm' | 'innerWidthCm' | 'innerDepthCm' | 'section'>

export type TooLarge = 'too-long' | 'too-wide'

/** What a rigid thing is counted as in a pack, whatever way it might go in; a size that is not known is in nobody's way. */
export function tooLargeIn(pack: Inside, item: Sizes): TooLarge[] {
  const { innerHeightCm, innerWidthCm, innerDepthCm } = pack
  const widthCm = Math.min(innerWidthCm ?? Number.POSITIVE_INFINITY, innerDepthCm ?? Number.POSITIVE_INFINITY)
  const box = boxInTheWay(item, pack)
  const rows: [TooLarge, boolean][] = [
    ['too-long', (item.lengthCm ?? 0) > (innerHeightCm ?? Number.POSITIVE_INFINITY)],
    ['too-wide', (item.diameterCm ?? 0) > widthCm],
  ]
  return rows.flatMap(([code, holds]) => (holds || box === code ? [code] : []))
}

/** A thing with all three sides. */
export const isBox = ({ lengthCm, widthCm, depthCm }: Sizes): boolean =>
  lengthCm !== null && widthCm !== null && depthCm !== null

/** What is in the way of a box; null for what is none, for what goes in, and while a size is not known. */
function boxInTheWay(item: Sizes, pack: Inside): TooLarge | null {
  const { lengthCm, widthCm, depthCm } = item
  const { innerHeightCm, innerWidthCm, innerDepthCm, section } = pack
  if (lengthCm === null || widthCm === null || depthCm === null) return null
  if (innerHeightCm === null || innerWidthCm === null || innerDepthCm === null) return null
  const inside = { section, innerHeightCm, innerWidthCm, innerDepthCm, clearanceCm: 0 }
  const fit = fitOf({ shape: 'box', lengthCm, widthCm, depthCm }, inside)
  // A side of nothing is in nobody's way.
  if (!fit.ok) return null
  switch (fit.value.verdict) {
    case 'upright':
    case 'only-lying':
      return null
    case 'too-long':
      return 'too-long'
    case 'deforms':
    case 'does-not-fit':
      return 'too-wide'
  }
}
