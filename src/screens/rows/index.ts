// What the lists of stops, items and packs share: which entry is open, and the actions on each.

import type { RowActions } from '../../components/pieces'
import type { Draft } from '../../plan'
import { actions, newId } from '../../store'

/** The entry whose editor is open, as a path: `gear/<id>`. */
export interface Detail {
  detail: string | null
  onDetail: (detail: string | null) => void
}

interface ListEdits {
  what: string
  /** Not of rows that have their own `step`. */
  move?: (draft: Draft, id: string, to: number) => Draft
  duplicate: (draft: Draft, id: string, newId: () => string) => Draft
  remove: (draft: Draft, id: string) => Draft
}

interface Entry {
  id: string
  name: string
  index: number
  count: number
  /** What goes with it when it is deleted, in words. */
  besides?: string
  /** Moves it as that key does on its grip, where it has one. */
  step?: (key: 'ArrowUp' | 'ArrowDown') => void
}

/** The actions of entry `index` of `count`, each one undoable step. */
export function rowActions({ what, move, duplicate, remove }: ListEdits, entry: Entry): RowActions {
  const { id, name, index, count, besides = '', step } = entry
  const moveBy = (by: 1 | -1) => {
    if (step) return () => step(by < 0 ? 'ArrowUp' : 'ArrowDown')
    return move && (() => actions.edit(`Move ${what} ${name}`, draft => move(draft, id, index + by)))
  }
  return {
    name,
    moveUp: index > 0 ? moveBy(-1) : undefined,
    moveDown: index < count - 1 ? moveBy(1) : undefined,
    duplicate: () => actions.edit(`Duplicate ${what} ${name}`, draft => duplicate(draft, id, newId)),
    remove: () => actions.edit(`Delete ${what} ${name}${besides}`, draft => remove(draft, id)),
  }
}

/** Makes the first id known to the caller, who wants to open what it names. */
export function firstId(id: string): () => string {
  let given = false
  return () => {
    if (given) return newId()
    given = true
    return id
  }
}
