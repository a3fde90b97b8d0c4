// Measuring a thing at home: by what it looks like, or by its insulation. The litres are put in by a tap.
// Loaded when it is opened; the readings stay with the panel, the result with the item.

import { useState } from 'preact/hooks'
import { Choice, LooseField, readQuantity, useSystem } from '../../components/fields'
import { Why } from '../../components/why'
import type { DraftItem } from '../../plan'
import { withLitres, withSizes } from '../../plan/litres'
import { countsAs, countsText, digitsWorth, type Method, methods } from '../../report/measuring'
import { bareUnitOf, formatQuantity } from '../../units'
import { useItemHome } from './item-home'
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
  const home = useItemHome()
  const [used, setUsed] = useState<number | null>(null)
  const fields = method.readings.map(reading => {
    const text = texts[reading.key] ?? ''
    return { ...reading, text, reading: readQuantity(text, { ...reading, system }) }
  })
  const values: Record<string, number> = {}
  for (const { key, reading, usual } of fields) {
    const value = 'value' in reading ? (reading.value ?? usual) : undefined
    if (value !== undefined) values[key] = value
  }
  const isComplete = fields.every(({ key }) => key in values)
  const isRigid = item.build === 'rigid' || item.holdsLitres !== undefined
  const outcome = isComplete ? method.measure(values, { soft: !isRigid }) : null
  const sizes = isRigid ? method.sizes?.(values) : undefined
  const digits = outcome?.ok ? digitsWorth(outcome.value.sigmaLitres) : 0
  const litres = (amount: number) => formatQuantity('volume', amount, { system, unit: 'L', digits })
  return (
    <>
      <p class="hint" data-figures="cited">
        {method.how}
      </p>
      <div class="fields">
        {fields.map(({ key, label, kind, text, reading, usual }) => (
          <LooseField
            key={key}
            label={label}
            unit={bareUnitOf(kind, system)}
            text={text}
            reading={reading}
            onText={typed => onText(key, typed)}
            hint={usual === undefined ? undefined : `Empty: ${formatQuantity(kind, usual, { system })}.`}
          />
        ))}
      </div>
      {outcome?.ok ? (
        <div class="measured" data-figures="why">
          <p>
            <strong>
              {litres(outcome.value.litres)} ± {litres(outcome.value.sigmaLitres)}
            </strong>{' '}
            each; two times in three within that. {countsText(outcome.value, method)}
          </p>
          <Rolled measured={outcome.value} litres={litres} />
          {sizes ? <p class="hint">Its size is put in as well. Packs then tells how it fits.</p> : null}
          <button
            type="button"
            class="primary"
            onClick={() => {
              home.edit(item.id, `${item.name || 'Item'}, measured`, of =>
                withSizes(withLitres(of, outcome.value.litres, countsAs(outcome.value, method)), sizes),
              )
              setUsed(outcome.value.litres)
            }}
          >
            Use {litres(outcome.value.litres)}
          </button>
          <Why
            about={{ kind: 'measured', method, readings: values, soft: !isRigid }}
            figure="What makes these litres"
          />
          <p role="status">{used === outcome.value.litres ? 'These are its litres now.' : ''}</p>
        </div>
      ) : null}
    </>
  )
}

/** What else is known of a mat: how thick the roll is, and what it takes laid flat. */
function Rolled({
  measured: { diameterCm, flatLitres },
  litres,
}: {
  measured: { diameterCm?: number; flatLitres?: number }
  litres: (amount: number) => string
}) {
  const system = useSystem()
  if (diameterCm === undefined || flatLitres === undefined) return null
  return (
    <p class="hint">
      The roll is {formatQuantity('length', diameterCm, { system, digits: 0 })} thick. Laid flat, or round the
      inside of the pack, the mat takes {litres(flatLitres)}.
    </p>
  )
}
