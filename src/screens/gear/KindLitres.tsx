// The litres of an item that are a range: its three ends to change, and the way back to one number.

import { Field } from '../../components/fields'
import type { DraftItem } from '../../plan'
import { withoutRange } from '../../plan/litres'
import { useItemHome } from './item-home'
import './gear.css'

interface KindLitresProps {
  item: DraftItem
  at: (...parts: string[]) => string
  per: string
}

export function KindLitres({ item, at, per }: KindLitresProps) {
  const home = useItemHome()
  const drop = () => {
    home.edit(item.id, `${item.name || 'Item'}, litres typed`, withoutRange)
    // The button goes away: the focus goes on to the field that takes its place.
    requestAnimationFrame(() => {
      document.querySelector<HTMLElement>(`[data-path="${CSS.escape(at('litres'))}"]`)?.focus()
    })
  }
  return (
    <fieldset>
      <legend>Packed volume{per}: a range, not measured</legend>
      <div class="fields thirds">
        {(['low', 'typical', 'high'] as const).map(end => (
          <Field key={end} path={at('litresRange', end)} />
        ))}
      </div>
      <button type="button" class="quiet" onClick={drop}>
        Type one number of litres instead
      </button>
    </fieldset>
  )
}
