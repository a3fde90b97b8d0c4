// The answer: how much room and how much load, each with its likely range, and what to ask for in one sentence.

import { goTo } from '../../components/frame'
import { toField, Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import {
  type Formats,
  framelessLimit,
  type Missing,
  type MissingThing,
  placeText,
  takesNothing,
  withoutText,
} from '../../report'
import { askedBy } from '../../report/compare-packs'
import { basisOf, likelyLoadText, likelyText } from '../../report/confidence'
import { openTrip } from '../../store'

interface AnswerProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  missing: Missing
}

export function Answer({ plan, reckoning, formats, missing }: AnswerProps) {
  const { need } = reckoning
  const basis = basisOf({ plan, reckoning, formats })
  if (takesNothing(plan)) return <NoGear />
  return (
    <>
      <div class="answers columns">
        <section class="answer" data-figures="why">
          <h3>Main body</h3>
          <p class="figure">
            {missing.litres.length > 0 ? <small>At least </small> : null}
            <Why about={{ kind: 'body-litres' }} figure={formats.litresUp(need.bodyLitres)} title="Main body">
              <p>{basis.litres}</p>
            </Why>
          </p>
          {missing.litres.length > 0 ? (
            <Without things={missing.litres} text={withoutText(missing, 'litres')} />
          ) : (
            <p class="range">likely {likelyText(need, formats)}</p>
          )}
        </section>
        <section class="answer" data-figures="why">
          <h3>Heaviest load</h3>
          <p class="figure">
            {missing.mass.length > 0 ? <small>At least </small> : null}
            <Why
              about={{ kind: 'peak-load' }}
              figure={formats.kg(need.peakLoadFullWaterKg)}
              title="Heaviest load"
            >
              <p>{basis.load}</p>
            </Why>
          </p>
          {missing.mass.length > 0 ? (
            <Without things={missing.mass} text={withoutText(missing, 'mass')} />
          ) : (
            <p class="range">likely {likelyLoadText(need, formats)}</p>
          )}
        </section>
      </div>
      <AskFor {...{ plan, reckoning, formats }} />
    </>
  )
}

/** What is not counted, one tap from where it can be said. */
const Without = ({ things: [first], text }: { things: readonly MissingThing[]; text: string }) => (
  <p class="range">
    <button type="button" class="ask" onClick={() => toField(first!.path)}>
      {text}
    </button>
  </p>
)

/** "Ask for a frame rated 17.0 kg or more. Fullest and heaviest when you leave Larch Spring, day 2." */
function AskFor({ plan, reckoning, formats }: Omit<AnswerProps, 'missing'>) {
  const { need, moments } = reckoning
  const asked = askedBy([{ plan, reckoning }])
  if (!asked) return null
  const { wanted, atLeast } = asked
  const fullest = placeText(need.bodyAt, moments)
  const heaviest = placeText(need.peakFullWaterAt, moments)
  const trips = [{ name: openTrip.value?.draft.name ?? '', plan }]
  const rating = (
    <Why
      about={{ kind: 'asked', trips, packKg: null }}
      figure={<strong>{formats.kg(wanted.ratedKg)}</strong>}
      title="What to ask for"
    />
  )
  return (
    <p class="ask-for" data-figures="why">
      {wanted.frame ? (
        <>
          Ask for a <strong>frame</strong>
        </>
      ) : (
        <>
          {atLeast.mass ? 'Frame: can’t tell yet' : `A frame is optional by ${framelessLimit(plan)}`}. Ask for
          a pack
        </>
      )}{' '}
      rated {atLeast.mass ? 'at least ' : ''}
      {rating}
      {atLeast.mass ? '. ' : ' or more. '}
      {atLeast.mass || atLeast.litres ? 'So far fullest' : 'Fullest'}
      {fullest === heaviest ? ` and heaviest ${fullest}.` : ` ${fullest}; heaviest ${heaviest}.`}
    </p>
  )
}

function NoGear() {
  return (
    <div class="answers columns">
      <section class="answer">
        <h3>Can’t tell yet</h3>
        <p>Add the gear you carry to see the room and the load.</p>
        <button type="button" class="primary" onClick={() => goTo('gear')}>
          Add gear
        </button>
      </section>
    </div>
  )
}
