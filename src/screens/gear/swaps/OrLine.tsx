// Under an item's row: what it may be instead. Tapped, it shows what each would change.

import { useState } from 'preact/hooks'
import { type DraftItem, itemName } from '../../../plan'
import { alternativesOf } from '../../../plan/shelf'
import { shelf } from '../../../store'
import { Choices } from './Choices'

/** Nothing for an item without alternatives. */
export function OrLine({ item }: { item: DraftItem }) {
  const [open, setOpen] = useState(false)
  const { there } = alternativesOf(item, shelf.value)
  const [first, ...others] = there
  if (!first) return null
  return (
    <div class="or-line">
      <button type="button" class="link" aria-expanded={open} onClick={() => setOpen(!open)}>
        or <bdi>{itemName(first.facts)}</bdi>
        {others.length > 0 ? ` and ${others.length} more` : ''}
        <span class="unseen"> instead of {itemName(item)}</span>
      </button>
      {open ? <Choices item={item} /> : null}
    </div>
  )
}
