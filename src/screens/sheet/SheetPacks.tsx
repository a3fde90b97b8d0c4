// The set-ups of the pack that is taken, else of all packs, those that do first: a line each with the answer, its
// weightiest reason, and what else there is in a word.

import { ANSWERS, FIT_LINE, setupInWords } from '../../report'
import type { SheetParts } from './parts'

const MOST = 8
const ORDER = Object.keys(ANSWERS)

export function SheetPacks({ plan, reckoning, formats, taken }: SheetParts) {
  const packs =
    taken === null
      ? reckoning.packs.toSorted((a, b) => ORDER.indexOf(a.answer) - ORDER.indexOf(b.answer))
      : reckoning.packs.filter(({ pack }) => pack === taken)
  if (packs.length === 0) return null
  const context = { plan, reckoning, formats }
  return (
    <section class="sheet-packs">
      <h3>Packs</h3>
      <p class="small">{FIT_LINE}</p>
      <ul>
        {packs.slice(0, MOST).map(setup => {
          const { answer, verdicts } = setupInWords(setup, context)
          const [first, ...others] = verdicts
          const also = others
            .filter(({ code }) => code !== 'fits' && code !== 'bears-load')
            .map(({ lead }) => lead.replace(/[:,]$/, '').toLowerCase())
          return (
            <li key={`${setup.pack}/${setup.index}`}>
              <strong>
                {ANSWERS[answer].mark} <bdi>{setup.name}</bdi>
                {plan.packs[setup.pack]!.setups.length > 1 ? (
                  <>
                    , <bdi>{setup.setup}</bdi>
                  </>
                ) : null}
                : {ANSWERS[answer].words.toLowerCase()}.
              </strong>{' '}
              {first.lead}
              {first.rest}
              {also.length ? ` Also: ${also.join('; ')}.` : ''}
            </li>
          )
        })}
      </ul>
      {packs.length > MOST ? <p class="small">And {packs.length - MOST} more, in the app.</p> : null}
    </section>
  )
}
