// The Trip screen's safety and weather fields: age beside body mass, one place for the trip's weather, legs that differ.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { emptyDraft, quickTrip } from '../../src/plan'
import { FIT_LINE } from '../../src/report'
import { PacksScreen } from '../../src/screens/packs'
import { TripScreen } from '../../src/screens/trip'
import { actions, openTrip, reckoned } from '../../src/store'
import { draft, openDraft, withOnePack } from './compare-packs'

let id = 0
const noDetail = { detail: null, onDetail: () => undefined }

beforeEach(() => {
  actions.setSystem('metric')
  actions.createTrip(quickTrip(emptyDraft(), { days: 3 }, () => `s${++id}`))
})
afterEach(() => {
  cleanup()
  actions.setSystem('metric')
})

const type = (field: HTMLElement, text: string) => {
  fireEvent.focus(field)
  fireEvent.input(field, { target: { value: text } })
  fireEvent.blur(field)
}
const section = (name: string) =>
  within(screen.getByRole('heading', { name, hidden: true }).closest('details, section')! as HTMLElement)

describe('who carries', () => {
  test('says the age beside the body mass, not folded away', () => {
    render(<TripScreen {...noDetail} />)
    const who = section('Who carries')
    const fields = who.getByLabelText(/Body mass/).closest('.fields')
    expect(who.getByLabelText(/^Age/).closest('.fields')).toBe(fields)
    expect(who.getByLabelText(/^Age/).closest('details')).toBeNull()
  })
})

describe('the weather of the trip', () => {
  test('is typed in one place, in °F too, and kept in °C', () => {
    actions.setSystem('us')
    render(<TripScreen {...noDetail} />)
    const weather = section('Weather')
    expect(weather.getByText('(°F)')).toBeTruthy()
    type(weather.getByLabelText(/^Air/), '86')
    expect(draft().trip.weather?.airC).toBeCloseTo(30, 12)
    type(weather.getByLabelText(/^Air/), '30 °C')
    expect(draft().trip.weather?.airC).toBe(30)
    fireEvent.click(weather.getByLabelText(/Full sun/))
    expect(draft().trip.weather).toEqual({ airC: 30, sun: true })
  })

  test('keeps what cannot be read, and says so beside it', () => {
    render(<TripScreen {...noDetail} />)
    type(section('Weather').getByLabelText(/^Air/), 'hot')
    expect(openTrip.value!.typed['trip/weather/airC']).toBe('hot')
    expect(section('Weather').getByText(/cannot read/)).toBeTruthy()
  })

  test('stands in pencil on every leg, and a leg may differ', () => {
    actions.setField('trip/weather/airC', 30, null)
    actions.setField('trip/weather/sun', true, null)
    actions.setField('trip/water/litresPerHour', 'from-heat', null)
    const stop = draft().trip.stops[1]!
    render(<TripScreen detail={`trip/stops/${stop.id}`} onDetail={() => undefined} />)
    const leg = within(screen.getByRole('group', { name: /The leg that leads here/ }))
    expect(leg.getByLabelText<HTMLInputElement>(/^Air/).placeholder).toBe('30')
    const rates = () => {
      const open = reckoned.value
      if (!open?.reckoned.ok) throw new Error('the trip does not settle')
      return open.reckoned.reckoning.legs.map(({ litresPerHour }) => litresPerHour)
    }
    const [before] = rates()
    fireEvent.click(within(leg.getByRole('group', { name: 'Full sun' })).getByLabelText('No'))
    expect(draft().trip.stops[1]!.leg!.sun).toBe(false)
    expect(before! - rates()[0]!).toBeCloseTo(0.2366, 4)
    fireEvent.click(within(leg.getByRole('group', { name: 'Full sun' })).getByLabelText('As the trip'))
    expect(draft().trip.stops[1]!.leg).not.toHaveProperty('sun')
  })
})

describe('a stop', () => {
  test('can be marked as a place where food can be bought', () => {
    const stop = draft().trip.stops[1]!
    render(<TripScreen detail={`trip/stops/${stop.id}`} onDetail={() => undefined} />)
    fireEvent.click(screen.getByLabelText('A shop is here: food can be bought'))
    expect(draft().trip.stops[1]!.shop).toBe(true)
    expect(screen.getByText(/no water, 1 night, shop|1 night, shop/)).toBeTruthy()
  })
})

describe('that no answer judges the fit', () => {
  test('stands with the list of packs, and on the page of each', () => {
    openDraft(withOnePack(60, 20))
    const { unmount } = render(<PacksScreen detail={null} />)
    expect(screen.getAllByText(FIT_LINE)).toHaveLength(1)
    unmount()
    render(<PacksScreen detail="packs/p" />)
    expect(screen.getAllByText(FIT_LINE)).toHaveLength(1)
  })
})
