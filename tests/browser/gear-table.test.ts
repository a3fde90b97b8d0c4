// The gear at a desk, filled with the keyboard alone.

import { expect } from 'vitest'
import { expectAccessible } from './axe'
import { at1280, go, journey } from './harness'

journey('three items are added at a desk without the mouse', async ({ openDemo }) => {
  const page = await openDemo(at1280())
  await go(page, 'Gear')
  const grid = page.getByRole('grid', { name: 'Gear' })
  await grid.waitFor()
  await page.getByRole('button', { name: 'Add an item' }).focus()
  await page.keyboard.press('Shift+Tab')
  const { keyboard } = page
  for (const [name, grams, litres] of [
    ['Hat', '60', '0,4'],
    ['Nylon cord', '45', '0.1'],
    ['Old map', '70', '0,2'],
  ] as const) {
    await keyboard.press('n')
    for (const text of [name, grams, litres]) {
      await page.waitForFunction(() => document.activeElement instanceof HTMLInputElement)
      await keyboard.type(text)
      await keyboard.press(text === litres ? 'Enter' : 'Tab')
    }
    await grid.getByRole('row', { name: new RegExp(`${name}.*${grams}`) }).waitFor()
  }
  await page.getByText(/^26 items\./).waitFor()
  const rows = await grid.getByRole('row', { name: /Hat|Nylon|Old map/ }).allInnerTexts()
  expect(rows.map(row => row.replace(/\s+/g, ' ')).map(row => row.match(/^\D+ \d+ g [\d.]+/)?.[0])).toEqual([
    'Hat 60 g 0.40',
    'Nylon cord 45 g 0.10',
    'Old map 70 g 0.20',
  ])
  await keyboard.press('F2')
  await expectAccessible(page)
})
