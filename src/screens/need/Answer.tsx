// The answer: how much room and how much load, when and where, with its likely range and what it rests on.

import { goTo } from '../../components/frame'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import {
  type Formats,
  leastText,
  type Missing,
  notInItText,
  placeText,
  safeLoadKg,
  takesNothing,
} from '../../report'
import { basisOf, enoughText, likelyText } from '../../report/confidence'

interface AnswerProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  missing: Missing
}

export function Answer({ plan, reckoning, formats, missing }: AnswerProps) {
  const { need, moments } = reckoning
  const basis = basisOf({ plan, reckoning, formats })
  const noLitres = notInItText(missing, 'litres')
  const noMass = notInItText(missing, 'mass')
  if (takesNothing(plan)) return <NoGear />
  return (
    <div class="answers">
      <section class="answer" data-figures="why">
        <h3>Main body</h3>
        <p class="figure">
          {noLitres ? 'At least ' : ''}
          {formats.litresUp(need.bodyLitres)}
        </p>
        {noLitres ? (
          <p>
            <strong>{noLitres}.</strong> So far fullest {placeText(need.bodyAt, moments)}.
          </p>
        ) : (
          <>
            <p>
              Likely {likelyText(need, formats)}. Fullest {placeText(need.bodyAt, moments)}.
            </p>
            <p class="hint">{enoughText(need, formats)}.</p>
          </>
        )}
        <p class="hint">{basis.litres}</p>
        <Why about={{ kind: 'body-litres' }} figure="What fills it" />
      </section>
      <section class="answer" data-figures="why">
        <h3>Heaviest load</h3>
        <p class="figure">
          {noMass ? 'At least ' : ''}
          {formats.kg(need.peakLoadFullWaterKg)}
        </p>
        {noMass ? (
          <p>
            <strong>{noMass}.</strong>
          </p>
        ) : null}
        <p>Without the pack, {placeText(need.peakFullWaterAt, moments)}.</p>
        {need.waterShortLitres > 0 ? (
          <p>
            With all the water wanted; {leastText(missing, 'mass', formats.kg(need.peakLoadKg))} with what
            your containers hold.
          </p>
        ) : null}
        {noMass ? null : <p class="hint">At most {formats.kg(safeLoadKg(need))} in about 9 of 10 cases.</p>}
        <p class="hint">{basis.load}</p>
        <Why about={{ kind: 'peak-load' }} figure="What it is made of" />
      </section>
    </div>
  )
}

function NoGear() {
  return (
    <div class="answers">
      <section class="answer">
        <h3>Can’t tell yet</h3>
        <p>No gear yet: add what you carry to see how much room and what load this trip asks for.</p>
        <button type="button" class="primary" onClick={() => goTo('gear')}>
          Add gear
        </button>
      </section>
    </div>
  )
}
