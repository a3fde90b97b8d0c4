// Prints how wide the litres of each soft kind are: those of the kind, and those of its usual masses.
// Run with: npx tsx tests/bench/kinds.ts

import { kinds, litresOfKind } from '../../src/plan/kinds'
import { printTable } from './print-table'

interface Ends {
  low: number
  high: number
}
const wide = ({ low, high }: Ends) => high - low
const range = ({ low, high }: Ends) => `${low.toPrecision(3)} to ${high.toPrecision(3)} L`

const soft = kinds.filter(({ litresPerKg }) => litresPerKg)
const share = (of: (typeof kinds)[number]) =>
  wide(litresOfKind(of, { massKg: of.massG / 1000 })) / wide(of.litres)

printTable(
  ['kind', 'L/kg', 'from', 'whole kind', 'width', 'mass', 'by its mass', 'width', 'of before'],
  soft.map(kind => {
    const { low, typical, high, from } = kind.litresPerKg!
    const byMass = litresOfKind(kind, { massKg: kind.massG / 1000 })
    return [
      kind.kind,
      `${low}, ${typical}, ${high}`,
      from,
      range(kind.litres),
      wide(kind.litres).toPrecision(2),
      `${kind.massG} g`,
      range(byMass),
      wide(byMass).toPrecision(2),
      `${Math.round(100 * share(kind))} %`,
    ]
  }),
)
const shares = soft.map(share).sort((a, b) => a - b)
console.log(
  `\nMedian width by mass: ${Math.round(100 * shares[Math.floor(shares.length / 2)]!)} % of the kind’s.`,
)
