// What a change of the list does to the need, signed: the minus sign of print, and nothing where nothing is to be seen.

import type { Formats } from './formats'

/** "−2.8 L", "+0.6 kg"; null where it rounds to nothing. */
export function signedText(change: number, show: (amount: number) => string): string | null {
  const size = show(Math.abs(change))
  if (size === show(0)) return null
  return `${change < 0 ? '−' : '+'}${size}`
}

export interface Change {
  litres: number
  kg: number
}

/** "−0.6 kg, −2.8 L"; empty where neither is to be seen. */
export const changeText = ({ litres, kg }: Change, formats: Formats): string =>
  [signedText(kg, formats.kg), signedText(litres, formats.litres)].filter(text => text !== null).join(', ')
