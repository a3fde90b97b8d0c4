// A remedy in the few words that name it as a step to undo.

import { itemName, type Plan } from '../../plan'
import type { Change, ItemChoice, Replacement, TripChange } from '../../reckon'
import { listText } from '../../units'

/** "Move Rain jacket to a pocket". */
export function remedyLabel(change: Change, plan: Plan): string {
  switch (change.kind) {
    case 'other-setup':
      return 'Use its other set-up'
    case 'move-outside':
      return itemsLabel({ move: change.move, leave: [] }, plan)
    case 'leave':
      return itemsLabel({ move: [], leave: change.leave }, plan)
    case 'move-and-leave':
      return itemsLabel(change, plan)
    case 'swap':
      return `Take ${change.swaps.map(swap => swapLabel(swap, plan)).join(', ')}`
    case 'combined':
      return `${itemsLabel(change.items, plan)}, ${tripLabel(change.trip, plan).toLowerCase()}`
    default:
      return tripLabel(change, plan)
  }
}

const listOf = (ids: string[], { gear }: Plan): string =>
  listText(ids.flatMap(id => gear.find(item => item.id === id) ?? []).map(itemName))

function itemsLabel({ move, leave }: ItemChoice, plan: Plan): string {
  const moved = move.length ? [`Move ${listOf(move, plan)} outside`] : []
  const left = leave.length ? [`${moved.length ? 'leave' : 'Leave'} ${listOf(leave, plan)} at home`] : []
  return [...moved, ...left].join(', ')
}

const swapLabel = (swap: Replacement, plan: Plan) =>
  `${itemName(swap.with)} instead of ${listOf([swap.item], plan)}`

function tripLabel(change: TripChange, { trip: { stops } }: Plan): string {
  switch (change.kind) {
    case 'fewer-spare-rations':
      return 'Carry fewer spare rations'
    case 'trust-doubtful':
      return 'Count on doubtful water sources'
    case 'camp-at-water':
      return `Camp at ${stops[change.to]!.name}`
    case 'resupply':
      return `Resupply at ${stops[change.stop]!.name}`
  }
}
