// What the pictures say: names kept from disturbing the sentence around them, and the sentences themselves.

import type { Moment } from '../../reckon'
import { counted } from '../../units'
import type { LoadFormat, PictureStop } from './load-picture'

const BIDI_CONTROLS = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g

/** A name for use inside a sentence of plain text: its own direction cannot leak (first-strong isolate). */
export const isolate = (name: string): string => `\u2068${name.replace(BIDI_CONTROLS, '')}\u2069`

export const stopName = (stops: readonly PictureStop[], stop: number): string =>
  stops[stop]?.name.trim() || `stop ${stop + 1}`

/** "when you leave Larch Spring, day 2"; the name is isolated, `name` replaces it where it has to be shorter. */
export function placeWords(
  moment: Pick<Moment, 'stop' | 'phase' | 'day'>,
  stops: readonly PictureStop[],
  name = isolate(stopName(stops, moment.stop)),
): string {
  return `when you ${moment.phase === 'arrive' ? 'reach' : 'leave'} ${name}, day ${moment.day}`
}

/** An elevation in the reader's unit. */
export const metresText = (m: number, { metres }: Pick<LoadFormat, 'metres'>): string =>
  metres ? metres(m) : `${Math.round(m)}\u00a0m`

/** What the marks of a stop say, in words: "water, 2 nights, resupply"; empty for a stop with none. */
export function marksOf(stop: PictureStop | undefined): string {
  if (!stop) return ''
  const words: string[] = []
  if (stop.water !== 'none') words.push(stop.water === 'sure' ? 'water' : 'doubtful water')
  if (stop.nights > 0) words.push(counted(stop.nights, 'night'))
  if (stop.resupply) words.push('resupply')
  return words.join(', ')
}
