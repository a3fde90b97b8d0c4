// What stays at home is on the list and counts nowhere: all that walks the gear is given the plan without it.

import type { Item } from '../plan/types'

interface WithGear {
  gear: Item[]
}

const KEPT = new WeakMap<WithGear, WithGear>()

/**
 * The plan with only what is taken along; the plan itself where nothing stays at home, and each time the same one. What
 * is inside a container that stays at home rides where its own `stow` says.
 */
export function takenAlong<P extends WithGear>(plan: P): P {
  if (plan.gear.every(({ atHome }) => !atHome)) return plan
  const kept = KEPT.get(plan)
  if (kept) return kept as P
  const along = { ...plan, gear: gearAlong(plan.gear) }
  KEPT.set(plan, along)
  return along
}

function gearAlong(gear: Item[]): Item[] {
  const home = new Set(gear.filter(({ atHome }) => atHome).map(({ id }) => id))
  return gear
    .filter(({ id }) => !home.has(id))
    .map(item => (item.inside !== null && home.has(item.inside) ? { ...item, inside: null } : item))
}
