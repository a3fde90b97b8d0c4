// One stop and the leg that leads to it.

import { Field, useFormats } from '../../components/fields'
import { Why } from '../../components/why'
import { type DraftStop, fieldPath, setField } from '../../plan'

import { kcalRoughText } from '../../report/why'
import { actions, openTrip, reckoned } from '../../store'
import { LegWeather } from './Weather'

interface Props {
  stop: DraftStop
  first: boolean
  last: boolean
  /** Walking hours the app computes for the leg; null while it has none. */
  computedHours: number | null
}

export function StopEditor({ stop, first, last, computedHours }: Props) {
  const at = (...parts: string[]) => fieldPath('trip', 'stops', stop.id, ...parts)
  return (
    <>
      <Field path={at('name')} />
      {first ? null : (
        <LegFields stop={stop} at={(...parts) => at('leg', ...parts)} computedHours={computedHours} />
      )}
      {first || last ? null : <StayFields at={at} />}
    </>
  )
}

interface LegProps extends AtProps {
  stop: DraftStop
  computedHours: number | null
}

function LegFields({ stop, at, computedHours }: LegProps) {
  return (
    <fieldset>
      <legend>The leg that leads here</legend>
      <div class="fields">
        <Field path={at('km')} />
        <Field path={at('ascentM')} />
        <Field path={at('descentM')} />
        <Field path={at('hours')} usual={computedHours ?? undefined} />
      </div>
      {stop.leg?.hours === undefined ? null : (
        <button
          type="button"
          class="quiet"
          onClick={() =>
            // An edit of its own: undo brings the typed time back, however fast one presses.
            actions.edit('Use the computed time', draft => setField(draft, at('hours'), undefined))
          }
        >
          Use the computed time
        </button>
      )}
      <LegFigures id={stop.id} />
      <details class="more">
        <summary>Weather and ground</summary>
        <div class="fields">
          <LegWeather at={at} />
          <Field path={at('ground')} />
        </div>
      </details>
    </fieldset>
  )
}

/** What the engine makes of the leg, each figure open to be asked why. */
function LegFigures({ id }: { id: string }) {
  const formats = useFormats()
  const open = reckoned.value
  const leg = (openTrip.value?.draft.trip.stops.findIndex(stop => stop.id === id) ?? 0) - 1
  const figures = open?.reckoned.ok ? open.reckoned.reckoning.legs[leg] : undefined
  if (!open || !figures) return null
  const { hours, kcal, litresPerHour, waterLitres } = figures
  const fromHeat = open.plan.trip.water.litresPerHour === 'from-heat'
  return (
    <div data-figures="why">
      <Why about={{ kind: 'walking-time', leg }} figure={`Walking ${formats.hours(hours)}`} />
      {kcal === null ? null : (
        <Why about={{ kind: 'leg-energy', leg }} figure={`Energy ${kcalRoughText(kcal)}`} />
      )}
      <Why
        about={{ kind: 'leg-water', leg }}
        figure={
          fromHeat
            ? `Water ${formats.flow(litresPerHour)}, ${formats.water(waterLitres)} in all`
            : `Water ${formats.water(waterLitres)} on the leg`
        }
      />
    </div>
  )
}

interface AtProps {
  at: (...parts: string[]) => string
}

function StayFields({ at }: AtProps) {
  return (
    <>
      <Field path={at('water')} />
      <div class="fields">
        <Field path={at('nights')} />
      </div>
      <Field path={at('meals')} />
      <Field path={at('resupply')} />
      <Field path={at('shop')} />
    </>
  )
}
