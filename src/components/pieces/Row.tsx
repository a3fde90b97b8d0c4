// One entry of a list: a summary that opens into its editor, and the actions every entry has.

import type { ComponentChildren } from 'preact'

export interface RowActions {
  /** What the entry is called in the actions' names. */
  name: string
  moveUp?: (() => void) | undefined
  moveDown?: (() => void) | undefined
  duplicate?: (() => void) | undefined
  remove?: (() => void) | undefined
}

interface RowProps {
  id: string
  open: boolean
  onToggle: () => void
  summary: ComponentChildren
  /** Shown under the summary whether open or not. */
  below?: ComponentChildren
  /** A button of the row's own, after the summary. */
  aside?: ComponentChildren
  /** Greyed, and its name struck through: it counts nowhere. */
  set?: 'aside' | undefined
  /** By which the row is dragged, before the summary. */
  grip?: ComponentChildren
  /** What a list that draws only a part of itself wants on each entry. */
  entry?: Record<string, string | number>
  actions: RowActions
  children: ComponentChildren
}

export function Row({
  id,
  open,
  onToggle,
  summary,
  below,
  aside,
  set,
  grip,
  entry,
  actions,
  children,
}: RowProps) {
  const classes = [
    'row',
    open ? 'open' : '',
    grip ? 'gripped' : '',
    aside ? 'has-aside' : '',
    set ? 'set-aside' : '',
  ]
  return (
    <li class={classes.filter(Boolean).join(' ')} id={`row-${id}`} {...entry}>
      {grip}
      <button
        type="button"
        class="summary"
        aria-expanded={open}
        aria-controls={open ? `edit-${id}` : undefined}
        onClick={onToggle}
      >
        {summary}
      </button>
      {aside}
      {below}
      {open ? (
        <div class="editor" id={`edit-${id}`}>
          {children}
          <Actions {...actions} />
        </div>
      ) : null}
    </li>
  )
}

function Actions({ name, moveUp, moveDown, duplicate, remove }: RowActions) {
  const action = (label: string, act: (() => void) | undefined) =>
    act ? (
      <button type="button" class="quiet" aria-label={`${label} ${name}`} onClick={act}>
        {label}
      </button>
    ) : null
  return (
    <div class="actions">
      {action('Move up', moveUp)}
      {action('Move down', moveDown)}
      {action('Duplicate', duplicate)}
      {action('Delete', remove)}
    </div>
  )
}
