// What was just taken away, and the way back. No dialog asks first: everything can be undone. After an undo: what it
// took back, since that may be on another screen.

import { actions, canUndo, justUndone, lastLabel } from '../../store'

export function UndoBar() {
  if (justUndone.value) return bar(`Undone: ${justUndone.value}`, 'Redo', actions.redo)
  const taken = canUndo.value ? TAKEN.find(([doing]) => lastLabel.value?.startsWith(doing)) : undefined
  return taken ? bar(lastLabel.value!.replace(...taken), 'Undo', actions.undo) : null
}

/** How the labels of what takes something away begin, and how that is told once it is done. */
const TAKEN: readonly [string, string][] = [
  ['Delete', 'Deleted'],
  ['Remove', 'Removed'],
]

const bar = (text: string, action: string, act: () => void) => (
  <div class="undo-bar" role="status">
    <span>{text}</span>
    <button type="button" onClick={act}>
      {action}
    </button>
  </div>
)
