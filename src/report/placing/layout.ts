// Where the load of the main body sits, packed evenly and with its heaviest dense things against the back, and what that
// does to the moment about the hips. The plan knows no places, so both are assumed; what changes between them is not.

import { balancingLeanDeg, hipMomentNm, loadCentre } from '../../equations'
import type { Item, Pack, Plan } from '../../plan'
import { ASSUMED_BODY, type Heap, type Reckoning, ridingAt } from '../../reckon'
import { momentIndex } from '../places'

/** Where a pack rides; our judgement, near real ones. */
export const ASSUMED = {
  /** From the hip axis back to the back panel, and from it up to the floor of the pack, m. */
  backBehindM: 0.1,
  floorAboveM: 0,
  /** Proportions of a body whose inner measures are not known: width, depth, height. */
  proportions: [32, 24, 60],
} as const

/** So many things are moved at most. */
const MOST_MOVED = 3

export interface Centre {
  behindM: number
  aboveM: number
  /** About the hip axis, standing upright. */
  momentNm: number
  /** Forward lean at which load and upper body balance over the hips; null where it is out of range. */
  leanDeg: number | null
}

export interface Moved {
  /** Null: the water. */
  item: Item | null
  kg: number
  /** Its middle behind the back panel, before and after. */
  fromCm: number
  toCm: number
}

export interface Placing {
  /** The moment whose load is the heaviest with all the water wanted, as the need tells it. */
  moment: number
  kg: number
  depthCm: number
  heightCm: number
  /** Whether the pack gives both. */
  isMeasured: boolean
  now: Centre
  /** None where nothing in the main body is denser than the rest. */
  moved: Moved[]
  after: Centre
}

/** Null where nothing rides in the main body, or more than the equation is made for. */
export function placingOf(plan: Plan, reckoning: Reckoning, pack: Pack): Placing | null {
  const moment = momentIndex(reckoning.moments, reckoning.need.peakFullWaterAt)
  const heaps = ridingAt(plan, reckoning, moment)
  const kg = sum(heaps, heap => heap.kg)
  const litres = sum(heaps, heap => heap.litres)
  if (kg === 0 || litres === 0) return null
  const { depthCm, heightCm, isMeasured } = insideOf(pack)
  const filled = Math.min(1, reckoning.moments[moment]!.bodyLitres / pack.bodyLitres)
  const aboveM = ASSUMED.floorAboveM + (heightCm * filled) / 200

  const middleCm = depthCm / 2
  const close = heaviestDense(heaps, kg / litres).flatMap(heap => {
    const toCm = Math.min(thicknessCm(heap, plan), depthCm) / 2
    return toCm < middleCm ? [{ heap, toCm }] : []
  })
  const closeLitres = sum(close, ({ heap }) => heap.litres)
  const closeKg = sum(close, ({ heap }) => heap.kg)
  // What is moved in pushes the rest out: the middle of all the litres stays where it is.
  const outCm =
    litres - closeLitres > 0
      ? (litres * middleCm - sum(close, ({ heap, toCm }) => heap.litres * toCm)) / (litres - closeLitres)
      : middleCm
  const at = (cm: number, massKg: number) => ({ massKg, behindM: ASSUMED.backBehindM + cm / 100, aboveM })
  const rest = kg - closeKg > 1e-9 ? [at(Math.min(outCm, depthCm), kg - closeKg)] : []
  const now = centreOf([at(middleCm, kg)], plan)
  const after = centreOf([...close.map(({ heap, toCm }) => at(toCm, heap.kg)), ...rest], plan)
  if (!now || !after) return null
  const moved = close.map(({ heap, toCm }) => ({ item: heap.item, kg: heap.kg, fromCm: middleCm, toCm }))
  return { moment, kg, depthCm, heightCm, isMeasured, now, moved, after }
}

/** The heaviest of what is denser than the whole: moving anything else in would push heavier things out. */
function heaviestDense(heaps: Heap[], kgPerLitre: number): Heap[] {
  return heaps
    .filter(heap => heap.kg > heap.litres * kgPerLitre)
    .sort((a, b) => b.kg - a.kg)
    .slice(0, MOST_MOVED)
}

/** The least side of one piece; what has no sizes counts as a cube, water as one of the largest container’s litres. */
function thicknessCm({ item, kg, litres }: Heap, { gear }: Plan): number {
  const cube = (cubeLitres: number) => Math.cbrt(cubeLitres * 1000)
  if (item === null) {
    const inBody = gear.filter(({ stow, count }) => stow === 'main-body' && count > 0)
    const largest = Math.max(0, ...inBody.map(one => one.holdsWaterLitres))
    return cube(largest > 0 ? Math.min(largest, kg) : kg)
  }
  const sizes = [item.lengthCm, item.diameterCm, item.widthCm, item.depthCm].flatMap(cm => cm || [])
  return sizes.length > 1 ? Math.min(...sizes) : cube(item.use === 'kept' ? litres / item.count : litres)
}

function insideOf(pack: Pack): Pick<Placing, 'depthCm' | 'heightCm' | 'isMeasured'> {
  const { innerDepthCm, innerHeightCm, bodyLitres, section } = pack
  const [width, depth, height] = ASSUMED.proportions
  const share = section === 'ellipse' ? Math.PI / 4 : 1
  const scale = Math.cbrt((bodyLitres * 1000) / (share * width * depth * height))
  return {
    depthCm: innerDepthCm ?? depth * scale,
    heightCm: innerHeightCm ?? height * scale,
    isMeasured: innerDepthCm !== null && innerHeightCm !== null,
  }
}

type Pieces = Parameters<typeof loadCentre>[0]['pieces']

function centreOf(pieces: Pieces, { carrier }: Plan): Centre | null {
  const centre = loadCentre({ pieces })
  const momentNm = hipMomentNm({ pieces, leanDeg: 0 })
  if (!centre.ok || !momentNm.ok) return null
  const { massKg: packKg, behindM, aboveM } = centre.value
  const heightCm = carrier.heightCm ?? ASSUMED_BODY.heightCm
  const lean = balancingLeanDeg({ bodyKg: carrier.massKg, heightCm, packKg, behindM, aboveM })
  return { behindM, aboveM, momentNm: momentNm.value, leanDeg: lean.ok ? lean.value : null }
}

const sum = <T>(all: readonly T[], of: (one: T) => number) => all.reduce((total, one) => total + of(one), 0)
