// Two bars of a row: the main body against the litres needed, and what the pack can carry against the load. All rows are
// drawn to one scale, so that they compare at a glance; the figures stand in words beside them and on the pack's card.
// What nobody has said of the gear could only lengthen what is needed, so no mark of need is drawn then.

import type { DraftPack } from '../../plan'
import { missingOf } from '../../report'
import type { Comparison } from '../../report/compare-packs'
import type { Judgement } from './judged'

export interface Scale {
  /** The ends of the bars. */
  mostLitres: number
  mostKg: number
  /** Null: no more than a lower bound is known. */
  needLitres: number | null
  loadKg: number | null
}

/** Of the drawing, which is stretched over the row. */
const WIDTH = 1000
const HEIGHT = 5
const GAP = 3

/** Null where nothing is taken: there is nothing to draw them against. */
export function scaleOf({ plan, reckoning }: Judgement, comparisons: readonly Comparison[]): Scale | null {
  const { gear, litres, mass } = missingOf(plan)
  if (gear) return null
  const { bodyLitresSafe, peakLoadFullWaterKg } = reckoning.need
  const most = (need: number, values: readonly number[]) =>
    values.reduce((a, b) => Math.max(a, b), need * 1.25)
  return {
    mostLitres: most(
      bodyLitresSafe,
      plan.packs.map(({ bodyLitres }) => bodyLitres),
    ),
    mostKg: most(
      peakLoadFullWaterKg,
      comparisons.flatMap(({ bearsKg }) => bearsKg ?? []),
    ),
    needLitres: litres.length > 0 ? null : bodyLitresSafe,
    loadKg: mass.length > 0 ? null : peakLoadFullWaterKg,
  }
}

interface BarsProps {
  pack: DraftPack
  /** Of the set-ups that its answer is of. */
  comparisons: readonly Comparison[]
  scale: Scale
}

export function Bars({ pack, comparisons, scale }: BarsProps) {
  const bears = comparisons.flatMap(({ bearsKg }) => bearsKg ?? [])
  const kg = bears.length > 0 ? Math.max(0, ...bears) : null
  return (
    <svg
      class="row-bars"
      viewBox={`0 0 ${WIDTH} ${2 * HEIGHT + GAP}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <Bar
        y={0}
        kind="litres"
        has={pack.bodyLitres ?? null}
        needs={scale.needLitres}
        most={scale.mostLitres}
      />
      <Bar y={HEIGHT + GAP} kind="load" has={kg} needs={scale.loadKg} most={scale.mostKg} />
    </svg>
  )
}

interface BarProps {
  y: number
  kind: 'litres' | 'load'
  /** Null: not known. */
  has: number | null
  needs: number | null
  most: number
}

function Bar({ y, kind, has, needs, most }: BarProps) {
  const at = (value: number) => (most > 0 ? (WIDTH * Math.min(value, most)) / most : 0)
  return (
    <>
      <rect class="bar-all" x={0} y={y} width={WIDTH} height={HEIGHT} />
      {has === null ? null : (
        <rect
          class={needs !== null && has < needs ? `bar short ${kind}` : `bar ${kind}`}
          x={0}
          y={y}
          width={at(has)}
          height={HEIGHT}
        />
      )}
      {needs === null ? null : <path class="bar-need" d={`M${at(needs)} ${y - 1}v${HEIGHT + 2}`} />}
    </>
  )
}
