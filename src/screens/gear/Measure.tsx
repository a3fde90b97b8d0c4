// Measuring a thing at home: by what it looks like, or by its insulation. The litres are put in by a tap.
// Loaded when it is opened; the readings stay with the panel, the result with the item.

import { useState } from 'preact/hooks'
import { Choice, useSystem } from '../../parts/fields'
import { LooseField, readQuantity } from '../../parts/loose'
import type { DraftItem } from '../../plan'
import { changeItem, withLitres } from '../../plan/litres'
import { type Method, methods } from '../../report/measuring'
import { actions } from '../../store'
import { bareUnitOf, formatQuantity } from '../../units'
import { MeasureSqueeze } from './MeasureSqueeze'
import type { TextsProps } from './texts'
import './gear.css'

const INSULATED = 'insulated'
const WAYS = [
  ...methods.map(({ id, label }) => ({ value: id, label })),
  { value: INSULATED, label: 'Insulated' },
]

export function Measure({ item }: { item: DraftItem }) {
  const [way, setWay] = useState('roll')
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({})
  const method = methods.find(({ id }) => id === way)
  const onText = (key: string, text: string) => setTexts({ ...texts, [key]: text })
  return (
    <div class="measure">
      <Choice label="Measure it as" options={WAYS} chosen={way} onChoose={setWay} />
      {method ? (
        <ByMethod key={way} method={method} item={item} texts={texts} onText={onText} />
      ) : (
        <MeasureSqueeze item={item} texts={texts} onText={onText} />
      )}
    </div>
  )
}

function ByMethod({ method, item, texts, onText }: TextsProps & { method: Method }) {
  const system = useSystem()
  const [used, setUsed] = useState<number | null>(null)
  const fields = method.readings.map(reading => {
    const text = texts[reading.key] ?? ''
    return { ...reading, text, reading: readQuantity(text, { ...reading, system }) }
  })
  const values: Record<string, number> = {}
  for (const { key, reading } of fields)
    if ('value' in reading && reading.value !== undefined) values[key] = reading.value
  const isComplete = fields.every(({ key }) => key in values)
  const outcome = isComplete ? method.measure(values, { soft: item.build !== 'rigid' }) : null
  const litres = (amount: number, digits = 2) =>
    formatQuantity('volume', amount, { system, unit: 'L', digits })
  return (
    <>
      <p class="hint">{method.how}</p>
      <div class="fields">
        {fields.map(({ key, label, kind, text, reading }) => (
          <LooseField
            key={key}
            label={label}
            unit={bareUnitOf(kind, system)}
            text={text}
            reading={reading}
            onText={typed => onText(key, typed)}
          />
        ))}
      </div>
      {outcome?.ok ? (
        <div class="measured">
          <p>
            <strong>
              {litres(outcome.value.litres)} ± {litres(outcome.value.sigmaLitres)}
            </strong>{' '}
            each; two times in three within that.
          </p>
          <button
            type="button"
            class="primary"
            onClick={() => {
              actions.edit(`${item.name || 'Item'}, measured`, draft =>
                changeItem(draft, item.id, of => withLitres(of, outcome.value.litres, method.litresFrom)),
              )
              setUsed(outcome.value.litres)
            }}
          >
            Use {litres(outcome.value.litres)}
          </button>
          <p role="status">{used === outcome.value.litres ? 'These are its litres now.' : ''}</p>
        </div>
      ) : null}
    </>
  )
}
