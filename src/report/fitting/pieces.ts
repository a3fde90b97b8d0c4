// The rigid things of the main body as pieces with a shape: those the engine holds to a pack's inner measures.
// A thing with width and depth is a box, one with a diameter is round; a side of nothing counts as not known.

import type { PackInner, RigidPiece } from '../../equations'
import type { Item, Pack, Plan } from '../../plan'
import { rigidInBody, stowsOf } from '../../reckon'

/** A thing's shape, or the sizes that are missing to know it, in words. */
type Shape = { piece: RigidPiece } | { missing: string[] }

/** The rigid things whose place is the main body, each with at least one size. */
export const sizedThings = (gear: Plan['gear']): Item[] =>
  rigidInBody({ gear, stowOf: stowsOf(gear) }).filter(item =>
    [item.lengthCm, item.diameterCm, item.widthCm, item.depthCm].some(cm => sized(cm) !== null),
  )

/** Below this a size is none. */
const LEAST_CM = 0.1
const sized = (cm: number | null): number | null => (cm !== null && cm >= LEAST_CM ? cm : null)

export function shapeOf(item: Item): Shape {
  const lengthCm = sized(item.lengthCm)
  const diameterCm = sized(item.diameterCm)
  const widthCm = sized(item.widthCm)
  const depthCm = sized(item.depthCm)
  const isBox = widthCm !== null || depthCm !== null
  if (isBox && lengthCm !== null && widthCm !== null && depthCm !== null)
    return { piece: { shape: 'box', lengthCm, widthCm, depthCm } }
  if (!isBox && lengthCm !== null && diameterCm !== null)
    return { piece: { shape: 'cylinder', lengthCm, diameterCm } }
  const asked: [string, number | null][] = isBox
    ? [
        ['length', lengthCm],
        ['width', widthCm],
        ['depth', depthCm],
      ]
    : [
        ['length', lengthCm],
        ['width across', diameterCm],
      ]
  return { missing: asked.flatMap(([name, cm]) => (cm === null ? [name] : [])) }
}

/** The inside of a pack, or the measures that are missing to know it, in words. */
export function insideOf(pack: Pack): { inner: PackInner } | { missing: string[] } {
  const { section, innerHeightCm, innerWidthCm, innerDepthCm } = pack
  if (innerHeightCm !== null && innerWidthCm !== null && innerDepthCm !== null)
    return { inner: { section, innerHeightCm, innerWidthCm, innerDepthCm } }
  const asked: [string, number | null][] = [
    ['height', innerHeightCm],
    ['width', innerWidthCm],
    ['depth', innerDepthCm],
  ]
  return { missing: asked.flatMap(([name, cm]) => (cm === null ? [name] : [])) }
}
