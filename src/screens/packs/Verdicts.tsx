// A set-up judged in words: the answer, the sentence that decides it, the rest and the figures behind one tap.

import type { Plan } from '../../plan'
import type { Reckoning, SetupReckoning } from '../../reckon'
import { type Shown, setupInWords } from '../../report'

interface Props {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
}

export function Verdicts({ packIndex, plan, reckoning, shown }: Props & { packIndex: number }) {
  const setups = reckoning.packs.filter(setup => setup.pack === packIndex)
  return (
    <>
      {setups.map(setup => (
        <SetupVerdict
          key={setup.index}
          setup={setup}
          named={setups.length > 1}
          {...{ plan, reckoning, shown }}
        />
      ))}
    </>
  )
}

function SetupVerdict({
  setup,
  named,
  plan,
  reckoning,
  shown,
}: Props & { setup: SetupReckoning; named: boolean }) {
  const { answer, verdicts } = setupInWords(setup, { plan, reckoning, shown })
  const [first, ...rest] = verdicts
  return (
    <div class="verdict" data-suffices={setup.suffices}>
      <p class="verdict-answer">
        {named ? <bdi>{setup.setup}: </bdi> : null}
        {answer}
      </p>
      <p>
        <strong>{first.lead}</strong>
        {first.rest}
      </p>
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
