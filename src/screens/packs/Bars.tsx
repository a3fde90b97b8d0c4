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

const WIDTH = 96
const HEIGHT = 7

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
    <svg class="row-bars" viewBox={`0 0 ${WIDTH} ${2 * HEIGHT + 4}`} aria-hidden="true">
      <Bar y={0} has={pack.bodyLitres ?? null} needs={scale.needLitres} most={scale.mostLitres} />
      <Bar y={HEIGHT + 4} has={kg} needs={scale.loadKg} most={scale.mostKg} />
    </svg>
  )
}

interface BarProps {
  y: number
  /** Null: not known. */
  has: number | null
  needs: number | null
  most: number
}

function Bar({ y, has, needs, most }: BarProps) {
  const at = (value: number) => (most > 0 ? (WIDTH * Math.min(value, most)) / most : 0)
  return (
    <>
      <rect class="bar-all" x={0} y={y} width={WIDTH} height={HEIGHT} />
      {has === null ? null : (
        <rect
          class={needs !== null && has < needs ? 'bar short' : 'bar'}
          x={0}
          y={y}
          width={at(has)}
          height={HEIGHT}
        />
      )}
      {needs === null ? null : (
        <rect class="bar-need" x={at(needs) - 1} y={y - 1} width={2} height={HEIGHT + 2} />
      )}
    </>
  )
}
