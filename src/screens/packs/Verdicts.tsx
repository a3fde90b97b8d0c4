// A set-up judged in words: the answer, the sentence that decides it, the rest and the figures behind one tap.

import { useState } from 'preact/hooks'
import type { Plan } from '../../plan'
import type { Reckoning, SetupReckoning } from '../../reckon'
import { type Shown, setupInWords } from '../../report'
import { NOT_BEATEN } from '../../report/choosing'
import { actions, lastLabel } from '../../store'
import { Help } from './Help'
import { Reach } from './Reach'
import { setupDomId } from './setup-id'

interface Props {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
  /** For each of `reckoning.packs`, whether no other beats it. */
  notBeaten: boolean[]
}

export function Verdicts({ packIndex, ...props }: Props & { packIndex: number }) {
  const { reckoning } = props
  const setups = reckoning.packs.flatMap((setup, i) => (setup.pack === packIndex ? [{ setup, i }] : []))
  return (
    <>
      {setups.map(({ setup, i }) => (
        <SetupVerdict key={setup.index} setup={setup} setupIndex={i} named={setups.length > 1} {...props} />
      ))}
    </>
  )
}

function SetupVerdict({
  setup,
  setupIndex,
  named,
  plan,
  reckoning,
  shown,
  notBeaten,
}: Props & { setup: SetupReckoning; setupIndex: number; named: boolean }) {
  // What was done about this set-up, as long as it is the last thing that was done.
  const [done, setDone] = useState<string | null>(null)
  const { answer, verdicts } = setupInWords(setup, { plan, reckoning, shown })
  const [first, ...rest] = verdicts
  return (
    <div class="verdict" data-suffices={setup.suffices} id={setupDomId(setupIndex)} tabIndex={-1}>
      <p class="verdict-answer">
        {named ? <bdi>{setup.setup}: </bdi> : null}
        {answer}
      </p>
      <p>
        <strong>{first.lead}</strong>
        {first.rest}
      </p>
      {notBeaten[setupIndex] ? <p class="not-beaten">{NOT_BEATEN}</p> : null}
      {done && lastLabel.value === done ? (
        <p class="done" role="status">
          Done: <bdi>{done}</bdi>.{' '}
          <button type="button" class="quiet" onClick={() => actions.undo()}>
            Undo
          </button>
        </p>
      ) : null}
      {setup.suffices ? null : <Help {...{ setupIndex, plan, reckoning, shown }} onDone={setDone} />}
      <details class="why">
        <summary>All reasons and figures</summary>
        <ul class="reasons">
          {rest.map(verdict => (
            <li key={verdict.code}>
              <strong>{verdict.lead}</strong>
              {verdict.rest}
            </li>
          ))}
        </ul>
        <Figures setup={setup} shown={shown} currency={plan.packs[setup.pack]?.currency ?? ''} />
      </details>
      <Reach {...{ setupIndex, plan, reckoning, shown }} />
    </div>
  )
}

function Figures({ setup, shown, currency }: { setup: SetupReckoning; shown: Shown; currency: string }) {
  const signed = (value: number, format: (value: number) => string) =>
    value < 0 ? `short by ${format(-value)}` : `${format(value)} to spare`
  const rows: [string, string | null][] = [
    ['Room', signed(setup.bodyMarginLitres, shown.litres)],
    ['Against its rating', setup.ratedMarginKg === null ? null : signed(setup.ratedMarginKg, shown.kg)],
    ['Carried at the heaviest', shown.kg(setup.carriedKg)],
    ['Pack mass for each litre', shown.gramsPerLitre(setup.gramsPerLitre)],
    [
      'Pack mass for each kg rated',
      setup.gramsPerRatedKg === null ? null : shown.gramsPerKg(setup.gramsPerRatedKg),
    ],
    [
      'Price for each litre',
      setup.pricePerLitre === null ? null : `${setup.pricePerLitre.toFixed(2)} ${currency}`,
    ],
    [
      'Holds and bears food for',
      setup.reachDays === null ? null : `${(Math.floor(setup.reachDays * 10) / 10).toFixed(1)} days`,
    ],
  ]
  return (
    <dl class="facts">
      {rows.map(([name, value]) =>
        value === null ? null : (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ),
      )}
    </dl>
  )
}
