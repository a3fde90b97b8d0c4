// The quiet offer to a trip that does not reckon with the hiker's own packings. Nothing changes before the tap.

import type { Plan } from '../../plan'
import { reckonsWith, reckonWith } from '../../report/trust'
import { actions } from '../../store'
import { useOwnPacking } from './own-packing'

export function OwnOffer({ plan }: { plan: Plan }) {
  const own = useOwnPacking()
  if (!own || reckonsWith(plan.settings, own)) return null
  const what = own.count === 1 ? '1 packing' : `${own.count} packings`
  return (
    <button
      type="button"
      class="quiet"
      onClick={() => actions.edit('Reckon with your own packing', draft => reckonWith(draft, own))}
    >
      Reckon with your own packing ({what}, {own.factor.toFixed(2)})
    </button>
  )
}
