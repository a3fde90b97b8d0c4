// Which line is named on the chart and in the table alike, and the area that was marked on the chart: kept while the app
// is open, no part of any trip.

import { signal } from '@preact/signals'
import type { Area } from '../../../report/compare-packs'

/** The key of a line. */
export const lit = signal<string | null>(null)
export const light = (key: string | null) => {
  lit.value = key
}

export const area = signal<Area | null>(null)
export const markArea = (next: Area | null) => {
  area.value = next
}
