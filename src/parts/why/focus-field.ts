// Leads from a reason to the field it rests on: opens the screen and the entry that hold it, brings it into view and
// puts the cursor in it, wherever it lies folded away. A screen may have to be fetched first: the field is awaited for
// a while, and then left alone.

import { actions, library } from '../../store'

/** Leads to the screen, and the entry there, that holds a field. */
export type Go = (path: string) => void

const PATIENCE_MS = 3000

/** Settings about how things pack; the others are thresholds for packs. */
const PACKING = ['rigidPacking', 'softPacking', 'fillEfficiency']

/** Where a field is changed: the screen, and the entry of a list that has to be open there. */
function placeOf(path: string): { screen: string; detail: string | null } {
  const [head = '', field = ''] = path.split('/')
  if (field.startsWith('personalFactor')) return { screen: 'calibrate', detail: null }
  if (head === 'settings') return { screen: PACKING.includes(field) ? 'gear' : 'packs', detail: null }
  const depth = path.startsWith('trip/stops/') ? 3 : /^(gear|packs)\//.test(path) ? 2 : 0
  const screen = head === 'carrier' ? 'trip' : head
  return { screen, detail: depth ? path.split('/').slice(0, depth).join('/') : null }
}

/** Goes there. What is open on the screen that one is on already stays open. */
export const toField: Go = path => {
  const { place } = library.value
  const { screen, detail } = placeOf(path)
  if (detail === null && place.screen === screen) return
  actions.setPlace({ screen, detail, scrollY: 0 })
}

/** Focuses the control that edits the value at a field path, once it is on the page. */
export function focusField(path: string): void {
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
