// The fields' wiring: what is typed reaches the trip or stays as text, with its message beside it.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { ChoiceField, QuantityField, TextField, ToggleField } from '../../src/components/fields'
import { emptyDraft, LIMITS } from '../../src/plan'
import { actions, openTrip } from '../../src/store'

const MASS = {
  path: 'carrier/massKg',
  label: 'Body mass',
  kind: 'mass',
  limit: LIMITS.carrier.massKg,
} as const

const type = (field: HTMLElement, text: string) => {
  fireEvent.focus(field)
  fireEvent.input(field, { target: { value: text } })
}
const leave = (field: HTMLElement) => fireEvent.blur(field)
const massKg = () => openTrip.value?.draft.carrier.massKg

beforeEach(() => {
  actions.setSystem('metric')
  actions.createTrip(emptyDraft())
})
afterEach(cleanup)

describe('a quantity field', () => {
  test('stores what is typed in any unit, in kilograms', () => {
    render(<QuantityField {...MASS} />)
    type(screen.getByLabelText(/Body mass/), '150 lb')
    expect(massKg()).toBeCloseTo(68.0388555, 6)
  })

  test('does not rewrite the text while it is being typed', () => {
    render(<QuantityField {...MASS} />)
    const field = screen.getByLabelText<HTMLInputElement>(/Body mass/)
    type(field, '70,0')
    expect(field.value).toBe('70,0')
    expect(massKg()).toBe(70)
  })

  test('keeps text it cannot read, says so once the field is left, and stores no number', () => {
    render(<QuantityField {...MASS} />)
    const field = screen.getByLabelText<HTMLInputElement>(/Body mass/)
    type(field, '70 kgg')
    expect(screen.queryByText(/kgg/)).toBeNull()
    leave(field)
    expect(screen.getByText(/"70 kgg"/)).toBeTruthy()
    expect(field.getAttribute('aria-invalid')).toBe('true')
    expect(field.value).toBe('70 kgg')
    expect(massKg()).toBeUndefined()
    expect(openTrip.value?.typed['carrier/massKg']).toBe('70 kgg')
  })

  test('names the limits in the reader’s units when a number is outside them', () => {
    actions.setSystem('us')
    render(<QuantityField {...MASS} />)
    const field = screen.getByLabelText(/Body mass/)
    type(field, '5')
    leave(field)
    expect(screen.getByText(/Body mass: write an amount from 22.0 lb to 661.4 lb/)).toBeTruthy()
    expect(massKg()).toBeUndefined()
  })

  test('forgets the unread text once a number is typed', () => {
    render(<QuantityField {...MASS} />)
    const field = screen.getByLabelText(/Body mass/)
    type(field, 'heavy')
    type(field, '80')
    leave(field)
    expect(massKg()).toBe(80)
    expect(openTrip.value?.typed).toEqual({})
  })

  test('shows what counts while it is empty, and where that comes from', () => {
    render(<QuantityField {...MASS} usual={70} usualFrom="a stand-in" />)
    expect(screen.getByText(/Counts as 70\skg: a stand-in/)).toBeTruthy()
  })

  test('says back what it understood when a text has two readings', () => {
    render(<QuantityField {...MASS} />)
    type(screen.getByLabelText(/Body mass/), '12,345')
    expect(screen.getByText(/= 12.3/)).toBeTruthy()
  })
})

describe('words, choices and switches', () => {
  test('write to their path, and an emptied text removes the value', () => {
    render(
      <>
        <TextField path="name" label="Name" />
        <ChoiceField
          path="carrier/sex"
          label="Sex"
          usual=""
          options={[
            { value: 'female', label: 'Female' },
            { value: 'male', label: 'Male' },
          ]}
        />
        <ToggleField path="trip/wet" label="Rain" usual={true} />
      </>,
    )
    fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'Fen' } })
    fireEvent.click(screen.getByLabelText('Female'))
    fireEvent.click(screen.getByLabelText('Rain'))
    expect(openTrip.value?.draft).toMatchObject({
      name: 'Fen',
      carrier: { sex: 'female' },
      trip: { wet: false },
    })
    fireEvent.input(screen.getByLabelText('Name'), { target: { value: '' } })
    expect(openTrip.value?.draft.name).toBeUndefined()
  })
})
