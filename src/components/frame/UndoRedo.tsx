// The way back and forth over all that changes data, as two buttons and as keys.

import { useEffect } from 'preact/hooks'
import { actions, canRedo, canUndo, lastLabel, redoLabel } from '../../store'

export const UndoRedo = () => (
  <>
    <Step way="Undo" sign="↶" what={lastLabel.value} enabled={canUndo.value} onGo={actions.undo} />
    <Step way="Redo" sign="↷" what={redoLabel.value} enabled={canRedo.value} onGo={actions.redo} />
  </>
)

interface StepProps {
  way: string
  sign: string
  what: string | null
  enabled: boolean
  onGo: () => void
}

const Step = ({ way, sign, what, enabled, onGo }: StepProps) => (
  <button
    type="button"
    class="quiet icon"
    aria-label={what ? `${way}: ${what}` : way}
    disabled={!enabled}
    onClick={onGo}
  >
    {sign}
  </button>
)

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
