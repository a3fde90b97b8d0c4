// Which screen a field is changed on, and the ways there.

import { pathParts } from '../../plan'
import { actions, library } from '../../store'
import { keepScroll } from './opening'

/** Settings about how things pack; the others are thresholds for packs. */
const PACKING = ['rigidPacking', 'softPacking', 'fillEfficiency', 'handSpread']

/**
 * Where a field is changed: the screen, and the entry of a list that has to be open there (`gear/<id>/massKg` is in
 * `gear/<id>`, the id as it is). The name of a screen leads to that screen.
 */
export function placeOf(path: string): { screen: string; detail: string | null } {
  const parts = pathParts(path)
  const [head = '', field = ''] = parts
  if (field.startsWith('personalFactor') || head === 'packings') return { screen: 'calibrate', detail: null }
  if (head === 'settings') return { screen: PACKING.includes(field) ? 'gear' : 'packs', detail: null }
  const depth = path.startsWith('trip/stops/') ? 3 : /^(gear|packs)\//.test(path) ? 2 : 0
  const screen = head === 'carrier' || head === 'people' ? 'trip' : head
  return { screen, detail: depth ? parts.slice(0, depth).join('/') : null }
}

/** Goes to a screen, and an entry on it, at its top. */
export function toTop(screen: string, detail: string | null = null): void {
  actions.setPlace({ screen, detail, scrollY: 0 })
  scrollTo(0, 0)
}

/** Leads to the screen, and the entry there, that holds a field. What is open on the screen one is on stays open. */
export function goTo(path: string): void {
  const { screen, detail } = placeOf(path)
  if (detail === null && library.value.place.screen === screen) return
  keepScroll()
  if (detail) actions.setPlace({ screen, detail, scrollY: 0 })
  else toTop(screen)
}
