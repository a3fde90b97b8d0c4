// The way back and forth over all that changes data, as two buttons and as keys.

import { useEffect } from 'preact/hooks'
import { actions, canRedo, canUndo, lastLabel, redoLabel } from '../../store'

export function UndoRedo() {
  return (
    <>
      <button
        type="button"
        class="quiet icon"
        aria-label={lastLabel.value ? `Undo: ${lastLabel.value}` : 'Undo'}
        disabled={!canUndo.value}
        onClick={actions.undo}
      >
        ↶
      </button>
      <button
        type="button"
        class="quiet icon"
        aria-label={redoLabel.value ? `Redo: ${redoLabel.value}` : 'Redo'}
        disabled={!canRedo.value}
        onClick={actions.redo}
      >
        ↷
      </button>
    </>
  )
}

/** Ctrl or Cmd with Z, with Shift for redo. In a text field these keys are the browser's own. */
export function useUndoKeys() {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isZ = event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey) && !event.altKey
      if (!isZ || event.defaultPrevented || isTextField(event.target)) return
      event.preventDefault()
      if (event.shiftKey) actions.redo()
      else actions.undo()
    }
    addEventListener('keydown', onKey)
    return () => removeEventListener('keydown', onKey)
  }, [])
}

const WITHOUT_TEXT = ['button', 'checkbox', 'color', 'file', 'image', 'radio', 'range', 'reset', 'submit']

function isTextField(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement) return !WITHOUT_TEXT.includes(target.type)
  return target instanceof HTMLTextAreaElement || (target instanceof HTMLElement && target.isContentEditable)
}
