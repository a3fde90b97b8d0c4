// Box-shaped rigid things against a pack's inside. A round thing is held to `longestCm` and `widestCm`; a box has no one
// width, so it is too long or too wide where no way to hold it goes in without rounding the pack out.

import { fitOf } from '../equations'
import type { Item, Pack } from '../plan/types'
import { type Parts, rigidInBody } from './need'

type Sizes = Pick<Item, 'lengthCm' | 'widthCm' | 'depthCm'>
type Inside = Pick<Pack, 'innerHeightCm' | 'innerWidthCm' | 'innerDepthCm' | 'section'>

/** The boxes whose place is the main body. */
export const boxesOf = (parts: Parts): Item[] =>
  rigidInBody(parts).filter(item => item.widthCm !== null && item.depthCm !== null)

/** What is in the way of a box; null for what is none, for what goes in, and while a size is not known. */
export function boxInTheWay(item: Sizes, pack: Inside): 'too-long' | 'too-wide' | null {
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
