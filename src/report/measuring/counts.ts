// What measured litres count as in the plan: how well the way of measuring is trusted, or less where the reading itself
// is less sure than that. The half-widths are those the engine reckons with; our judgement.

import type { Measured } from '../../equations'
import { litresHalfWidth } from '../../reckon'
import type { Method } from './methods'

type CountsAs = 'filled' | 'dimensions' | 'guess'

const WORDS: Readonly<Record<CountsAs, string>> = {
  filled: 'measured by filling',
  dimensions: 'from its dimensions',
  guess: 'a guess',
}

/** Half the width of the readings’ own error, as a share of the litres. */
const ownHalfWidth = ({ litres, sigmaLitres }: Measured): number =>
  litres > 0 ? (sigmaLitres * Math.sqrt(3)) / litres : Number.POSITIVE_INFINITY

/** As the method says, while its readings are surer than the next worse kind of figure. */
export function countsAs(measured: Measured, { litresFrom }: Pick<Method, 'litresFrom'>): CountsAs {
  const own = ownHalfWidth(measured)
  if (own > litresHalfWidth.guess) return 'guess'
  return own > litresHalfWidth.dimensions ? 'dimensions' : litresFrom
}

/** "Counts as measured by filling, good to ± 3 %." */
export function countsText(measured: Measured, method: Pick<Method, 'litresFrom'>): string {
  const counted = countsAs(measured, method)
  const small = counted === method.litresFrom ? '' : ': it is small for this way, so measure several at once'
  return `Counts as ${WORDS[counted]}, good to ± ${Math.round(100 * litresHalfWidth[counted])} %${small}.`
}

/** Decimals that an amount give or take `sigma` is worth showing: 10.4 ± 0.6, 0.87 ± 0.05, 152 ± 9. At most three. */
export const digitsWorth = (sigma: number): number =>
  sigma > 0 ? Math.min(3, Math.max(0, -Math.floor(Math.log10(sigma)))) : 3
