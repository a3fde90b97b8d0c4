// The water to leave each source with, and what to beware of.

import { type Caution, cautionsOf, GENERAL_LINE, inFull } from '../../report'
import type { SheetParts } from './parts'

export function SheetWater({ plan, reckoning: { carries }, formats, rows }: SheetParts) {
  const { stops } = plan.trip
  const wanted = carries.filter(({ needLitres }) => needLitres > 0)
  if (wanted.length === 0) return null
  return (
    <table class="sheet-water">
      <caption>Water to leave with</caption>
      <thead>
        <tr>
          <th scope="col">From</th>
          <th scope="col">To</th>
          <th scope="col" class="number">
            Carry
          </th>
        </tr>
      </thead>
      <tbody>
        {wanted.slice(0, rows).map(({ stop, to, carriedLitres, shortLitres }) => (
          <tr key={stop}>
            <th scope="row">
              <bdi>{stops[stop]!.name}</bdi>
            </th>
            <td>
              <bdi>{stops[to]!.name}</bdi>
            </td>
            <td class="number">
              {formats.water(carriedLitres)}
              {shortLitres > 0 ? <strong>, short by {formats.water(shortLitres)}</strong> : null}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Warnings, and what tells when to stop, in full; of the others the first sentence, which says what to do. */
const isInFull = ({ signal, about }: Caution) =>
  signal === 'WARNING' || (signal === 'CAUTION' && (about === 'heat' || about === 'load'))

export function SheetCautions({ plan, reckoning, formats }: SheetParts) {
  return (
    <section class="sheet-cautions small">
      <div class="warned">
        <h3>Safety notes</h3>
        <ul>
          {cautionsOf(plan, reckoning, formats).map(caution => (
            <li key={caution.text}>
              <strong>{caution.signal}</strong>{' '}
              {isInFull(caution) ? inFull(caution) : firstSentence(caution.text)}
            </li>
          ))}
        </ul>
        <p>{GENERAL_LINE}</p>
      </div>
    </section>
  )
}

const firstSentence = (text: string) => /^.*?[.](?= [\p{Lu}\d]|$)/u.exec(text)?.[0] ?? text
