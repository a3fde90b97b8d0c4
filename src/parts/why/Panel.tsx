// What stands behind a figure: equation, inputs that lead to their fields, range, sources and gaps.

import sources from '../../../data/sources.json'
import { shownIn } from '../../report'
import {
  type About,
  type Explanation,
  explain,
  type Source,
  sourceText,
  standingText,
  type WhyInput,
} from '../../report/why'
import { openTrip, reckoned } from '../../store'
import { useSystem } from '../fields'
import { focusField, type Go } from './focus-field'

const REGISTER: Record<string, Source> = sources

export function Panel({ about, onGo }: { about: About; onGo?: Go | undefined }) {
  const shown = shownIn(useSystem())
  const open = reckoned.value
  if (!open?.reckoned.ok) return null
  const stopIds = (openTrip.value?.draft.trip.stops ?? []).map(stop => stop.id)
  const explanations = explain(about, { plan: open.plan, reckoning: open.reckoned.reckoning, shown, stopIds })
  if (explanations.length === 0)
    return <p class="hint">This figure is your own, or there is none for this plan.</p>
  return (
    <div class="why-panel">
      {explanations.map(explanation => (
        <One key={explanation.title} explanation={explanation} onGo={onGo} />
      ))}
    </div>
  )
}

function One({ explanation, onGo }: { explanation: Explanation; onGo: Go | undefined }) {
  const { title, equation, says, inputs, result, range, instead, sourceKeys, ignores, others } = explanation
  return (
    <div class="why-one">
      <p class="why-title">
        {title}: <strong>{result.text}</strong>
      </p>
      <p>
        <strong>{equation}.</strong> {says}
      </p>
      <dl class="why-inputs">
        {inputs.map(input => (
          <div key={input.label + input.value}>
            <dt>{input.label}</dt>
            <dd>
              <Value input={input} onGo={onGo} />
            </dd>
          </div>
        ))}
      </dl>
      {others ? <Others {...others} /> : null}
      {range.bounds.length || range.note ? (
        <p>
          <strong>Range.</strong> {range.bounds.map(({ text }) => `${text}. `)}
          {range.note}
        </p>
      ) : null}
      {instead ? <p class="why-instead">{instead}</p> : null}
      <p>
        <strong>It leaves out</strong> {ignores}
      </p>
      {sourceKeys.length ? (
        <ul class="why-sources">
          {sourceKeys.map(key => (
            <li key={key}>{sourceText(REGISTER[key]!)}</li>
          ))}
        </ul>
      ) : null}
    </div>
  )
}

function Value({ input: { label, value, path }, onGo }: { input: WhyInput; onGo: Go | undefined }) {
  if (!path || !onGo) return <>{value}</>
  const lead = () => {
    onGo(path)
    focusField(path)
  }
  return (
    <button type="button" class="link" aria-label={`${label}, ${value}: change it`} onClick={lead}>
      {value}
    </button>
  )
}

/** Each standing once, however many sources share it. */
const standingsOf = (keys: readonly string[]) =>
  [...new Set(keys.map(key => standingText(REGISTER[key]!.standing)))].join('; ')

function Others({ title, list, note }: NonNullable<Explanation['others']>) {
  return (
    <>
      <p>
        <strong>{title}</strong>
      </p>
      <dl class="why-inputs">
        {list.map(({ label, text, sourceKeys }) => (
          <div key={label}>
            <dt>
              {label}
              <span class="why-standing">{standingsOf(sourceKeys)}</span>
            </dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <p>{note}</p>
    </>
  )
}
