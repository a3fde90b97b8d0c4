// What was just taken away, what that changed, and the way back. No dialog asks first: everything can be undone. After an
// undo: what it took back, since that may be on another screen.

import { actions, canUndo, justUndone, lastLabel } from '../../store'

/** `change`: what the last edit changed, in words. */
export function UndoBar({ change = '' }: { change?: string }) {
  const said = tellsTaken()
  if (justUndone.value) return bar(`Undone: ${justUndone.value}`, change, 'Redo', actions.redo)
  return said ? bar(said, change, 'Undo', actions.undo) : null
}

/** What was taken away last, in words; null where the last step took nothing. */
function tellsTaken(): string | null {
  const taken = canUndo.value ? TAKEN.find(([doing]) => lastLabel.value?.startsWith(doing)) : undefined
  return taken ? lastLabel.value!.replace(...taken) : null
}

/** Whether the bar is there, and so tells the last change itself. */
export const isTelling = () => justUndone.value !== null || tellsTaken() !== null

/** How the labels of what takes something away begin, and how that is told once it is done. */
const TAKEN: readonly [string, string][] = [
  ['Delete', 'Deleted'],
  ['Remove', 'Removed'],
  ['Leave ', 'Left '],
  ['Take along', 'Taken along:'],
]

const bar = (text: string, change: string, action: string, act: () => void) => (
  <div class="undo-bar" role="status">
    <span data-figures="cited">
      {text}
      {change ? `: ${change}` : ''}
    </span>
    <button type="button" onClick={act}>
      {action}
    </button>
  </div>
)
