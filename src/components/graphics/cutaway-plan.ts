// Where everything in the cutaway goes: one pure function from what is shown and the room there is, to px.

import type { Moment, Need } from '../../reckon'
import { BANDS, type Band, layersOf } from './bands'
import { areaOf, type BodyShape, fillHeight, heapOn, type Level, shapeOf, usualHeight } from './body-shape'
import { wrap } from './fit-text'
import { clamp, px } from './scale'
import { spread } from './spread'
import type { Room } from './use-drawing'

export interface Body {
  /** Null: no pack; the body that this trip needs is drawn instead. */
  bodyLitres: number | null
  collarLitres: number
  innerHeightCm: number | null
  need: Pick<Need, 'bodyLitres' | 'bodyLitresSafe' | 'sigmaV'>
  moment: Moment
  scaleLitres: number
  /** What fills it, bottom to top; by what it is if absent. Together they are the moment's litres. */
  layers?: readonly Layer[]
}

export interface Layer {
  band: Band
  litres: number
}

export interface Amounts {
  brimLitres: number
  collarLitres: number
  inLitres: number
  overBrimLitres: number
  overCollarLitres: number
  lowLitres: number
  highLitres: number
  layers: Moment['litres']
}

/** The 10th and 90th part in a hundred of a normal distribution lie this many sigma from its middle. */
const SURE_SIGMAS = 1.2816

/** The figures that the picture plots, in litres. */
export function amountsOf({ bodyLitres, collarLitres, need, moment }: Body): Amounts {
  const brimLitres = bodyLitres ?? need.bodyLitresSafe
  const collar = bodyLitres === null ? 0 : collarLitres
  return {
    brimLitres,
    collarLitres: collar,
    inLitres: moment.bodyLitres,
    overBrimLitres: Math.max(0, moment.bodyLitres - brimLitres),
    overCollarLitres: Math.max(0, moment.bodyLitres - brimLitres - collar),
    lowLitres: Math.max(0, need.bodyLitres - SURE_SIGMAS * need.sigmaV),
    highLitres: need.bodyLitresSafe,
    layers: layersOf(moment.litres, moment.bodyLitres),
  }
}

/** Bottom to top; what the layers of a moment are by itself. */
const layersIn = ({ layers, moment }: Body): readonly Layer[] =>
  layers ?? layersByBand(layersOf(moment.litres, moment.bodyLitres))

const layersByBand = (shares: Moment['litres']): Layer[] =>
  BANDS.map(({ band }) => ({ band, litres: shares[band] })).filter(({ litres }) => litres > 0)

export interface CutawayPlan {
  widthPx: number
  heightPx: number
  linePx: number
  shape: BodyShape
  /** Area that stands for one litre; the same for all cutaways of one scale in equally wide boxes. */
  pxPerLitre: number
  hasHarness: boolean
  /** Closed outlines: the body, its collar, what is heaped above, and how high the likely need may reach. */
  outlines: { body: string; collar: string; heap: string; reach: string }
  layers: { band: Band; y: number; height: number }[]
  brimY: number
  levelY: number
  range: { top: number; bottom: number }
  left: number
  right: number
  floorY: number
  /** px a cm. */
  scale: number
  labels: {
    kind: 'brim' | 'in' | 'range'
    lines: string[]
    x: number
    y: number
    fromX: number
    fromY: number
  }[]
}

const LEAST_HARNESS_PX = 170

/** Lays the cutaway out; null where there is nothing to draw, neither pack nor need. */
export function planCutaway(
  body: Body,
  words: Record<'brim' | 'in' | 'range', string>,
  { widthPx, emPx, measure, measureBold }: Room,
): CutawayPlan | null {
  const amounts = amountsOf(body)
  const { brimLitres, collarLitres, inLitres, highLitres, lowLitres } = amounts
  if (!(brimLitres > 0)) return null
  const shape = shapeOf({ ...body, bodyLitres: brimLitres, collarLitres })
  const linePx = Math.ceil(emPx * 1.3)
  const column = widthPx >= emPx * 17 ? emPx * 7.5 : 0

  // One scale for all bodies that are shown together: it may depend on nothing that differs between them.
  const largest = Math.max(body.scaleLitres, brimLitres + collarLitres, highLitres)
  const tallCm = usualHeight(largest) * 1.25
  // A small drawing is of the body alone.
  const hasHarness = widthPx >= LEAST_HARNESS_PX
  const beltCm = usualHeight(largest) * (hasHarness ? 0.11 : 0)
  const wideCm = Math.sqrt(areaOf(largest) * 0.75) + 2 * beltCm
  const scale = Math.min(
    clamp(hasHarness ? widthPx : widthPx * 1.6, 170, 340) / tallCm,
    (widthPx - column - 24) / wideCm,
  )

  const topLevel = shape.collar.at(-1) ?? shape.body.at(-1)!
  const heap = heapOn(topLevel, amounts.overCollarLitres)
  const reach = heapOn(topLevel, highLitres - brimLitres - collarLitres)
  const topCm = Math.max(tallCm, ...[topLevel, ...heap, ...reach].map(level => level.y))
  const spare = linePx
  const floorY = topCm * scale + spare
  const middle = (widthPx - column) / 2
  const at = (cm: number) => floorY - cm * scale
  const outline = (levels: readonly Level[]) => outlineOf(levels, { middle, floorY, scale })

  let filled = 0
  const layers = layersIn(body).map(({ band, litres }) => {
    const from = fillHeight(shape, filled)
    filled += litres
    const to = fillHeight(shape, filled)
    return { band, y: at(to), height: (to - from) * scale }
  })
  const range = { top: at(fillHeight(shape, highLitres)), bottom: at(fillHeight(shape, lowLitres)) }
  const levelY = at(fillHeight(shape, inLitres))
  const brimY = at(shape.heightCm)
  const right = middle + (shape.widthCm / 2) * scale

  const labelX = Math.min(widthPx - column + 14, right + emPx * 3)
  const wanted = (['brim', 'range', 'in'] as const)
    .filter(kind => column > 0 && words[kind] !== '')
    .map(kind => {
      const lines = wrap(words[kind], column - 14, kind === 'in' ? measureBold : measure)
      const fromY =
        kind === 'brim'
          ? brimY
          : kind === 'in'
            ? at(fillHeight(shape, inLitres))
            : (range.top + range.bottom) / 2
      return { kind, lines, fromY, at: fromY, size: lines.length * linePx + 4 }
    })
    .sort((a, b) => a.fromY - b.fromY)
  const middles = spread(wanted, floorY)
  return {
    widthPx,
    heightPx: Math.ceil(floorY + 8),
    linePx,
    shape,
    pxPerLitre: areaOf(1) * scale ** 2,
    hasHarness,
    outlines: {
      body: outline(shape.body),
      collar: outline(shape.collar),
      heap: outline(heap),
      reach: outline(reach),
    },
    layers,
    brimY,
    levelY,
    range,
    left: middle * 2 - right,
    right,
    floorY,
    scale,
    labels: wanted.map(({ kind, lines, fromY }, i) => ({
      kind,
      lines,
      x: labelX,
      y: middles[i]!,
      fromX: Math.min(right + 2, labelX - 8),
      fromY,
    })),
  }
}

/** A closed outline from the floor of the drawing up. */
export function outlineOf(
  levels: readonly Level[],
  { middle, floorY, scale }: { middle: number; floorY: number; scale: number },
): string {
  if (levels.length === 0) return ''
  const point = (x: number, y: number) => `${px(middle + x * scale)} ${px(floorY - y * scale)}`
  const front = levels.map(level => point(level.right, level.y))
  const rear = [...levels].reverse().map(level => point(level.left, level.y))
  return `M${[...front, ...rear].join('L')}Z`
}
