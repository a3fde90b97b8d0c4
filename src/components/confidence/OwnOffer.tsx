// The quiet offer to a trip that does not reckon with the hiker's own packings. Nothing changes before the tap.

import { reckonsWith, reckonWith } from '../../report/confidence'
import { actions, openTrip } from '../../store'
import { counted } from '../../units'
import { useOwnPackings } from './own-packing'

export function OwnOffer() {
  const own = useOwnPackings()
  const trip = openTrip.value
  const count = own.packings.length
  if (!trip || count === 0 || reckonsWith(trip.draft, own)) return null
  return (
    <button
      type="button"
      class="quiet"
      onClick={() => actions.edit('Use your own packing', draft => reckonWith(draft, own))}
    >
      Use your own packing ({counted(count, 'packing')})
    </button>
  )
}
