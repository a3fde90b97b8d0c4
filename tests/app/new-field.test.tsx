// A field of an item, or a setting, that gets a row is in the file, the table, the form, the preview and the reason.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, expect, test, vi } from 'vitest'
import { Field } from '../../src/components/fields'
import { gearCsv, guessLayout, readGrid, readRows } from '../../src/files/csv'
import { type DraftItem, defaults, parsePlan, problemInWords } from '../../src/plan'
import { differences } from '../../src/plan/shelf'
import type { WhyContext } from '../../src/report/why'
import { settingInput } from '../../src/report/why/origins'
import { factText, factWord, saidFields } from '../../src/screens/gear/fact-words'
import { actions, openTrip } from '../../src/store'

// The store was read before this file; all that knows the fields is read anew, with two rows more.
vi.hoisted(() => vi.resetModules())
vi.mock('../../src/plan/fields', async original => {
  const fields = await original<typeof import('../../src/plan/fields')>()
  const rolledCm = {
    as: 'amount',
    kind: 'length',
    min: 1,
    max: 300,
    unit: 'cm',
    usual: 12,
    origin: 'our judgement',
    label: 'Rolled up',
    told: 'size rolled up',
    column: { name: 'rolled', heading: /\broll\b/ },
  }
  const dampKg = { ...fields.FIELDS.settings.linerKg, usual: 0.1, label: 'Damp', reason: 'Damp, in rain' }
  Object.assign(fields.FIELDS.item, { rolledCm })
  Object.assign(fields.FIELDS.settings, { dampKg })
  return fields
})

afterEach(cleanup)

const mat = { id: 'mat', name: 'Mat', massKg: 0.4, litres: 3, rolledCm: 15 } as DraftItem
const stops = [{ name: 'Start' }, { name: 'End', leg: { km: 5 } }]
const document = (item: object) => ({
  format: 'pack-reckoner/plan',
  version: 1,
  carrier: { massKg: 70 },
  trip: { stops },
  gear: [item],
})
const planOf = (item: object) => {
  const parsed = parsePlan(document(item))
  if (!parsed.ok) throw new Error(parsed.problems.map(problemInWords).join(' '))
  return parsed.plan
}

test('the file holds it within its limits, and its default where it says nothing', () => {
  expect(planOf(mat).gear[0]).toMatchObject({ rolledCm: 15 })
  const { rolledCm: _, ...without } = mat as DraftItem & { rolledCm: number }
  expect(planOf(without).gear[0]).toMatchObject({ rolledCm: 12 })
  expect(() => planOf({ ...mat, rolledCm: 301 })).toThrow('write a number from 1 to 300 cm')
})

test('the table has a column of it, in the units in use, and reads it back', () => {
  const csv = gearCsv([mat], { system: 'metric' })
  expect(csv).toContain('Rolled up (cm)')
  expect(gearCsv([mat], { system: 'us' })).toContain('Rolled up (in)')
  const grid = readGrid(csv)
  if (!grid.ok) throw new Error('no table')
  const { items } = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
  expect(items.map(({ item }) => item)).toEqual([expect.objectContaining({ rolledCm: 15 })])
})

test('the form has a field of it, with its label, limits and what counts', () => {
  actions.setSystem('metric')
  actions.createTrip({ carrier: {}, trip: { stops: [] }, gear: [{ id: 'mat' }], packs: [] })
  render(<Field path="gear/mat/rolledCm" />)
  const field = screen.getByLabelText(/^Rolled up/) as HTMLInputElement
  expect(field.placeholder).toBe('12')
  expect(screen.getByText(/^Counts as 12\scm: our judgement\.$/)).toBeTruthy()
  fireEvent.input(field, { target: { value: '5 in' } })
  expect(openTrip.value?.draft.gear[0]).toEqual({ id: 'mat', rolledCm: 12.7 })
  fireEvent.input(field, { target: { value: '400' } })
  fireEvent.blur(field)
  expect(screen.getByText(/^Rolled up: write an amount from 1\scm to 300\scm\.$/)).toBeTruthy()
})

test('the preview tells where the trip and the shelf differ in it', () => {
  const thing = { id: 'mat', item: { name: 'Mat', massKg: 0.4, litres: 3 }, changed: {} }
  const [other, ...more] = saidFields(differences(mat, thing), 'metric')
  expect(more).toEqual([])
  expect(factWord(other!.field)).toBe('size rolled up')
  expect(factText(other!.field, other!.from, 'metric')).toMatch(/^15\scm$/)
  expect(factText(other!.field, other!.to, 'metric')).toMatch(/^12\scm$/)
})

test('the reason names the setting, and where its value comes from', () => {
  const plan = planOf(mat)
  const settings = { ...plan.settings, ...defaults.SETTINGS }
  const inputOf = (of: object) =>
    settingInput({ plan: { ...plan, settings: of } } as WhyContext, 'dampKg' as 'linerKg', kg => `${kg} kg`)
  expect(inputOf(settings)).toEqual({
    label: 'Damp, in rain',
    value: '0.1 kg',
    from: 'common practice, no source',
    path: 'settings/dampKg',
  })
  expect(inputOf({ ...settings, dampKg: 0.3 }).from).toBe('yours')
})
