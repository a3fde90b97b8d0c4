// The gear at a desk: a table that is edited cell by cell and filled by keys.

import { cleanup, fireEvent, screen, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { gearOrder } from '../../src/screens/gear/order'
import { actions, openTrip } from '../../src/store'
import { cell, focused, gear, names, open, press, THREE, textOf, type } from './gear-desk'

beforeEach(() => {
  actions.setSystem('metric')
  gearOrder.value = 'listed'
})
afterEach(cleanup)

describe('a cell', () => {
  test('shows its figure, becomes the field on a click, and shows what was typed', () => {
    open()
    expect(textOf('b', 'massKg')).toBe('740 g')
    expect(within(screen.getByRole('grid')).queryByRole('textbox')).toBeNull()
    fireEvent.click(cell('b', 'massKg'))
    expect(focused()).toBe(screen.getByRole('textbox', { name: 'Mass (g)' }))
    type('0,81 kg')
    expect(gear()[1]!.massKg).toBe(0.81)
    press('Enter')
    expect(textOf('b', 'massKg')).toBe('810 g')
    expect(focused()).toBe(cell('c', 'massKg'))
  })

  test.each(['Enter', 'F2'])('is edited by %s, with its own text to go on from', key => {
    open()
    cell('a', 'litres').focus()
    press(key)
    expect((focused() as HTMLInputElement).value).toBe('2')
    expect(gear()).toEqual(THREE)
  })

  test('is written over by a figure typed on it', () => {
    open()
    cell('a', 'massKg').focus()
    press('6')
    expect((focused() as HTMLInputElement).value).toBe('6')
    type('62')
    press('Tab')
    expect(gear()[0]!.massKg).toBe(0.062)
    expect(focused()).toBe(screen.getByRole('textbox', { name: 'Packed volume (L)' }))
  })

  test('shows in pencil what counts while nothing is said, and takes a choice', () => {
    open()
    expect(cell('a', 'count').className).toContain('usual')
    expect(textOf('a', 'count')).toBe('1')
    expect(cell('c', 'count').className).not.toContain('usual')
    cell('a', 'stow').focus()
    press('Enter')
    fireEvent.change(screen.getByRole('combobox', { name: 'Where you carry it' }), {
      target: { value: 'strapped-on' },
    })
    press('Enter')
    expect(gear()[0]!.stow).toBe('strapped-on')
    expect(textOf('a', 'stow')).toBe('Strapped on')
  })

  test('keeps a text that cannot be read, with its message, until it is mended', () => {
    open()
    cell('a', 'massKg').focus()
    press('Enter')
    type('half a kilo')
    press('Enter')
    expect(cell('a', 'massKg').textContent).toBe('half a kilo')
    expect(gear()[0]!.massKg).toBeUndefined()
    const message = document.getElementById(cell('a', 'massKg').getAttribute('aria-describedby')!)!
    expect(message.className).toBe('problem')
    expect(message.textContent).toMatch(/half a kilo|mass/i)
    expect(cell('a', 'massKg').getAttribute('aria-invalid')).toBe('true')
    cell('a', 'massKg').focus()
    press('F2')
    expect((focused() as HTMLInputElement).value).toBe('half a kilo')
    type('500')
    press('Enter')
    expect(gear()[0]).toEqual(THREE[0])
    expect(document.querySelector('.cell-problems')).toBeNull()
  })

  test('says what is wrong with an amount beyond the limits', () => {
    open()
    cell('a', 'count').focus()
    press('2')
    type('2000')
    press('Enter')
    expect(screen.getByText(/^How many: write a whole number from 0 to 1/)).toBeTruthy()
  })

  test('is left as it was by Escape, and nothing is there to undo', () => {
    open()
    const before = gear()
    cell('b', 'name').focus()
    press('Enter')
    type('Blanket')
    expect(names()).toContain('Blanket')
    press('Escape')
    expect(gear()).toEqual(before)
    expect(focused()).toBe(cell('b', 'name'))
    press('Escape')
    expect(focused()).toBe(cell('b', 'name'))
    const { id } = openTrip.value!
    // All there is to take back is the making of the trip.
    actions.undo()
    expect(openTrip.value?.id).not.toBe(id)
  })

  test('whose figure follows from something else is changed in the editor', () => {
    open([{ id: 'a', name: 'Bag', litresRange: { low: 6, typical: 8, high: 11 }, litresFrom: 'kind' }])
    expect(textOf('a', 'litres')).toBe('6–11 L by kind')
    cell('a', 'litres').focus()
    press('Enter')
    expect(screen.getByRole('button', { name: 'Open Bag', expanded: true })).toBeTruthy()
    expect(screen.getByLabelText(/At most/)).toBeTruthy()
  })
})

describe('the keys', () => {
  test('go from cell to cell, and stop at the ends', () => {
    open()
    cell('a', 'name').focus()
    press('ArrowDown')
    press('ArrowRight')
    expect(focused()).toBe(cell('b', 'massKg'))
    press('End')
    expect(focused()).toBe(cell('b', 'open').querySelector('button'))
    press('Home', { ctrlKey: true })
    expect(focused()).toBe(cell('a', 'name'))
    press('ArrowLeft')
    expect(focused()).toBe(cell('a', 'name'))
    press('ArrowUp')
    expect(focused()).toBe(screen.getByRole('button', { name: 'Name' }))
    const stops = [...screen.getByRole('grid').querySelectorAll('[data-cell], [data-cell] button')]
    expect(
      stops.filter(stop => (stop as HTMLElement).tabIndex === 0 && stop.hasAttribute('tabindex')),
    ).toEqual([focused()])
  })

  test('come to a whole group in the column of what is at home', () => {
    open()
    const home = (name: string) => screen.getByRole('button', { name: `Leave ${name} at home` })
    cell('a', 'home').querySelector('button')!.focus()
    press('ArrowDown')
    expect(focused()).toBe(home('Sleep'))
    press('ArrowDown')
    expect(focused()).toBe(home('Quilt'))
    press('ArrowLeft')
    press('ArrowDown')
    expect(focused()).toBe(cell('c', 'build'))
  })

  test('“n” adds an item below, in its group, with the cursor in its name', () => {
    open()
    cell('b', 'massKg').focus()
    press('n')
    type('Pillow')
    press('Tab')
    type('80')
    press('Tab')
    type('0,3')
    press('Enter')
    expect(names()).toEqual(['Tarp', 'Quilt', 'Pillow', 'Mug'])
    expect(gear()[2]).toMatchObject({ name: 'Pillow', massKg: 0.08, litres: 0.3, group: 'Sleep' })
    expect(focused()).toBe(cell('c', 'litres'))
    // The next one comes below it; once the cursor was led elsewhere, below the row it is in.
    press('n')
    type('Bag')
    press('Enter')
    expect(names()).toEqual(['Tarp', 'Quilt', 'Pillow', 'Bag', 'Mug'])
    press('ArrowLeft')
    press('n')
    type('Pot')
    press('Enter')
    expect(names()).toEqual(['Tarp', 'Quilt', 'Pillow', 'Bag', 'Mug', 'Pot'])
  })

  test('are letters while a field is edited', () => {
    open()
    cell('b', 'name').focus()
    press('Enter')
    for (const key of ['n', 'h', 'o', 'Delete', 'ArrowLeft']) press(key)
    expect(gear()).toEqual(THREE)
    expect(focused()).toBe(screen.getByRole('textbox', { name: 'Name' }))
  })

  test('Delete deletes, which is said and can be undone, and goes on in the next row', () => {
    open()
    cell('b', 'massKg').focus()
    press('Delete')
    expect(names()).toEqual(['Tarp', 'Mug'])
    expect(focused()).toBe(cell('c', 'massKg'))
    expect(screen.getByText(/^Deleted item Quilt/)).toBeTruthy()
    fireEvent.click(screen.getByRole('button', { name: 'Undo' }))
    expect(gear()).toEqual(THREE)
  })

  test('“h” leaves at home, and takes along', () => {
    open()
    cell('b', 'massKg').focus()
    press('h')
    expect(gear()[1]!.atHome).toBe(true)
    expect(screen.getByRole('button', { name: 'Leave Quilt at home', pressed: true })).toBeTruthy()
    expect(screen.getByText(/^Left Quilt at home/)).toBeTruthy()
    press('h')
    expect(gear()).toEqual(THREE)
  })

  test('“o” opens all about it at the side, and closing it leads back', () => {
    open()
    cell('b', 'massKg').focus()
    press('o')
    const side = screen.getByRole('list', { name: 'All about one item' })
    expect(within(side).getByRole('textbox', { name: 'Name' })).toBeTruthy()
    expect(side.contains(focused())).toBe(true)
    fireEvent.click(focused())
    expect(screen.queryByRole('list', { name: 'All about one item' })).toBeNull()
    expect(focused()).toBe(cell('b', 'massKg'))
  })

  test('Alt with an arrow moves the item into the next group', () => {
    open()
    cell('a', 'name').focus()
    press('ArrowDown', { altKey: true })
    expect(gear().map(({ name, group }) => [name, group])).toEqual([
      ['Tarp', 'Sleep'],
      ['Quilt', 'Sleep'],
      ['Mug', 'Kitchen'],
    ])
  })
})
