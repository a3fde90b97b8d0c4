// Brings a field into view and puts the cursor in it, wherever it lies folded away. Its screen may have to be fetched
// first: the field is awaited for a while, and then left alone.

import { goTo, toTop } from '../frame'

const PATIENCE_MS = 3000

/** Focuses the control that edits the value at a field path, once it is on the page. */
function focusField(path: string): void {
  const until = performance.now() + PATIENCE_MS
  const look = () => {
    const field = document.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`)
    if (!field) {
      if (performance.now() < until) requestAnimationFrame(look)
      return
    }
    for (let at = field.parentElement; at; at = at.parentElement)
      if (at instanceof HTMLDetailsElement) at.open = true
    field.scrollIntoView({ block: 'center' })
    // A choice is a group: the option that is taken, or the first.
    const control = field.querySelector<HTMLElement>('input:checked') ?? field.querySelector('input') ?? field
    control.focus({ preventScroll: true })
  }
  requestAnimationFrame(look)
}

/** Leads to a field: opens the screen and the entry that hold it, and puts the cursor in it. */
export function toField(path: string): void {
  closeSheets()
  goTo(path)
  focusField(path)
}

/** Leads to the page that explains the model. */
export function toHelp(): void {
  closeSheets()
  toTop('help')
}

function closeSheets(): void {
  for (const sheet of document.querySelectorAll<HTMLDialogElement>('dialog[open]')) sheet.close()
}
