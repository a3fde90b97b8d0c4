// Which units a kind offers, and in which a bare number is read.
import { expect, test } from 'vitest'
import { bareUnitOf, inUnit, parseQuantity, unitChoices } from '../../src/units'
import { kinds } from './kinds'

test('a bare number is read in the unit of the system, or in the finer one where the kind has it', () => {
  expect(bareUnitOf('mass', 'metric')).toBe('kg')
  expect(bareUnitOf('mass', 'us')).toBe('lb')
  expect(bareUnitOf('mass', 'metric', true)).toBe('g')
  expect(bareUnitOf('mass', 'us', true)).toBe('oz')
  expect(bareUnitOf('volume', 'us')).toBe('L')
  expect(bareUnitOf('volume', 'us', true)).toBe('cu in')
  expect(bareUnitOf('climb', 'us', true)).toBe('ft')
})

test('every offered unit can be typed in its field, means what inUnit says, and includes the bare ones', () => {
  let offered = 0
  for (const kind of kinds) {
    const choices = unitChoices(kind)
    for (const unit of choices) {
      offered++
      const typed = parseQuantity(kind, `5 ${unit}`, { system: 'metric' })
      expect(typed, `${kind} in ${unit}`).toMatchObject({ ok: true, empty: false })
      expect(inUnit(kind, (typed as { value: number }).value, unit)).toBeCloseTo(5, 10)
      expect(parseQuantity(kind, '5', { system: 'metric', bareUnit: unit })).toMatchObject({
        value: (typed as { value: number }).value,
      })
    }
    if (!choices.length) continue
    for (const system of ['metric', 'us'] as const) {
      for (const fine of [false, true]) expect(choices).toContain(bareUnitOf(kind, system, fine))
    }
  }
  expect(offered).toBeGreaterThan(60)
})

test('plain numbers, money and counts offer no unit', () => {
  for (const kind of ['number', 'money', 'count'] as const) expect(unitChoices(kind)).toEqual([])
})

test('a unit symbol outside the table is a fault of the caller', () => {
  for (const unit of ['stick', 'kg/stick', 'kg/L/h'])
    expect(() => inUnit('mass', 1, unit as 'kg')).toThrow(RangeError)
})
