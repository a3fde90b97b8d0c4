// The list of trips in More: the reader's order.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { Trips } from '../../src/screens/more/Trips'
import { actions, tripList } from '../../src/store'

beforeEach(() => {
  for (const { id } of tripList.value) actions.removeTrip(id)
  for (const name of ['Ridge', 'Lake', 'Moor']) actions.createTrip({ ...emptyDraft(), name })
})
afterEach(cleanup)

const names = () => tripList.value.map(({ draft }) => draft.name)
const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }))

test('a trip is moved up and down the list by its buttons, each one step to undo', () => {
  render(<Trips onClose={() => {}} />)
  press('Move up trip Moor')
  expect(names()).toEqual(['Ridge', 'Moor', 'Lake'])
  press('Move down trip Ridge')
  expect(names()).toEqual(['Moor', 'Ridge', 'Lake'])
  actions.undo()
  actions.undo()
  expect(names()).toEqual(['Ridge', 'Lake', 'Moor'])
})

test('the trips at the ends of the list have no button that would move them beyond it', () => {
  render(<Trips onClose={() => {}} />)
  expect(
    screen.getAllByRole('button', { name: /^Move/ }).map(button => button.getAttribute('aria-label')),
  ).toEqual(['Move down trip Ridge', 'Move up trip Lake', 'Move down trip Lake', 'Move up trip Moor'])
})
