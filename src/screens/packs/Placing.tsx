// Where heavy things ride best in a pack: the moment about the hips now and with them against the back. Advice only.

import { Cautions } from '../../components/pieces'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import { COMFORT, newtonMetres, placingOf, placingWords, STUDIES } from '../../report/placing'
import { PlacingPicture } from './PlacingPicture'

interface PlacingProps {
  packIndex: number
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export function Placing({ packIndex, plan, reckoning, formats }: PlacingProps) {
  const pack = plan.packs[packIndex]!
  const placing = placingOf(plan, reckoning, pack)
  if (!placing) return <p>Nothing heavy is in the main body, so nothing is to be placed.</p>
  const words = placingWords(placing, { plan, reckoning, formats })
  return (
    <div class="placing" data-figures="why">
      <p>Advice, not a verdict: no answer rests on it.</p>
      <PlacingPicture placing={placing} words={words} name={pack.name} formats={formats} />
      <p>{words.now}</p>
      {words.after ? (
        <p>
          <strong>{words.after}</strong>
        </p>
      ) : (
        <p>Nothing inside is denser than the rest, so moving items closer would change little.</p>
      )}
      {words.lean ? <p>{words.lean}</p> : null}
      <p class="hint">{words.basis}</p>
      <ul class="studies" data-figures="cited">
        {STUDIES.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <Why
        about={{ kind: 'placing', pack: packIndex }}
        figure={`The ${newtonMetres(placing.now.momentNm)}, and sources`}
      />
      <Cautions cautions={[COMFORT]} />
    </div>
  )
}
