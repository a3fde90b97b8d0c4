// The weather of the whole trip, and of a leg that differs from it.

import { Choice, QuantityField, ToggleField, useField } from '../../components/fields'
import { defaults, LIMITS } from '../../plan'
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
        <QuantityField
          path="trip/weather/airC"
          label="Air"
          kind="temperature"
          limit={LIMITS.leg.airC}
          hint="The hottest you expect."
        />
        <QuantityField
          path="trip/weather/humidity"
          label="Humidity"
          kind="share"
          limit={LIMITS.leg.humidity}
          usual={defaults.WEATHER.humidity}
          usualFrom={defaults.DEFAULT_ORIGINS.humidity}
        />
      </div>
      <ToggleField path="trip/weather/sun" label="Full sun, little shade" usual={defaults.WEATHER.sun} />
      <ToggleField
        path="trip/wet"
        label="Rain is likely: a pack that is not sealed gets a liner"
        usual={defaults.WET}
      />
    </details>
  )
}

const OF_THE_TRIP = 'the trip’s weather'

/** Air, humidity and sun of one leg; `at` makes the path of its fields. */
export function LegWeather({ at }: { at: (field: string) => string }) {
  const weather = openTrip.value?.draft.trip.weather
  const sun = useField(at('sun'))
  return (
    <>
      <QuantityField
        path={at('airC')}
        label="Air"
        kind="temperature"
        limit={LIMITS.leg.airC}
        usual={weather?.airC}
        usualFrom={OF_THE_TRIP}
      />
      <QuantityField
        path={at('humidity')}
        label="Humidity"
        kind="share"
        limit={LIMITS.leg.humidity}
        usual={weather?.humidity ?? defaults.WEATHER.humidity}
        usualFrom={weather?.humidity === undefined ? defaults.DEFAULT_ORIGINS.humidity : OF_THE_TRIP}
      />
      <Choice
        path={at('sun')}
        label="Full sun"
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
