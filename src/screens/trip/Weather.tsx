// The weather of the whole trip, and of a leg that differs from it.

import { Choice, Field, useField } from '../../components/fields'
import { FIELDS } from '../../plan'
import { openTrip } from '../../store'

export function Weather() {
  return (
    <details class="more section">
      <summary>
        <h3>Weather</h3>
      </summary>
      <p class="hint">
        For the whole trip; a leg may differ. Heat warnings rest on it, and water where that is worked out
        from heat.
      </p>
      <div class="fields">
        <Field path="trip/weather/airC" />
        <Field path="trip/weather/humidity" />
      </div>
      <Field path="trip/weather/sun" />
      <Field path="trip/wet" />
    </details>
  )
}

const OF_THE_TRIP = 'the trip’s weather'

/** Air, humidity and sun of one leg; `at` makes the path of its fields. */
export function LegWeather({ at }: { at: (field: string) => string }) {
  const weather = openTrip.value?.draft.trip.weather
  const sun = useField(at('sun'))
  const row = FIELDS.weather.humidity
  return (
    <>
      <Field path={at('airC')} usual={weather?.airC} usualFrom={OF_THE_TRIP} />
      <Field
        path={at('humidity')}
        usual={weather?.humidity ?? row.usual}
        usualFrom={weather?.humidity === undefined ? row.origin : OF_THE_TRIP}
      />
      <Choice
        path={at('sun')}
        label={FIELDS.leg.sun.label}
        options={SUN}
        chosen={typeof sun.value === 'boolean' ? (sun.value ? 'yes' : 'no') : 'trip'}
        onChoose={chosen => sun.set(chosen === 'trip' ? undefined : chosen === 'yes')}
      />
    </>
  )
}

const SUN = [
  { value: 'trip', label: 'As the trip' },
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const
