// A set-up judged in words: the answer, the sentence that decides it, the rest and the figures behind one tap.

import { useState } from 'preact/hooks'
import { later } from '../../components/frame'
import { WhenOpen } from '../../components/pieces'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { Reckoning, SetupReckoning } from '../../reckon'
import { ANSWERS, type Formats, kindOfVerdict, missingOf, setupInWords, type Verdict } from '../../report'
import { helpQuestion, NOT_BEATEN } from '../../report/compare-packs'
import { type Basis, basisFor, basisOf } from '../../report/confidence'
import { actions, lastLabel } from '../../store'
import { FitLine, Fitting } from './Fitting'
import { Help } from './Help'
import { Reach } from './Reach'
import { setupDomId } from './setup-id'

const Placing = later(async () => (await import('./Placing')).Placing)

interface Props {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  /** Of each of `reckoning.packs`, whether no other beats it and that tells it from most. */
  notBeaten: (setupIndex: number) => boolean
}

export function Verdicts({ packIndex, ...props }: Props & { packIndex: number }) {
  const { reckoning } = props
  const setups = reckoning.packs.flatMap((setup, i) => (setup.pack === packIndex ? [{ setup, i }] : []))
  return (
    <>
      {setups.map(({ setup, i }) => (
        <SetupVerdict key={setup.index} setup={setup} setupIndex={i} named={setups.length > 1} {...props} />
      ))}
      <div class="pack-advice" data-figures="why">
        <WhenOpen class="why" summary="Where heavy items go">
          {() => <Placing packIndex={packIndex} {...props} />}
        </WhenOpen>
      </div>
    </>
  )
}

function SetupVerdict({
  setup,
  setupIndex,
  named,
  plan,
  reckoning,
  formats,
  notBeaten,
}: Props & { setup: SetupReckoning; setupIndex: number; named: boolean }) {
  // What was done about this set-up, as long as it is the last thing that was done.
  const [done, setDone] = useState<string | null>(null)
  const { answer, verdicts } = setupInWords(setup, { plan, reckoning, formats })
  const [first, ...others] = verdicts
  const { always, rest } = roomAndLoad(first, others)
  const basis = basisOf({ plan, reckoning, formats })
  const question = helpQuestion(setup, plan)
  return (
    <div class="verdict" data-figures="why" data-answer={answer} id={setupDomId(setupIndex)} tabIndex={-1}>
      <p class="verdict-answer">
        <span aria-hidden="true">{ANSWERS[answer].mark} </span>
        {named ? <bdi>{setup.setup}: </bdi> : null}
        {ANSWERS[answer].words}
      </p>
      <p>
        <strong>{first.lead}</strong>
        {first.rest}
      </p>
      {always.map(verdict => (
        <p key={verdict.code}>
          <strong>{verdict.lead}</strong>
          {verdict.rest}
        </p>
      ))}
      {missingOf(plan).gear ? null : <p class="hint">{basisFor(first.code, basis)}</p>}
      <FitLine others={rest} />
      {notBeaten(setupIndex) ? <p class="not-beaten">{NOT_BEATEN}</p> : null}
      {done && lastLabel.value === done ? (
        <p class="done" role="status">
          Done: <bdi>{done}</bdi>.{' '}
          <button type="button" class="quiet" onClick={() => actions.undo()}>
            Undo
          </button>
        </p>
      ) : null}
      {question ? <Help {...{ question, setupIndex, plan, reckoning, formats }} onDone={setDone} /> : null}
      <Why about={{ kind: 'set-up', setup: setupIndex }} figure="All reasons and figures">
        <ul class="reasons">
          {rest.map(verdict => (
            <li key={verdict.code}>
              <strong>{verdict.lead}</strong>
              {verdict.rest}
            </li>
          ))}
        </ul>
        <Fitting packIndex={setup.pack} plan={plan} formats={formats} />
        {allBases(first.code, others, basis).map(text => (
          <p key={text} class="hint">
            {text}
          </p>
        ))}
      </Why>
      <Reach {...{ setupIndex, plan, reckoning, formats }} />
    </div>
  )
}

/**
 * Room and load are always in view, whichever of them decides, and by how much it is too heavy without a frame, which is
 * the more where its rating is passed too; the other verdicts are one tap away.
 */
function roomAndLoad(first: Verdict, others: Verdict[]): { always: Verdict[]; rest: Verdict[] } {
  const missing = others.filter(({ code }) => code === 'mass-missing' || code === 'both-missing')
  const about = ({ code }: Verdict) => kindOfVerdict(code).about
  const halves = (['room', 'load'] as const).flatMap(half =>
    about(first) === half ? [] : others.filter(verdict => about(verdict) === half).slice(0, 1),
  )
  const frameless = others.filter(verdict => verdict.code === 'frameless-overloaded')
  const always = [...new Set([...missing, ...halves, ...frameless])]
  return { always, rest: others.filter(verdict => !always.includes(verdict)) }
}

/** What the other verdicts rest on, once each, where that is something else than the first one's. */
function allBases(first: Verdict['code'], others: Verdict[], basis: Basis): string[] {
  const said = new Set(others.map(({ code }) => basisFor(code, basis)))
  said.delete(basisFor(first, basis))
  return [...said]
}
