// How the litres of a kind read: small things to the hundredth of a litre, the range never narrower than it is.

import { formatQuantity, rangeText, type System } from '../../units'

interface Range {
  low: number
  typical: number
  high: number
}

const digitsFor = (litres: number) => (litres < 1 ? 2 : 1)

/** "0.8–2.1 L" */
export const rangeOf = ({ low, high }: Pick<Range, 'low' | 'high'>, system: System): string =>
  rangeText('volume', low, high, { system, unit: 'L', digits: digitsFor(high) })

/** "0.8–2.1 L, typically 1.3 L" */
export function rangeInWords(range: Range, system: System): string {
  const digits = digitsFor(range.high)
  return `${rangeOf(range, system)}, typically ${formatQuantity('volume', range.typical, { system, unit: 'L', digits })}`
}
