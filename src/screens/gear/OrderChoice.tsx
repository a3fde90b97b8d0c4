// The order of the gear, and why each thing costs what it does.

import { useFormats } from '../../components/fields'
import { Why } from '../../components/why'
import type { DraftItem } from '../../plan'
import { costText } from '../../report'
import { gearOrder } from './order'
import { type Costs, MOST_COSTS } from './use-costs'

/** Beside the words on what is at home: sorts the list by what takes the room, and back. */
export function Order({ count }: { count: number }) {
  const isByRoom = gearOrder.value === 'room'
  return (
    <>
      <button
        type="button"
        class="quiet"
        onClick={() => {
          gearOrder.value = isByRoom ? 'listed' : 'room'
        }}
      >
        {isByRoom ? 'Back to my order' : 'What takes the room'}
      </button>
      {isByRoom && count > MOST_COSTS ? <p class="hint">Not for more than {MOST_COSTS} items.</p> : null}
    </>
  )
}

/** One reason for all: each thing's cost is reckoned alike. */
export function WhyCosts({ gear, costs }: { gear: readonly DraftItem[]; costs: Costs }) {
  const formats = useFormats()
  const things = gear.flatMap((item, i) => {
    const cost = costs.get(item.id)
    return cost ? [{ name: item.name || `Item ${i + 1}`, text: costText(cost, formats) }] : []
  })
  return <Why about={{ kind: 'costs', things }} figure="What changes if it stays home" />
}
