// The order of the table: kept while the app is open, no part of any trip.

import { signal } from '@preact/signals'
import { type LineOrder, PACK_FIGURES } from '../../../report/compare-packs'

export const AS_ANSWERED: LineOrder = { by: 'answer', isDown: false, isMixed: false }

export const order = signal(AS_ANSWERED)

/** Sorts by a column, the best first; by the same column again the other way round. */
export function sortBy(by: LineOrder['by']) {
  const now = order.value
  const bestDown = by !== 'name' && by !== 'answer' && PACK_FIGURES[by].isMore === true
  order.value = { ...now, by, isDown: now.by === by ? !now.isDown : bestDown }
}

export const mixAnswers = (isMixed: boolean) => {
  order.value = { ...order.value, isMixed }
}
