// A figure of one's own, as it is asked for: "massG=1,price=1,bodyLitres=-1".

import { MEASURE_PARTS, type Measure, type MeasurePart, MOST_POWER } from '../reckon'

/** The measure, or what is wrong with the text and how to mend it. */
export function readMeasure(text: string): Measure | { problem: string } {
  const measure: Partial<Record<MeasurePart, number>> = {}
  for (const term of text.split(',')) {
    const [part = '', ...powers] = term.split('=').map(word => word.trim())
    const power = powers.join('=')
    if (!isPart(part)) return { problem: `"${part}" is no part of it: use ${MEASURE_PARTS.join(', ')}` }
    if (measure[part] !== undefined) return { problem: `${part} stands in it twice: give it one power` }
    const number = /^[+-]?\d$/.test(power) ? Number(power) : Number.NaN
    if (!(Math.abs(number) <= MOST_POWER))
      return {
        problem: `the power of ${part} is "${power}": write a whole number from -2 to 2, as ${part}=1`,
      }
    measure[part] = number
  }
  return measure
}

const isPart = (word: string): word is MeasurePart => (MEASURE_PARTS as readonly string[]).includes(word)
