// What a change of the list does to the need, signed: the minus sign of print, and nothing where nothing is to be seen.

import type { Answer } from '../reckon'
import { counted } from '../units'
import { ANSWERS } from './answers'
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

/** "Small frameless now: suitable", "1 more answer changed": what other answers there are, a sentence each. */
export function answersChanged(answers: readonly { name: string; answer: Answer }[]): string[] {
  const [first, ...others] = answers
  if (!first) return []
  const more = others.length > 0 ? [`${counted(others.length, 'more answer')} changed`] : []
  return [`${first.name} now: ${ANSWERS[first.answer].words.toLowerCase()}`, ...more]
}
