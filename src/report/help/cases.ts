// Ten trips alike, for the picture of what "9 of 10" means: what each would turn out to need, by the range of the need.

import { type Need, normalCdf } from '../../reckon'

const COUNT = 10

/** The litres of ten cases, evenly over the distribution of the need, smallest first. */
export const tenCases = ({ bodyLitres, sigmaV }: Pick<Need, 'bodyLitres' | 'sigmaV'>): number[] =>
  Array.from({ length: COUNT }, (_, i) => Math.max(0, bodyLitres + quantile((i + 0.5) / COUNT) * sigmaV))

/** The standard normal variable that so large a share lies below. */
function quantile(share: number): number {
  let [low, high] = [-8, 8]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (normalCdf(middle) < share) low = middle
    else high = middle
  }
  return (low + high) / 2
}
