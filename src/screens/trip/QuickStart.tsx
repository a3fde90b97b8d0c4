// The quick way in: a few numbers make the stops of a trip for someone who has no detail yet.

import { useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { QUICK_DAY, type QuickTrip, quickTrip } from '../../plan'
import { actions, newId } from '../../store'
import { bareUnitOf, parseQuantity, type Quantity, type System } from '../../units'

type Inputs = Required<QuickTrip>

interface Question {
  field: keyof Inputs
  label: string
  kind: Quantity
  start: Record<System, string>
  hint?: string
}

const QUESTIONS: Question[] = [
  { field: 'days', label: 'Days', kind: 'count', start: { metric: '4', us: '4' } },
  {
    field: 'kmPerDay',
    label: 'Distance a day',
    kind: 'distance',
    start: { metric: String(QUICK_DAY.kmPerDay), us: '9' },
  },
  {
    field: 'ascentMPerDay',
    label: 'Climb a day',
    kind: 'climb',
    start: { metric: String(QUICK_DAY.ascentMPerDay), us: '1600' },
  },
  {
    field: 'dryStretchDays',
    label: 'Longest stretch without water, days',
    kind: 'count',
    start: { metric: '1', us: '1' },
    hint: '1: water at every camp. 2: one dry camp.',
  },
  {
    field: 'resupplyEveryDays',
    label: 'Resupply every so many days',
    kind: 'count',
    start: { metric: '0', us: '0' },
    hint: '0: never.',
  },
]

export function QuickStart({ onDone }: { onDone?: () => void }) {
  const system = useSystem()
  const [texts, setTexts] = useState<Partial<Record<keyof Inputs, string>>>({})
  const readings = QUESTIONS.map(question => {
    const text = texts[question.field] ?? question.start[system]
    return { ...question, text, parsed: parseQuantity(question.kind, text, { system }) }
  })
  const complete = readings.every(({ parsed }) => parsed.ok && !parsed.empty)

  function make() {
    const inputs = Object.fromEntries(
      readings.map(({ field, parsed }) => [field, parsed.ok && !parsed.empty ? parsed.value : 0]),
    ) as unknown as Inputs
    actions.edit('Make the stops', draft => quickTrip(draft, inputs, newId))
    onDone?.()
  }

  return (
    <fieldset class="quick">
      <legend>Stops from a few numbers</legend>
      <div class="fields">
        {readings.map(({ field, label, kind, hint, text, parsed }) => {
          const unit = bareUnitOf(kind, system)
          return (
            <div class="field" key={field}>
              <label for={`quick-${field}`}>
                {label}
                {unit === 'x' ? '' : ` (${unit})`}
              </label>
              <input
                id={`quick-${field}`}
                type="text"
                inputMode="decimal"
                autocomplete="off"
                value={text}
                aria-invalid={parsed.ok ? undefined : 'true'}
                aria-describedby={`quick-${field}-hint`}
                onInput={event => setTexts({ ...texts, [field]: event.currentTarget.value })}
              />
              <p id={`quick-${field}-hint`} class={parsed.ok ? 'hint' : 'problem'}>
                {parsed.ok ? hint : parsed.message}
              </p>
            </div>
          )
        })}
      </div>
      <button type="button" class="primary" disabled={!complete} onClick={make}>
        Make the stops
      </button>
    </fieldset>
  )
}
