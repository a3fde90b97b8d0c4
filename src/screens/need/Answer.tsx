// The answer: how much room and how much load, when and where, with its likely range and what it is made of.

import { Why } from '../../parts/why'
import type { Reckoning } from '../../reckon'
import { placeText, type Shown } from '../../report'

interface AnswerProps {
  reckoning: Reckoning
  shown: Shown
  onGo: (path: string) => void
}

export function Answer({ reckoning, shown, onGo }: AnswerProps) {
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
        <Why about={{ kind: 'body-litres' }} figure="What fills it" onGo={onGo} />
      </section>
      <section class="answer">
        <h3>Heaviest load</h3>
        <p class="figure">{shown.kg(need.peakLoadKg)}</p>
        <p>Without the pack, {placeText(need.peakAt, moments)}.</p>
        <p class="hint">At most {shown.kg(need.peakLoadSafeKg)} in 9 of 10 cases.</p>
        <Why about={{ kind: 'peak-load' }} figure="What it is made of" onGo={onGo} />
      </section>
    </div>
  )
}
