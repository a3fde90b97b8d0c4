// What was just taken away, and the way back. No dialog asks first: everything can be undone. After an undo: what it
// took back, since that may be on another screen.

import { actions, canUndo, justUndone, lastLabel } from '../../store'

export function UndoBar() {
  if (justUndone.value) return bar(`Undone: ${justUndone.value}`, 'Redo', actions.redo)
  if (!canUndo.value || !lastLabel.value?.startsWith('Delete')) return null
  return bar(lastLabel.value.replace(/^Delete/, 'Deleted'), 'Undo', actions.undo)
}

const bar = (text: string, action: string, act: () => void) => (
  <div class="undo-bar" role="status">
    <span>{text}</span>
    <button type="button" onClick={act}>
      {action}
    </button>
  </div>
)
