// What the contents may weigh in each set-up, as the level lines of the load line.

import type { Plan } from '../plan'
import { contentsLimitKg, type Reckoning } from '../reckon'

/** The lines there is room for: the chosen pack's (its index in the plan) first, then those nearest to the load. */
const MOST_LINES = 3

export function contentsLimits(
  plan: Plan,
  { packs, need }: Reckoning,
  chosen = 0,
): { label: string; ending: string | undefined; kg: number }[] {
  return packs
    .flatMap(judged => {
      const { name, setup, pack } = judged
      // The line shows contents, so what the pack itself takes of its rating comes off the limit.
      const kg = contentsLimitKg(judged, need)
      const ending = plan.packs[pack]!.setups.length > 1 ? `, ${setup}` : undefined
      return kg !== null && kg > 0 ? [{ label: name + (ending ?? ''), ending, kg, pack }] : []
    })
    .sort(
      (a, b) =>
        Number(b.pack === chosen) - Number(a.pack === chosen) ||
        Math.abs(a.kg - need.peakLoadFullWaterKg) - Math.abs(b.kg - need.peakLoadFullWaterKg),
    )
    .slice(0, MOST_LINES)
}
