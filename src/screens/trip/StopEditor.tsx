// One stop and the leg that leads to it.

import {
  ChoiceField,
  QuantityField,
  SelectField,
  TextField,
  ToggleField,
  useSystem,
} from '../../components/fields'
import { Why } from '../../components/why'
import { type DraftStop, defaults, fieldPath, LIMITS, setField } from '../../plan'
import { formatsIn } from '../../report'
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
      <TextField path={at('name')} label="Name" />
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
        <QuantityField path={at('km')} label="Distance" kind="distance" limit={LIMITS.leg.km} />
        <QuantityField
          path={at('ascentM')}
          label="Climb"
          kind="climb"
          limit={LIMITS.leg.ascentM}
          usual={defaults.LEG.ascentM}
        />
        <QuantityField
          path={at('descentM')}
          label="Descent"
          kind="climb"
          limit={LIMITS.leg.descentM}
          usual={defaults.LEG.descentM}
        />
        <QuantityField
          path={at('hours')}
          label="Walking time"
          kind="duration"
          limit={LIMITS.leg.hours}
          usual={computedHours ?? undefined}
          usualFrom={defaults.DEFAULT_ORIGINS.pace}
        />
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
          <SelectField
            path={at('ground')}
            label="Ground"
            usual={defaults.LEG.ground}
            options={[
              { value: 'paved', label: 'Paved' },
              { value: 'trail', label: 'Trail' },
              { value: 'rough', label: 'Rough path' },
              { value: 'brush', label: 'Off the path' },
              { value: 'sand', label: 'Loose sand' },
            ]}
          />
        </div>
      </details>
    </fieldset>
  )
}

/** What the engine makes of the leg, each figure open to be asked why. */
function LegFigures({ id }: { id: string }) {
  const shown = formatsIn(useSystem())
  const open = reckoned.value
  const leg = (openTrip.value?.draft.trip.stops.findIndex(stop => stop.id === id) ?? 0) - 1
  const figures = open?.reckoned.ok ? open.reckoned.reckoning.legs[leg] : undefined
  if (!open || !figures) return null
  const { hours, kcal, litresPerHour, waterLitres } = figures
  const fromHeat = open.plan.trip.water.litresPerHour === 'from-heat'
  return (
    <div data-figures="why">
      <Why about={{ kind: 'walking-time', leg }} figure={`Walking ${shown.hours(hours)}`} />
      {kcal === null ? null : (
        <Why about={{ kind: 'leg-energy', leg }} figure={`Energy ${kcalRoughText(kcal)}`} />
      )}
      <Why
        about={{ kind: 'leg-water', leg }}
        figure={
          fromHeat
            ? `Water ${shown.flow(litresPerHour)}, ${shown.water(waterLitres)} in all`
            : `Water ${shown.water(waterLitres)} on the leg`
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
      <ChoiceField
        path={at('water')}
        label="Water here"
        usual={defaults.STOP.water}
        options={[
          { value: 'sure', label: 'Sure' },
          { value: 'doubtful', label: 'Doubtful' },
          { value: 'none', label: 'None' },
        ]}
      />
      <div class="fields">
        <QuantityField
          path={at('nights')}
          label="Nights"
          kind="count"
          limit={LIMITS.stop.nights}
          usual={defaults.STOP.nights}
        />
      </div>
      <ChoiceField
        path={at('meals')}
        label="Meals here"
        usual={defaults.STOP.meals}
        options={[
          { value: 'carried', label: 'From the pack' },
          { value: 'provided', label: 'Provided' },
        ]}
      />
      <ToggleField
        path={at('resupply')}
        label="Resupply here: food is bought again"
        usual={defaults.STOP.resupply}
      />
      <ToggleField path={at('shop')} label="A shop is here: food can be bought" usual={defaults.STOP.shop} />
    </>
  )
}
