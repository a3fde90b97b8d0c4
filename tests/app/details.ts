// Details opened as a tap opens them: what is in them is drawn only then.

import { act, fireEvent } from '@testing-library/preact'

const open = (details: HTMLDetailsElement) =>
  act(() => {
    details.open = true
    fireEvent(details, new Event('toggle'))
  })

/** Opens the details with this summary. */
export const openDetails = (summary: HTMLElement) => open(summary.closest('details')!)

/** Opens the table of every picture there is. */
export function openTables() {
  for (const table of document.querySelectorAll<HTMLDetailsElement>('details.picture-same')) open(table)
}
