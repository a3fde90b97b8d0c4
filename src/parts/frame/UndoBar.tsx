// What was just taken away, and the way back. No dialog asks first: everything can be undone.

import { actions, canUndo, lastLabel } from '../../store'

export function UndoBar() {
  if (!canUndo.value || !lastLabel.value?.startsWith('Delete')) return null
  return (
    <div class="undo-bar" role="status">
      <span>{lastLabel.value.replace(/^Delete/, 'Deleted')}</span>
      <button type="button" onClick={() => actions.undo()}>
        Undo
      </button>
    </div>
  )
}
