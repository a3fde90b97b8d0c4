// A remedy carried out: the plan it makes of the one it was found for.

import type { Item, Plan, Stop } from '../plan/types'
import type { Change, ItemChoice, Replacement, TripChange } from './remedies-types'

/** The changed plan. Another set-up of the same pack changes nothing: set-ups are judged side by side. */
export function applyRemedy(plan: Plan, change: Change): Plan {
  switch (change.kind) {
    case 'other-setup':
      return plan
    case 'move-outside':
      return withItems(plan, { move: change.move, leave: [] })
    case 'leave':
      return withItems(plan, { move: [], leave: change.leave })
    case 'move-and-leave':
      return withItems(plan, change)
    case 'swap':
      return withSwaps(plan, change.swaps)
    case 'combined':
      return withItems(withTrip(plan, change.trip), change.items)
    default:
      return withTrip(plan, change)
  }
}

/** Moved things leave their container; what is inside a moved container goes with it. */
export function withItems(plan: Plan, { move, leave }: ItemChoice): Plan {
  const moved = new Set(move)
  const left = new Set(leave)
  const gear = plan.gear.flatMap((item): Item[] => {
    if (left.has(item.id)) return []
    return [moved.has(item.id) ? { ...item, inside: null, stow: 'outside-pocket' } : item]
  })
  return { ...plan, gear }
}

/** What rode in a container that another thing has replaced rides on its own where that has no room inside. */
export function withSwaps(plan: Plan, swaps: readonly Replacement[]): Plan {
  const made = new Map(swaps.map(swap => [swap.item, swap.with]))
  const noContainer = new Set(swaps.flatMap(({ item, with: it }) => (it.holdsLitres === null ? item : [])))
  const gear = plan.gear.map((item): Item => {
    const next = made.get(item.id) ?? item
    const inside = next.holdsLitres === null ? item.inside : null
    const isFreed = inside !== null && noContainer.has(inside)
    return next === item && !isFreed ? item : { ...next, inside: isFreed ? null : inside }
  })
  return { ...plan, gear }
}

export function withTrip(plan: Plan, change: TripChange): Plan {
  const { trip } = plan
  switch (change.kind) {
    case 'fewer-spare-rations':
      return { ...plan, trip: { ...trip, meals: { ...trip.meals, spareDays: change.spareDays } } }
    case 'trust-doubtful':
      return { ...plan, trip: { ...trip, water: { ...trip.water, trustDoubtful: true } } }
    case 'resupply':
      return withStops(plan, (stop, i) => (i === change.stop ? { ...stop, resupply: true } : stop))
    case 'camp-at-water':
      return withStops(plan, (stop, i) => {
        if (i === change.from) return { ...stop, nights: 0 }
        return i === change.to ? { ...stop, nights: stop.nights + change.nights } : stop
      })
  }
}

function withStops(plan: Plan, edit: (stop: Stop, index: number) => Stop): Plan {
  return { ...plan, trip: { ...plan.trip, stops: plan.trip.stops.map(edit) } }
}
