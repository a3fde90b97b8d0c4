// The figures that the engine, the floors and the spreadsheets are all asked for, and what the latter two are told
// beforehand: how much is aboard at each moment.

import type { Plan } from '../../src/plan'
import { type Reckoning, reckon, routeOf, stockAtMoments } from '../../src/reckon'

/** One number a moment, or one a set-up. */
export interface Figures {
  loadKg: number[]
  bodyLitres: number[]
  carriedKg: number[]
  marginLitres: number[]
}

export function reckoned(plan: Plan): Reckoning {
  const result = reckon(plan)
  if (!result.ok) throw new Error('refused')
  return result.reckoning
}

export const figuresOf = ({ moments, packs }: Reckoning): Figures => ({
  loadKg: moments.map(({ kg }) => kg.total),
  bodyLitres: moments.map(({ bodyLitres }) => bodyLitres),
  carriedKg: packs.map(({ carriedKg }) => carriedKg),
  marginLitres: packs.map(({ bodyMarginLitres }) => bodyMarginLitres),
})

/** The largest difference between two sets of figures, as a share of the figure. */
export function largestDifference(a: Figures, b: Figures): number {
  const pairs = (Object.keys(a) as (keyof Figures)[]).flatMap(key =>
    a[key].map((x, i) => [x, b[key][i]!] as const),
  )
  return Math.max(...pairs.map(([x, y]) => Math.abs(x - y) / Math.max(1, Math.abs(x), Math.abs(y))))
}

/** Ways of changing, two columns each: what is left, and the rubbish of what was used. */
export const STREAMS = ['kept', 'dailyAgain', 'dailyOnce', 'nightlyAgain', 'nightlyOnce', 'spread'] as const

/** An item as a row of numbers. */
export interface Row {
  /** Index into `STREAMS`. */
  stream: number
  massKg: number
  count: number
  leaves: number
  /** In the main body, and not in a container. */
  rigidLitres: number
  softLitres: number
  /** In a container: which, and litres there; −1: none. */
  container: number
  insideLitres: number
}

export interface Told {
  rows: Row[]
  /** Inner room of each container. */
  roomLitres: number[]
  moments: {
    /** Units of each stream, left and used by turns. */
    units: number[]
    waterKg: number
    waterSoftLitres: number
    /** Water wanted beyond what the containers hold. */
    wantedKg: number
  }[]
  setups: { bodyLitres: number; massKg: number; linerKg: number }[]
  /** Litres of room for a litre of rigid and of soft things, by the two terms of the packing model. */
  perRigidLitre: [number, number]
  perSoftLitre: [number, number]
}

/** Everything rides in the main body in these plans; nothing is worn. */
export function toldOf(plan: Plan, reckoning: Reckoning): Told {
  const stocks = stockAtMoments(
    plan,
    routeOf(plan),
    reckoning.days.map(({ ration }) => ration),
  )
  const boxes = plan.gear.filter(({ holdsLitres }) => holdsLitres !== null)
  const boxAt = new Map(boxes.map(({ id }, i) => [id, i]))
  const { rigidPacking, softPacking, fillEfficiency } = plan.settings
  const unfilled = 1 - (1 + fillEfficiency) / 3
  return {
    rows: plan.gear.map(item => {
      const litres = item.litres * item.count
      const loose = item.inside === null
      return {
        stream: streamOf(item),
        massKg: item.massKg,
        count: item.count,
        leaves: item.leaves,
        rigidLitres: loose && item.build === 'rigid' ? litres : 0,
        softLitres: loose && item.build === 'soft' ? litres : 0,
        container: item.inside === null ? -1 : boxAt.get(item.inside)!,
        insideLitres: loose ? 0 : litres,
      }
    }),
    roomLitres: boxes.map(({ holdsLitres, count }) => holdsLitres! * count),
    moments: reckoning.moments.map(({ kg, litres, wantedLitres }, m) => ({
      units: STREAMS.flatMap(stream => [stocks[m]!.left[stream], stocks[m]!.used[stream]]),
      waterKg: kg.water,
      waterSoftLitres: litres.water,
      wantedKg: wantedLitres,
    })),
    setups: plan.packs.flatMap(({ bodyLitres, setups }) =>
      setups.map(({ massKg }) => ({ bodyLitres, massKg, linerKg: plan.settings.linerKg })),
    ),
    perRigidLitre: [1 / rigidPacking, 1 + unfilled * (1 / rigidPacking - 1)],
    perSoftLitre: [unfilled / softPacking, 1 / softPacking],
  }
}

function streamOf({ use, resupplied }: Plan['gear'][number]): number {
  if (use === 'daily') return resupplied ? 1 : 2
  if (use === 'nightly') return resupplied ? 3 : 4
  return use === 'kept' ? 0 : 5
}
