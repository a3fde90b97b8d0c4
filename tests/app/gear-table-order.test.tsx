// The gear at a desk: in which order the table stands, and how it is told and drawn.

import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { gearOrder } from '../../src/screens/gear/order'
import { actions } from '../../src/store'
import { cell, focused, gear, open, press, shownNames, THREE, type } from './gear-desk'

beforeEach(() => {
  actions.setSystem('metric')
  gearOrder.value = 'listed'
})
afterEach(cleanup)

describe('the order', () => {
  const head = (name: string) => screen.getByRole('columnheader', { name: new RegExp(`^${name}`) })
  const sortBy = (name: string) => fireEvent.click(within(head(name)).getByRole('button'))

  test('of a column is shown and said, and what is stored keeps its own', () => {
    open()
    sortBy('Mass')
    expect(shownNames()).toEqual(['Mug', 'Tarp', 'Quilt'])
    expect(head('Mass').getAttribute('aria-sort')).toBe('ascending')
    sortBy('Mass')
    expect(shownNames()).toEqual(['Quilt', 'Tarp', 'Mug'])
    expect(head('Mass').getAttribute('aria-sort')).toBe('descending')
    expect(gear()).toEqual(THREE)
    sortBy('Mass')
    expect(shownNames()).toEqual(['Tarp', 'Quilt', 'Mug'])
    expect(head('Mass').hasAttribute('aria-sort')).toBe(false)
    expect(screen.getByRole('heading', { name: 'Sleep' })).toBeTruthy()
  })

  test('puts last what nobody has said, either way', () => {
    open()
    sortBy('Litres')
    expect(shownNames().at(-1)).toBe('Mug')
    sortBy('Litres')
    expect(shownNames()).toEqual(['Quilt', 'Tarp', 'Mug'])
  })

  test('holds while the cursor is in the table, and follows once it leaves', async () => {
    open()
    sortBy('Mass')
    cell('c', 'massKg').focus()
    press('9')
    type('900')
    press('Enter')
    expect(shownNames()).toEqual(['Mug', 'Tarp', 'Quilt'])
    screen.getByRole('button', { name: 'Add an item' }).focus()
    await waitFor(() => expect(shownNames()).toEqual(['Tarp', 'Quilt', 'Mug']))
  })
})

describe('the table', () => {
  test('is told as a grid, each row by its name and each button by what it does', () => {
    open()
    expect(screen.getByRole('grid', { name: 'Gear' }).getAttribute('aria-rowcount')).toBe('7')
    expect(screen.getByRole('row', { name: /Quilt/ }).getAttribute('aria-rowindex')).toBe('5')
    expect(screen.getAllByRole('columnheader').map(({ textContent }) => textContent)).toEqual([
      'Move',
      'Name',
      'Mass',
      'Litres',
      'Count',
      'Where',
      'Used up',
      'Soft or rigid',
      'At home',
      'Open',
    ])
    expect(screen.getByRole('button', { name: 'Leave Mug at home', pressed: false })).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Open Mug', expanded: false })).toBeTruthy()
    expect(screen.getByText('Keys').closest('details')!.open).toBe(false)
  })

  test('adds at its end by its last row', () => {
    open()
    fireEvent.click(screen.getByRole('button', { name: 'Add an item' }))
    type('Spoon')
    expect(gear().at(-1)).toMatchObject({ name: 'Spoon', group: 'Kitchen' })
  })

  test('of a thousand items draws those near the window alone', () => {
    open(Array.from({ length: 1000 }, (_, i) => ({ id: `i${i}`, name: `Item ${i}`, massKg: 0.1, litres: 1 })))
    expect(document.querySelectorAll('*').length).toBeLessThan(3000)
    cell('i0', 'name').focus()
    press('End', { ctrlKey: true })
    expect(focused()).toBe(cell('i999', 'open').querySelector('button'))
  })
})
