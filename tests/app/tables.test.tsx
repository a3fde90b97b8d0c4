// Tables on the screen: which rows are left unless they are ticked, and in which marks a table is saved.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { guessLayout, readGrid } from '../../src/files/csv'
import { ImportPacks, ImportTable, SaveTable } from '../../src/screens/csv'
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

const paste = (text: string) =>
  fireEvent.input(screen.getByLabelText('Or paste rows from a spreadsheet'), { target: { value: text } })
const packNames = () => openTrip.value!.draft.packs.map(({ name }) => name)

test('packs of a table come in, what was decided in reading is said, and one undo takes them back', () => {
  tripWith()
  render(<ImportPacks />)
  paste('Brand,Model,Frame,Weight (g),Volume (L),g/L\nVane,Long,yes,1200,60,20\nVane,Short,sort of,900,40,22')
  expect(screen.getByText(/1 new pack\. 1 row not understood\./)).toBeTruthy()
  expect(screen.getByText(/“Volume \(L\)” is taken as the total with pockets/)).toBeTruthy()
  expect(screen.getByText(/Left out, as it follows from the rest: g\/L\./)).toBeTruthy()
  expect(screen.getByText(/write framed, frameless or removable/i)).toBeTruthy()
  fireEvent.change(screen.getByLabelText(/^Volume \(L\)/), { target: { value: 'body' } })
  expect(screen.queryByText(/is taken as the total/)).toBeNull()
  fireEvent.click(screen.getByRole('button', { name: 'Add 1 pack' }))
  expect(openTrip.value!.draft.packs).toMatchObject([{ name: 'Vane Long', bodyLitres: 60 }])
  fireEvent.click(screen.getByRole('button', { name: 'Undo' }))
  expect(packNames()).toEqual([])
})

test('a table brought in again shows what would change, and changes only what stays ticked', () => {
  tripWith()
  render(<ImportPacks />)
  paste('Pack,Frame,Weight (g),Body (L)\nA,yes,900,45\nB,yes,1000,50')
  fireEvent.click(screen.getByRole('button', { name: 'Add 2 packs' }))
  paste('Pack,Frame,Weight (g),Body (L)\nA,yes,950,45\nB,yes,1100,50\nC,no,600,40')
  expect(screen.getByText('1 new pack. 2 here already would change.')).toBeTruthy()
  const list = within(screen.getByRole('list', { name: 'Packs as they would come in' }))
  expect(list.getByText(/mass: from 900\sg to 950\sg/)).toBeTruthy()
  fireEvent.click(list.getByLabelText(/^B/))
  fireEvent.click(screen.getByRole('button', { name: 'Add 1 pack, update 1 pack' }))
  expect(packNames()).toEqual(['A', 'B', 'C'])
  expect(openTrip.value!.draft.packs.map(({ setups }) => setups[0]!.massKg)).toEqual([0.95, 1, 0.6])
})

test('a table of packs brought to the gear is told from one, and goes over with what was pasted', () => {
  tripWith()
  render(<ImportTable />)
  paste('Item,Weight (g)\nTent,900')
  expect(screen.queryByText(/look like packs/)).toBeNull()
  paste('Pack,Frame,Weight (g),Body (L)\nA,yes,900,45')
  fireEvent.click(screen.getByRole('button', { name: 'Bring them in as packs' }))
  fireEvent.click(screen.getByRole('button', { name: 'Add 1 pack' }))
  expect(packNames()).toEqual(['A'])
  expect(openTrip.value!.draft.gear).toEqual([])
})

test('a table of more rows than packs could have is not read, and says so', () => {
  tripWith()
  render(<ImportPacks />)
  const rows = Array.from({ length: 4001 }, (_, i) => `P${i},yes,900,45`)
  paste(['Pack,Frame,Weight (g),Body (L)', ...rows].join('\n'))
  expect(screen.getByText(/It has 4,002 rows, and at most 4,000 rows of packs are read/)).toBeTruthy()
  expect(screen.queryByRole('button', { name: /^Add/ })).toBeNull()
})
