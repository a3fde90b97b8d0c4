// Tables on the screen: which rows are left unless they are ticked, and in which marks a table is saved.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { guessLayout, readGrid } from '../../src/files/csv'
import { SaveTable } from '../../src/screens/csv'
import { TableRows } from '../../src/screens/csv/TableRows'
import { actions, openTrip } from '../../src/store'

beforeEach(() => actions.setSystem('metric'))
afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
})

const tripWith = (...gear: { id: string; name: string; massKg: number }[]) =>
  actions.createTrip({ carrier: {}, trip: { stops: [] }, gear, packs: [] })

test('one’s own pack is left, and said by its row, until it is ticked; food is said not to be eaten', () => {
  tripWith()
  const grid = readGrid('Item,Weight (g)\nTent,900\nRucksack,1250\nFood,700')
  if (!grid.ok) throw new Error(grid.message)
  const layout = guessLayout(grid, { target: 'trip', system: 'metric' })
  render(<TableRows grid={grid} layout={layout} target="trip" onAdded={() => undefined} />)
  const pack = screen.getByLabelText<HTMLInputElement>(/Rucksack/)
  expect(pack.checked).toBe(false)
  expect(screen.getByText(/Left out as your pack: row 3\./)).toBeTruthy()
  expect(screen.getAllByText(/not eaten/)).toHaveLength(1)
  fireEvent.click(pack)
  expect(screen.queryByText(/Left out as your pack/)).toBeNull()
  fireEvent.click(screen.getByRole('button', { name: 'Add 3 items' }))
  expect(openTrip.value!.draft.gear.map(({ name }) => name)).toEqual(['Tent', 'Rucksack', 'Food'])
})

test('a table is saved with the marks that are chosen', async () => {
  tripWith({ id: 'a', name: 'Peg', massKg: 0.0145 })
  render(<SaveTable />)
  const offered = vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:')
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockReturnValue()
  const save = () => {
    fireEvent.click(screen.getByRole('button', { name: 'Save the gear' }))
    return (offered.mock.lastCall![0] as Blob).text()
  }
  fireEvent.click(screen.getByLabelText('Commas and decimal points'))
  expect(await save()).toContain('\r\nPeg,,,14.5,')
  fireEvent.click(screen.getByLabelText('Semicolons and decimal commas'))
  expect(await save()).toContain('\r\nPeg;;;14,5;')
})
