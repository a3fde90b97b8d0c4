import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { setField } from '../../src/plan'
import { SideBySideScreen } from '../../src/screens/side-by-side'
import { actions, tripList } from '../../src/store'
import { demoDraft, plain } from './compare-packs'

const rows = () =>
  [...document.querySelectorAll('tbody tr')].map(row =>
    [...row.children].map(cell => plain(cell.textContent ?? '')),
  )
const row = (name: string) => rows().find(([first]) => first === name)

beforeEach(() => {
  for (const { id } of tripList.value) actions.removeTrip(id)
  const draft = demoDraft()
  const [tarp, , ...rest] = draft.gear
  actions.createTrip({ ...draft, name: 'Ridge' })
  actions.createTrip({
    ...setField({ ...draft, gear: [{ ...tarp!, massKg: 1.79 }, ...rest] }, 'carrier/massKg', 60),
    name: 'Moor',
  })
})
afterEach(cleanup)

test('two trips are told by their figures, their answers, and what is in one list alone or otherwise in both', () => {
  render(<SideBySideScreen />)
  fireEvent.change(screen.getByLabelText('This trip'), { target: { value: tripList.value[0]!.id } })
  expect(row('Base weight')).toEqual(['Base weight', '6.5 kg', '7.4 kg', '+0.9 kg'])
  expect(row('Worn')?.at(-1)).toBe('same')
  expect(screen.getByText(/^\d+ set-ups? with the same answer for both\.$/)).toBeTruthy()
  expect(screen.getByText('Only in Ridge').closest('section')?.textContent).toContain('Pegs and lines')
  expect(screen.queryByText('Only in Moor')).toBeNull()
  expect(plain(screen.getByText('Changed').closest('section')?.textContent ?? '')).toMatch(
    /Ridge tarp with inner: mass 790 g → 1\.79 kg/,
  )
})

test('no chance is told where litres are missing, and no figures where nothing is taken', () => {
  const draft = demoDraft()
  const [first] = tripList.value
  const { unmount } = render(<SideBySideScreen />)
  expect(row('Enough in 9 of 10 cases')).toBeTruthy()
  unmount()
  actions.createTrip({
    ...draft,
    name: 'Fen',
    gear: [...draft.gear, { id: 'bag', name: 'Bag of bits', massKg: 0.4 }],
  })
  actions.createTrip({ ...draft, name: 'Bare', gear: [] })
  const idOf = (name: string) => tripList.value.find(trip => trip.draft.name === name)!.id
  render(<SideBySideScreen />)
  fireEvent.change(screen.getByLabelText('This trip'), { target: { value: first!.id } })
  fireEvent.change(screen.getByLabelText('and that one'), { target: { value: idOf('Fen') } })
  expect(row('Main body')).toBeTruthy()
  expect(row('Enough in 9 of 10 cases')).toBeUndefined()
  expect(
    screen.getByText((_, node) => node?.textContent === 'Fen: 1 item without litres is not in it.'),
  ).toBeTruthy()
  fireEvent.change(screen.getByLabelText('and that one'), { target: { value: idOf('Bare') } })
  expect(rows()).toEqual([])
  expect(screen.getByText((_, node) => node?.textContent === 'Bare: no gear yet.')).toBeTruthy()
})

test('one trip alone asks for a second one', () => {
  act(() => actions.removeTrip(tripList.value[1]!.id))
  render(<SideBySideScreen />)
  expect(screen.getByText(/^Two trips are needed/)).toBeTruthy()
})
