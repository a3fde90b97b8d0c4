// The weather of the whole trip, and of a leg that differs from it.

import { Choice, Field, useField, useFormats } from '../../components/fields'
import { type DraftLeg, type DraftStop, FIELDS, LEG_WEATHER, withOneAir, withTripWeather } from '../../plan'
import type { Formats } from '../../report'
import { actions, openTrip } from '../../store'
import { counted } from '../../units'
import type { Detail } from '../rows'
import { Fold } from './Fold'

export function Weather({ onDetail }: Pick<Detail, 'onDetail'>) {
  const formats = useFormats()
  const { weather = {}, stops = [] } = openTrip.value?.draft.trip ?? {}
  const differing = stops.filter(({ leg }) => leg && LEG_WEATHER.some(field => leg[field] !== undefined))
  const differs = differing.length === 1 ? '1 leg differs' : `${differing.length} legs differ`
  const airs = stops.flatMap(({ leg }) => leg?.airC ?? [])
  const ofTrip = airs.length > 0 ? rangeText(airs, formats) : 'no temperature'
  const says = [
    weather.airC === undefined ? ofTrip : weatherText(weather, formats),
    differing.length > 0 ? differs : '',
  ]
  return (
    <Fold title="Weather" says={says.filter(Boolean).join(', ')}>
      <p class="hint">
        For the whole trip; a leg may differ. Heat warnings rest on it, and water where that is worked out
        from heat.
      </p>
      <div class="fields">
        <Field path="trip/weather/airC" />
        <Field path="trip/weather/humidity" />
      </div>
      {weather.airC === undefined && airs.length > 1 ? <OneAir airC={Math.max(...airs)} /> : null}
      <Field path="trip/weather/sun" />
      <Exceptions {...{ stops, differing, onDetail }} />
      <Field path="trip/wet" />
    </Fold>
  )
}

const rangeText = (airs: readonly number[], { degrees }: Formats): string => {
  const [low, high] = [degrees(Math.min(...airs)), degrees(Math.max(...airs))]
  return low === high ? low : `${low} to ${high}`
}

const weatherText = (
  { airC, humidity, sun }: Pick<DraftLeg, (typeof LEG_WEATHER)[number]>,
  { degrees, percent }: Formats,
): string =>
  [
    airC === undefined ? '' : degrees(airC),
    humidity === undefined ? '' : `${percent(humidity)} humidity`,
    sun === undefined ? '' : sun ? 'full sun' : 'no full sun',
  ]
    .filter(Boolean)
    .join(', ')

/** Where only legs say a temperature: the hottest of them for the whole trip. */
function OneAir({ airC }: { airC: number }) {
  const { degrees } = useFormats()
  return (
    <button
      type="button"
      class="quiet"
      data-figures="typed"
      onClick={() => actions.edit('One temperature for the trip', draft => withOneAir(draft, airC))}
    >
      One temperature: {degrees(airC)}, the hottest leg’s
    </button>
  )
}

interface ExceptionsProps extends Pick<Detail, 'onDetail'> {
  stops: readonly DraftStop[]
  differing: readonly DraftStop[]
}

/** The legs with a weather of their own: each opens, or takes the trip's again. */
function Exceptions({ stops, differing, onDetail }: ExceptionsProps) {
  const formats = useFormats()
  if (differing.length === 0) return null
  const asTrip = (those: readonly DraftStop[]) => {
    const ids = those.map(({ id }) => id)
    actions.edit('Use the trip’s weather', draft => withTripWeather(draft, ids))
  }
  return (
    <div class="stack" data-figures="typed">
      <h4>Legs that differ</h4>
      <ul class="rows">
        {differing.map(stop => {
          const name = stop.name || `stop ${stops.indexOf(stop) + 1}`
          return (
            <li key={stop.id} class="cluster leg-weather">
              <button type="button" class="link" onClick={() => onDetail(`trip/stops/${stop.id}`)}>
                To <bdi>{name}</bdi>: {weatherText(stop.leg ?? {}, formats)}
              </button>
              <button
                type="button"
                class="quiet"
                aria-label={`As the trip: the leg to ${name}`}
                onClick={() => asTrip([stop])}
              >
                As the trip
              </button>
            </li>
          )
        })}
      </ul>
      {differing.length > 1 ? (
        <button type="button" class="quiet" onClick={() => asTrip(differing)}>
          Use the trip’s weather on these {counted(differing.length, 'leg')}
        </button>
      ) : null}
    </div>
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
