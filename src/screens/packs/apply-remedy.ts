// A remedy carried out on the draft, as one edit. Gear is found by its id, stops by their place in the trip; what is
// no longer there changes nothing.

import { type Draft, fieldPath, setAtHome, setField } from '../../plan'
import type { Change, ItemChoice, TripChange } from '../../reckon'

/**
 * Another set-up of the same pack changes nothing: set-ups are judged side by side. Another thing in an item's place may
 * change the shelf too: `takeThings`.
 */
export function applyRemedyToDraft(draft: Draft, change: Exclude<Change, { kind: 'swap' }>): Draft {
  switch (change.kind) {
    case 'other-setup':
      return draft
    case 'move-outside':
      return withItems(draft, { move: change.move, leave: [] })
    case 'leave':
      return withItems(draft, { move: [], leave: change.leave })
    case 'move-and-leave':
      return withItems(draft, change)
    case 'combined':
      return withItems(withTrip(draft, change.trip), change.items)
    default:
      return withTrip(draft, change)
  }
}

/** What is left at home stays in the list, so that it can be taken along again. */
function withItems(draft: Draft, { move, leave }: ItemChoice): Draft {
  const moved = move.reduce(
    (made, id) =>
      setField(
        setField(made, fieldPath('gear', id, 'stow'), 'outside-pocket'),
        fieldPath('gear', id, 'inside'),
        undefined,
      ),
    draft,
  )
  return setAtHome(moved, leave, true)
}

function withTrip(draft: Draft, change: TripChange): Draft {
  const { stops } = draft.trip
  const stopField = (index: number, field: string) =>
    fieldPath('trip', 'stops', stops[index]?.id ?? '', field)
  switch (change.kind) {
    case 'fewer-spare-rations':
      return setField(draft, 'trip/meals/spareDays', change.spareDays)
    case 'trust-doubtful':
      return setField(draft, 'trip/water/trustDoubtful', true)
    case 'resupply':
      return setField(draft, stopField(change.stop, 'resupply'), true)
    case 'camp-at-water': {
      const nights = (stops[change.to]?.nights ?? 0) + change.nights
      const emptied = setField(draft, stopField(change.from, 'nights'), undefined)
      return setField(emptied, stopField(change.to, 'nights'), nights)
    }
  }
}
