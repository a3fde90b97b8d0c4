// The answer: how much room and how much load, when and where, with its likely range and what it rests on.

import { Why } from '../../parts/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { type Missing, placeText, type Shown, verbFor, withoutText } from '../../report'
import { enoughText, likelyText, restsOn } from '../../report/trust'

interface AnswerProps {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
  missing: Missing
  onGo: (path: string) => void
}

export function Answer({ plan, reckoning, shown, missing, onGo }: AnswerProps) {
  const { need, moments } = reckoning
  const rests = restsOn({ plan, reckoning, shown })
  const noLitres = withoutText(missing, 'litres')
  const noMass = withoutText(missing, 'mass')
  return (
    <div class="answers">
      <section class="answer" data-figures="why">
        <h3>Main body</h3>
        <p class="figure">
          {noLitres ? 'At least ' : ''}
          {shown.litresUp(need.bodyLitres)}
        </p>
        {noLitres ? (
          <p>
            <strong>
              {noLitres} {verbFor(missing, 'litres')} not in it.
            </strong>{' '}
            So far fullest {placeText(need.bodyAt, moments)}.
          </p>
        ) : (
          <>
            <p>
              Likely {likelyText(need, shown)}. Fullest {placeText(need.bodyAt, moments)}.
            </p>
            <p class="hint">{enoughText(need, shown)}.</p>
          </>
        )}
        <p class="hint">{rests.litres}</p>
        <Why about={{ kind: 'body-litres' }} figure="What fills it" onGo={onGo} />
      </section>
      <section class="answer" data-figures="why">
        <h3>Heaviest load</h3>
        <p class="figure">
          {noMass ? 'At least ' : ''}
          {shown.kg(need.peakLoadKg)}
        </p>
        {noMass ? (
          <p>
            <strong>
              {noMass} {verbFor(missing, 'mass')} not in it.
            </strong>
          </p>
        ) : null}
        <p>Without the pack, {placeText(need.peakAt, moments)}.</p>
        {noMass ? null : <p class="hint">At most {shown.kg(need.peakLoadSafeKg)} in about 9 of 10 cases.</p>}
        <p class="hint">{rests.load}</p>
        <Why about={{ kind: 'peak-load' }} figure="What it is made of" onGo={onGo} />
      </section>
    </div>
  )
}
