// The weather of the trip and of its legs, the mark for a shop, and the most nights a trip may have: in files, while
// they are typed, and where a stored trip holds too many.

import { describe, expect, test } from 'vitest'
import {
  CAPS,
  checkDraft,
  describeField,
  emptyDraft,
  fieldWord,
  fromPlanDocument,
  MOST_DAYS,
  type PlanDocument,
  parsePlan,
  quickTrip,
  removeStop,
  setField,
  settle,
  toPlanDocument,
} from '../../src/plan'
import { counter, wholeDraft } from './drafts'

const withStops = (...nights: number[]): PlanDocument => ({
  format: 'pack-reckoner/plan',
  version: 1,
  carrier: { massKg: 70 },
  trip: {
    stops: [
      { name: 'Start' },
      ...nights.map((nights, i) => ({ name: `Camp ${i + 1}`, nights, leg: { km: 5 } })),
      { name: 'End', leg: { km: 5 } },
    ],
  },
})
const sixty = (stops: number) => Array.from({ length: stops }, () => 60)

describe('the nights of a trip', () => {
  test('are 400 at most, refused by the field that passes it', () => {
    expect(parsePlan(withStops(...sixty(6), 40))).toMatchObject({ ok: true })
    const refused = parsePlan(withStops(...sixty(6), 41))
    if (refused.ok) throw new Error('401 nights were taken')
    expect(refused.problems).toEqual([
      {
        path: ['trip', 'stops', 7, 'nights'],
        message: expect.stringMatching(/^makes 401 .* at most 400: write fewer/),
      },
    ])
  })

  test('over it leave a stored trip that opens and says so, with all the nights that fit', () => {
    const draft = fromPlanDocument(withStops(...sixty(9)), counter())
    const { plan, leftOut } = settle(draft)
    const nights = plan.trip.stops.map(stop => stop.nights)
    expect(nights).toEqual([0, ...sixty(6), 0, 0, 0, 0])
    expect(leftOut.map(({ what }) => what)).toEqual(['Camp 7', 'Camp 8', 'Camp 9'])
    expect(leftOut[0]!.message).toMatch(/^Camp 7: number of nights – makes 420 .* it is left out\.$/)
    expect(leftOut[0]!.path).toBe('trip/stops/n8/nights')
    expect(toPlanDocument(draft).trip.stops[7]).toMatchObject({ nights: 60 })
    expect(checkDraft(draft)).toMatchObject({ ok: true, leftOut: [] })
  })

  test('of five hundred stops are settled in one go, whatever they add up to', () => {
    const { plan } = settle(fromPlanDocument(withStops(...sixty(CAPS.stops - 2)), counter()))
    expect(plan.trip.stops).toHaveLength(CAPS.stops)
    expect(plan.trip.stops.reduce((sum, stop) => sum + stop.nights, 0)).toBe(360)
  })

  test('of a trip from a few numbers stay within it', () => {
    const { leftOut, plan } = settle({
      ...quickTrip(emptyDraft(), { days: 9999 }, counter()),
      carrier: { massKg: 70 },
    })
    expect(leftOut).toEqual([])
    expect(plan.trip.stops).toHaveLength(MOST_DAYS + 1)
  })
})

describe('weather', () => {
  const weather = { airC: 31, humidity: 0.2, sun: true }

  test('of a file is kept, and what it leaves out is unknown air, half humidity and no sun', () => {
    const document = withStops(0)
    const parsed = parsePlan({ ...document, trip: { ...document.trip, weather: { airC: 31 } } })
    expect(parsed).toMatchObject({ plan: { trip: { weather: { airC: 31, humidity: 0.5, sun: false } } } })
    expect(parsePlan(document)).toMatchObject({
      plan: { trip: { weather: { airC: null, humidity: 0.5, sun: false } } },
    })
  })

  test('and a leg’s own sun and a shop go into a file and come back', () => {
    let draft = setField(wholeDraft(), 'trip/weather', weather)
    draft = setField(draft, 'trip/stops/s2/leg/sun', false)
    draft = setField(draft, 'trip/stops/s2/shop', true)
    const parsed = parsePlan(JSON.parse(JSON.stringify(toPlanDocument(draft))))
    if (!parsed.ok) throw new Error(parsed.problems[0].message)
    expect(parsed.plan.trip.weather).toEqual(weather)
    expect(parsed.plan.trip.stops[1]).toMatchObject({ shop: true, leg: { sun: false } })
    expect(toPlanDocument(fromPlanDocument(parsed.document, counter('s')))).toEqual(toPlanDocument(draft))
  })

  test('that cannot be read is named in words, with what counts instead', () => {
    const said = (path: string, text: string) => settle(wholeDraft(), { [path]: text }).leftOut[0]?.message
    expect(said('trip/weather/airC', 'warm')).toBe(
      'Weather: “warm” cannot stand for the air temperature, so it is left out.',
    )
    expect(said('trip/weather/humidity', 'dry')).toMatch(/^Weather: .* humidity, so the usual value is used/)
    expect(settle(setField(wholeDraft(), 'trip/weather/airC', 99)).leftOut[0]!.message).toMatch(
      /^Weather: air temperature – write a number from -60 to 60 °C; until then it is left out\.$/,
    )
    expect(settle(setField(wholeDraft(), 'trip/weather', 24)).plan.trip.weather.airC).toBeNull()
  })

  test('is called by name in the steps that can be undone', () => {
    expect(describeField(wholeDraft(), 'trip/weather/sun')).toBe('Weather, full sun')
    expect(describeField(wholeDraft(), 'trip/stops/s2/shop')).toBe('Camp 1, shop')
    expect(fieldWord('trip/weather/airC')).toBe('air temperature')
  })

  test('of what is no weather is taken out of a draft from outside', () => {
    const odd = setField(wholeDraft(), 'trip/weather', { airC: 'hot', sun: 1, wind: 3, humidity: 7 })
    const checked = checkDraft(odd)
    if (!checked.ok) throw new Error(checked.message)
    // Humidity is a number that somebody typed: it stays, and is told where the trip opens.
    expect(checked.leftOut.sort()).toEqual([
      'Weather, air temperature',
      'Weather, full sun',
      'Weather, “wind”',
    ])
    expect(checked.draft.trip.weather).toEqual({ humidity: 7 })
  })

  test('of two legs walked as one is the second’s', () => {
    let draft = setField(wholeDraft(), 'trip/stops/s2/leg/sun', true)
    draft = setField(draft, 'trip/stops/s3/leg/sun', false)
    expect(removeStop(draft, 's2').trip.stops[1]!.leg!.sun).toBe(false)
  })
})
