// The set-up that the trip takes, among those that are judged, and back.

import { type Draft, type Takes, takenBy } from '../../plan'
import type { OpenReckoned } from '../../store'

/** The ids of a pack's set-ups that a plan has: one without its mass is not among them. */
const setupIds = ({ packs }: Draft, pack: string | undefined) =>
  (packs.find(({ id }) => id === pack)?.setups ?? []).filter(setup => setup.massKg !== undefined)

type Judged = { pack: number; index: number }

/** Its place among the set-ups judged; null where none is taken. */
export function takenSetup(
  draft: Draft,
  { packIds, taken, person }: OpenReckoned,
  judged: readonly Judged[],
) {
  const takes = takenBy(draft, person)
  if (taken === null || !takes) return null
  const { pack, setup } = takes
  const index = Math.max(
    0,
    setupIds(draft, pack).findIndex(({ id }) => id === setup),
  )
  const at = judged.findIndex(one => packIds[one.pack] === pack && one.index === index)
  return at < 0 ? null : at
}

export function takesOf(draft: Draft, { packIds }: OpenReckoned, { pack, index }: Judged): Takes | undefined {
  const id = packIds[pack]
  const setup = setupIds(draft, id)[index]
  return id !== undefined && setup ? { pack: id, setup: setup.id } : undefined
}
