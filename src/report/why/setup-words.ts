// What the reasons of one set-up share: the pack and set-up of the plan, their paths, and margins in words.

import { fieldPath, type Pack, type Setup } from '../../plan'
import type { SetupReckoning } from '../../reckon'
import { type Missing, missingOf } from '../missing'
import type { PlanContext } from './types'

export interface SetupContext extends PlanContext {
  judged: SetupReckoning
  pack: Pack
  setup: Setup
  missing: Missing
}

export function setupContext(context: PlanContext, index: number): SetupContext {
  const judged = context.reckoning.packs[index]!
  const pack = context.plan.packs[judged.pack]!
  return { ...context, judged, pack, setup: pack.setups[judged.index]!, missing: missingOf(context.plan) }
}

/** The path of a figure of the pack; none where the pack is not the open plan's. */
export function packPath({ packIds, judged }: SetupContext, field: keyof Pack): string | undefined {
  const id = packIds?.[judged.pack]?.id
  return id === undefined ? undefined : fieldPath('packs', id, field)
}

export function setupPath({ packIds, judged }: SetupContext, field: keyof Setup): string | undefined {
  const { id, setupIds = [] } = packIds?.[judged.pack] ?? {}
  const setupId = setupIds[judged.index]
  return id === undefined || setupId === undefined
    ? undefined
    : fieldPath('packs', id, 'setups', setupId, field)
}

/** "4.2 L to spare", "short by 4.2 L"; `isOpen`: what is missing can only make it less. */
export const spareText = (margin: number, show: (value: number) => string, isOpen: boolean) =>
  margin < 0
    ? `short by ${isOpen ? 'at least ' : ''}${show(-margin)}`
    : `${isOpen ? 'at most ' : ''}${show(margin)} to spare`
