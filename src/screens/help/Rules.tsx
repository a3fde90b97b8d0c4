// Walking time, energy, water and food: the rule behind each, what it was made for and how much of it was read.

import { useMemo } from 'preact/hooks'
import sources from '../../../data/sources.json'
import { OtherPlan, Why } from '../../components/why'
import { exampleOfRules, rulesIn } from '../../report/help'
import { type Source, standingsOf } from '../../report/why'
import type { ContentsProps } from './contents-props'

const REGISTER: Record<string, Source> = sources

export function Rules({ formats }: ContentsProps) {
  const example = useMemo(exampleOfRules, [])
  const rules = useMemo(() => rulesIn(example, formats), [example, formats])
  return (
    <OtherPlan.Provider value={example}>
      <dl class="help-rules">
        {rules.map(({ about, explanation: { title, equation, result, range, sourceKeys } }) => (
          <div key={title}>
            <dt>
              {title}: <Why about={about} figure={result.text} title={title} />
            </dt>
            <dd>
              {equation}. {range.bounds.map(({ text }) => `${text}. `)}
              <span class="hint">{standingsOf(sourceKeys, REGISTER)}</span>
            </dd>
          </div>
        ))}
      </dl>
    </OtherPlan.Provider>
  )
}
