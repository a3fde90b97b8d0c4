// A cell while it is edited: the field of its path, with the cursor in it, over the text that stands there otherwise.

import { useLayoutEffect, useRef } from 'preact/hooks'
import { Field, useField } from '../../../components/fields'
import { choicesOf, type DraftItem } from '../../../plan'
import { rowOf, usualOf } from './cells'
import type { CellField as FieldName } from './columns'

/** How an edit ends: by a key that leads on, by Escape, or because something else was gone to. */
export type Left = 'down' | 'up' | 'next' | 'before' | 'stay' | 'gone'

interface CellFieldProps {
  item: DraftItem
  field: FieldName
  path: string
  /** Typed on the cell: it takes the place of what stood there. */
  typed: string | null
  onLeave: (how: Left) => void
}

export function CellField({ item, field, path, typed, onLeave }: CellFieldProps) {
  const { value, unread, set } = useField(path)
  const before = useRef({ value, unread })
  /** Once it is left, the field goes, and its focus with it. */
  const isLeft = useRef(false)
  const box = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    const control = box.current?.querySelector<HTMLInputElement | HTMLSelectElement>('input, select')
    control?.focus()
    if (!(control instanceof HTMLInputElement)) return
    if (typed === null) return control.select()
    control.value = typed
    control.dispatchEvent(new Event('input', { bubbles: true }))
  }, [])

  function onKeyDown(event: KeyboardEvent) {
    const how = WAYS[event.shiftKey ? `Shift+${event.key}` : event.key]
    if (!how || event.isComposing || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    // An edit of nothing would be a step to undo.
    if (event.key === 'Escape' && (value !== before.current.value || unread !== before.current.unread))
      set(before.current.value, before.current.unread)
    isLeft.current = true
    onLeave(how)
  }
  const onFocusOut = (event: FocusEvent) => {
    const to = event.relatedTarget
    // Another window has the focus: the cursor comes back here.
    const isOnlyAway = to === null && document.activeElement === event.target
    if (!isLeft.current && !isOnlyAway && !(to instanceof Node && box.current?.contains(to))) onLeave('gone')
  }
  const row = rowOf(field)
  const usual = usualOf(item, field)
  return (
    <div ref={box} class="cell-field" {...{ onKeyDown, onFocusOut }}>
      {row.as === 'choice' ? (
        <Field path={path} usual={usual} options={choicesOf(row).filter(({ value }) => value !== 'kind')} />
      ) : (
        <Field path={path} hint="" />
      )}
    </div>
  )
}

const WAYS: Readonly<Record<string, Left>> = {
  Enter: 'down',
  'Shift+Enter': 'up',
  Tab: 'next',
  'Shift+Tab': 'before',
  Escape: 'stay',
}
