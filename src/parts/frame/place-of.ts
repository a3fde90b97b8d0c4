// Which screen a field is changed on.

/** Settings about how things pack; the others are thresholds for packs. */
const PACKING = ['rigidPacking', 'softPacking', 'fillEfficiency']

/**
 * Where a field is changed: the screen, and the entry of a list that has to be open there (`gear/<id>/massKg` is in
 * `gear/<id>`). The name of a screen leads to that screen.
 */
export function placeOf(path: string): { screen: string; detail: string | null } {
  const [head = '', field = ''] = path.split('/')
  if (field.startsWith('personalFactor')) return { screen: 'calibrate', detail: null }
  if (head === 'settings') return { screen: PACKING.includes(field) ? 'gear' : 'packs', detail: null }
  const depth = path.startsWith('trip/stops/') ? 3 : /^(gear|packs)\//.test(path) ? 2 : 0
  const screen = head === 'carrier' ? 'trip' : head
  return { screen, detail: depth ? path.split('/').slice(0, depth).join('/') : null }
}
