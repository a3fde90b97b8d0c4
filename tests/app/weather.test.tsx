// The Trip screen's safety and weather fields: age beside body mass, one place for the trip's weather, legs that differ.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { act } from 'preact/test-utils'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
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
    expect(document.querySelectorAll('.stops .summary')[1]!.textContent).toMatch(/1 night, shop$/)
  })
})

describe('the row of a stop', () => {
  const rows = () =>
    [...document.querySelectorAll('.stops .summary')].map(row =>
      row.textContent!.replace(/[\s\u00a0]+/g, ' '),
    )

  test('says the way, water, nights, food, and an own temperature in short words', () => {
    const [, camp, end] = draft().trip.stops
    const set = (field: string, value: unknown) =>
      actions.setField(`trip/stops/${camp!.id}/${field}`, value, null)
    set('water', 'doubtful')
    set('nights', 2)
    set('resupply', true)
    set('meals', 'provided')
    set('leg/airC', 31)
    actions.setField(`trip/stops/${end!.id}/leg/km`, undefined, null)
    render(<TripScreen {...noDetail} />)
    expect(rows()[0]).toBe('Startstart')
    expect(rows()[1]).toBe(
      'Camp 115.0 km, up 500 m, down 500 m, doubtful water, 2 nights, resupply, meals provided, 31 °C',
    )
    expect(rows()[2]).toMatch(/^Camp 2no distance, up 500 m/)
    expect(rows().at(-1)).not.toContain('water')
  })

  test('follows its nights as they are stepped through, but not below none', () => {
    const { id } = draft().trip.stops[1]!
    render(<TripScreen detail={`trip/stops/${id}`} onDetail={() => undefined} />)
    const press = (name: string) => act(() => void fireEvent.click(screen.getByLabelText(name)))
    press('One more: Nights')
    expect(draft().trip.stops[1]!.nights).toBe(2)
    expect(rows()[1]).toContain('2 nights')
    expect(screen.getByText('Nights: 2').getAttribute('role')).toBe('status')
    for (let i = 0; i < 4; i++) press('One less: Nights')
    expect(draft().trip.stops[1]!.nights).toBe(0)
    expect(screen.getByLabelText('One less: Nights').getAttribute('aria-disabled')).toBe('true')
  })

  test('steps over nothing that was typed and cannot be read', () => {
    const { id } = draft().trip.stops[1]!
    render(<TripScreen detail={`trip/stops/${id}`} onDetail={() => undefined} />)
    type(screen.getByLabelText('Nights'), 'two')
    act(() => void fireEvent.click(screen.getByLabelText('One more: Nights')))
    expect(openTrip.value!.typed[`trip/stops/${id}/nights`]).toBe('two')
    expect(screen.getByLabelText<HTMLInputElement>('Nights').value).toBe('two')
  })
})

describe('the weather of legs that differ', () => {
  const airs = () => draft().trip.stops.map(({ leg }) => leg?.airC)
  const says = () => screen.getByRole('heading', { name: 'Weather', hidden: true }).parentElement!.textContent

  test('is told in the closed line, listed, and given up for the trip’s one by one or all at once', () => {
    const [, first, second] = draft().trip.stops
    actions.setField('trip/weather/airC', 18, null)
    actions.setField(`trip/stops/${first!.id}/leg/airC`, 25, null)
    actions.setField(`trip/stops/${second!.id}/leg/airC`, 9, null)
    actions.setField(`trip/stops/${second!.id}/leg/sun`, true, null)
    const onDetail = vi.fn()
    render(<TripScreen detail={null} onDetail={onDetail} />)
    expect(says()).toMatch(/18.°C, 2 legs differ$/)
    fireEvent.click(section('Weather').getByRole('button', { name: /^To Camp 1/, hidden: true }))
    expect(onDetail).toHaveBeenCalledWith(`trip/stops/${first!.id}`)
    act(() => void fireEvent.click(screen.getByLabelText('As the trip: the leg to Camp 1')))
    expect(airs()).toEqual([undefined, undefined, 9, undefined])
    act(() => actions.undo())
    act(() => void fireEvent.click(screen.getByText('Use the trip’s weather on these 2 legs')))
    expect(airs()).toEqual([undefined, undefined, undefined, undefined])
    expect(draft().trip.stops[2]!.leg).not.toHaveProperty('sun')
    expect(says()).toMatch(/18.°C$/)
  })

  test('becomes one temperature, the hottest, where only legs say one', () => {
    const [, first, second] = draft().trip.stops
    actions.setField(`trip/stops/${first!.id}/leg/airC`, 25, null)
    actions.setField(`trip/stops/${second!.id}/leg/airC`, 9, null)
    render(<TripScreen {...noDetail} />)
    expect(says()).toMatch(/9.°C to 25.°C, 2 legs differ$/)
    act(() => void fireEvent.click(screen.getByText(/^One temperature: 25.°C/)))
    expect(draft().trip.weather).toEqual({ airC: 25 })
    expect(airs()).toEqual([undefined, undefined, undefined, undefined])
    act(() => actions.undo())
    expect(airs()[1]).toBe(25)
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
