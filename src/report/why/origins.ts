// Settings as inputs of a reason: what they are called, where they are changed, and where their value comes from.
// The origins are those of plan/defaults.ts; a value that differs from the default is the hiker's own.

import { defaults } from '../../plan'
import type { WhyContext, WhyInput } from './types'

type Numeric =
  | 'rigidPacking'
  | 'softPacking'
  | 'fillEfficiency'
  | 'linerKg'
  | 'framelessCeilingKg'
  | 'roomyRatio'

const { DEFAULT_ORIGINS, SETTINGS } = defaults

const NAMES: Record<Numeric, { label: string; from: string }> = {
  rigidPacking: { label: 'Rigid things fill of their space', from: DEFAULT_ORIGINS.packing },
  softPacking: { label: 'Soft things fill of their space', from: DEFAULT_ORIGINS.packing },
  fillEfficiency: { label: 'Soft things fill of the gaps', from: DEFAULT_ORIGINS.packing },
  linerKg: { label: 'Liner, as rain is likely', from: DEFAULT_ORIGINS.linerKg },
  framelessCeilingKg: { label: 'Most without a frame', from: DEFAULT_ORIGINS.framelessCeilingKg },
  roomyRatio: { label: 'More pack than needed from', from: DEFAULT_ORIGINS.roomyRatio },
}

/** With "common practice, no source" while it is as it came; "yours" once it is another. */
export function settingInput(
  { plan }: WhyContext,
  field: Numeric,
  show: (value: number) => string,
): WhyInput {
  const value = plan.settings[field]
  const { label, from } = NAMES[field]
  return {
    label,
    value: show(value),
    from: originOf(value, SETTINGS[field], from),
    path: `settings/${field}`,
  }
}

/** The word on where a value comes from. */
export const originOf = (value: number, usual: number, from: string): string =>
  value === usual ? from : 'yours'
