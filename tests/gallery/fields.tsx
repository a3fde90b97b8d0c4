import { useState } from 'preact/hooks'
import {
  Choice,
  Field,
  LooseField,
  QuantityField,
  readQuantity,
  SelectOne,
  UnitsChoice,
} from '../../src/components/fields'
import { FileButton } from '../../src/components/files'
import { Tick } from '../../src/components/pieces'
import { LIMITS } from '../../src/plan'
import { openTrip } from '../../src/store'
import { State } from './state'

const none = () => undefined

export function Buttons() {
  return (
    <section>
      <h2>Buttons</h2>
      <State name="primary, usual, quiet, link, file; what cannot be pressed">
        <div class="actions">
          <button type="button" class="primary">
            Use these stops
          </button>
          <button type="button">Packing day</button>
          <button type="button" class="quiet">
            Add a stop
          </button>
          <button type="button" class="link">
            Leave without changes
          </button>
          <FileButton label="Choose a file" accept=".gpx" onFile={none} />
          <FileButton label="Choose another" accept=".gpx" quiet onFile={none} />
          <button type="button" disabled>
            Redo
          </button>
          <button type="button" class="primary" disabled>
            Make the stops
          </button>
        </div>
      </State>
      <State name="with a long text">
        <button type="button" class="quiet">
          Add a stop after the hut above the lake with the name that never ends, in two languages
        </button>
      </State>
    </section>
  )
}

const FOOD = { kind: 'mass', label: 'Food left over', limit: LIMITS.item.massKg } as const

function Loose({ first }: { first: string }) {
  const [text, setText] = useState(first)
  const reading = readQuantity(text, { ...FOOD, system: 'metric' })
  return <LooseField {...{ text, reading }} label="Food left over" unit="kg" onText={setText} />
}

export function Fields() {
  const [units, setUnits] = useState<'day' | 'dark'>('day')
  const [ground, setGround] = useState('trail')
  const [ticked, setTicked] = useState(true)
  const stops = openTrip.value!.draft.trip.stops
  const at = (field: string) => `trip/stops/${stops[1]!.id}/${field}`
  return (
    <section>
      <h2>Fields</h2>
      <State name="text; numbers: typed, by default, read in another unit, not read, out of range">
        <Field path="name" />
        <div class="fields">
          <Field path="carrier/massKg" />
          <Field path="carrier/loadShareLimit" usual={0.2} usualFrom="common practice" />
          <Loose first="2 lb" />
          <Field path="carrier/heightCm" />
          <Loose first="9000" />
          <QuantityField
            path="trip/water/reserveLitres"
            label="A label that needs more than one line"
            kind="volume"
            limit={LIMITS.water.reserveLitres}
          />
        </div>
      </State>
      <State name="stepped: in the middle, at its end">
        <div class="fields">
          <Field path={at('nights')} />
          <Field path={`trip/stops/${stops[3]!.id}/nights`} />
        </div>
      </State>
      <State name="a few choices, many, yes or no, ticks">
        <Choice
          label="Day or dark"
          options={[
            { value: 'day', label: 'Day' },
            { value: 'dark', label: 'Dark' },
          ]}
          chosen={units}
          onChoose={setUnits}
        />
        <UnitsChoice />
        <Field path={at('water')} />
        <SelectOne
          label="Ground"
          options={[
            { value: 'trail', label: 'Trail' },
            { value: 'sand', label: 'Loose sand' },
          ]}
          chosen={ground}
          onChoose={setGround}
        />
        <Field path={at('resupply')} />
        <Field path="trip/wet" />
        <ul class="rows">
          <li>
            <Tick isOn={ticked} onTick={setTicked}>
              Sleeping bag in its sack
            </Tick>
          </li>
          <li>
            <Tick isOn={false} within onTick={none}>
              Pot with stove inside
            </Tick>
          </li>
        </ul>
      </State>
    </section>
  )
}
