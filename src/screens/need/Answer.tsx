// The answer: how much room and how much load, when and where, with its likely range and what it is made of.

import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { loadParts, momentAt, placeText, type Shown } from '../../report'

interface AnswerProps {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
}

export function Answer({ plan, reckoning, shown }: AnswerProps) {
  const { need, moments } = reckoning
  const low = Math.max(0, 2 * need.bodyLitres - need.bodyLitresSafe)
  return (
    <div class="answers">
      <section class="answer">
        <h3>Main body</h3>
        <p class="figure">{shown.litresUp(need.bodyLitres)}</p>
        <p>
          Likely {shown.litresWhole(low)} to {shown.litresUp(need.bodyLitresSafe)}. Fullest{' '}
          {placeText(need.bodyAt, moments)}.
        </p>
        <p class="hint">{shown.litresUp(need.bodyLitresSafe)} is enough in 9 of 10 cases.</p>
        <WhyLitres plan={plan} reckoning={reckoning} shown={shown} />
      </section>
      <section class="answer">
        <h3>Heaviest load</h3>
        <p class="figure">{shown.kg(need.peakLoadKg)}</p>
        <p>Without the pack, {placeText(need.peakAt, moments)}.</p>
        <p class="hint">At most {shown.kg(need.peakLoadSafeKg)} in 9 of 10 cases.</p>
        <WhyLoad reckoning={reckoning} shown={shown} />
      </section>
    </div>
  )
}

function WhyLoad({ reckoning, shown }: Omit<AnswerProps, 'plan'>) {
  const parts = loadParts(momentAt(reckoning, reckoning.need.peakAt))
  return (
    <details class="why">
      <summary>Why?</summary>
      <table>
        <caption class="unseen">What the heaviest load is made of</caption>
        <tbody>
          {parts.map(part => (
            <tr key={part.name}>
              <th scope="row">{part.name}</th>
              <td>{shown.kg(part.kg)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="hint">Rows may not add up because of rounding.</p>
    </details>
  )
}

const LITRE_NAMES = [
  ['kept', 'gear'],
  ['daily', 'food'],
  ['nightly', 'fuel'],
  ['spread', 'things used up'],
  ['water', 'water'],
  ['rubbish', 'rubbish'],
] as const

function WhyLitres({ plan, reckoning, shown }: AnswerProps) {
  const { need } = reckoning
  const moment = momentAt(reckoning, need.bodyAt)
  const parts = LITRE_NAMES.map(([share, name]) => ({ name, litres: moment.litres[share] }))
    .filter(part => part.litres > 0)
    .sort((a, b) => b.litres - a.litres)
  const things = parts.reduce((sum, part) => sum + part.litres, 0)
  const { rigidPacking, softPacking, fillEfficiency, personalFactor } = plan.settings
  return (
    <details class="why">
      <summary>Why?</summary>
      <table>
        <caption class="unseen">What fills the main body</caption>
        <tbody>
          {parts.map(part => (
            <tr key={part.name}>
              <th scope="row">{part.name}</th>
              <td>{shown.litres(part.litres)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">gaps between them</th>
            <td>{shown.litres(need.bodyLitres - things)}</td>
          </tr>
        </tbody>
      </table>
      <p class="hint">
        {shown.litres(moment.rigidLitres)} rigid things packed at {shown.percent(rigidPacking)},{' '}
        {shown.litres(moment.softLitres)} soft ones at {shown.percent(softPacking)}; soft things fill{' '}
        {shown.percent(fillEfficiency)} of the gaps
        {personalFactor === 1 ? '' : `; times ${personalFactor.toFixed(2)}, from your own packing`}. The
        packing model is published (Stovall, de Larrard and Buil 1986); its three shares are judgements inside
        published ranges.
      </p>
    </details>
  )
}
