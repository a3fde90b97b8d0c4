// From a bare list of names and grams to litres with an honest range, on a small phone, counting taps; and the same
// panels held to the rules of every screen.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { go, journey, saved, untilDrawn } from './harness'
import { expectKeepsRules } from './sizes'

const LIST = `Tent 1500 g
8 x tent peg 14 g
Tent poles 400 g
Groundsheet 150 g
Sleeping bag, 850
Inflatable sleeping pad 450 g
Pillow 80 g
Rain jacket 300 g
Rain pants 220 g
Down jacket 320 g
Fleece 330 g
Base layer top 180 g
Leggings 170 g
2 x socks 75 g
Hat and gloves 120 g
Gas stove 90 g
Pot 0.8 L 130 g
Mug 60 g
Spoon 18 g
Gas cartridge 230, 375 g
Head torch 90 g
Power bank 10000 mAh 190 g
Phone 190 g
First aid kit 220 g
Toiletries 250 g`

async function planned(page: Page) {
  await page.getByRole('button', { name: 'Plan a trip' }).click()
  await page.getByLabel('Days', { exact: true }).fill('3')
  await page.getByRole('button', { name: 'Make the stops' }).click()
  await go(page, 'Gear')
}

const pasteInto = (page: Page, text: string) => page.getByLabel('One item a line, with its mass').fill(text)

/** Opens each panel in turn with something in it, and calls back at each. */
async function throughPanels(page: Page, look: (panel: string) => Promise<void>) {
  await page.getByRole('button', { name: 'Paste a list' }).click()
  await pasteInto(page, `${LIST}\n300 g\nTotal 7 kg`)
  await page.getByText('1 line not understood').waitFor()
  await look('paste')
  await page.getByRole('button', { name: 'Mix a day’s food' }).click()
  await page.getByLabel('Find a food').fill('oats')
  await page.getByRole('list', { name: 'Foods found' }).getByRole('button').first().click()
  await page.getByRole('textbox', { name: /oats, dry/ }).fill('100')
  await page.getByLabel('Find a food').fill('cheese')
  await look('food')
  await page.getByRole('button', { name: 'Add an item' }).click()
  await page.getByLabel('Name', { exact: true }).fill('Sleeping bag')
  await page.getByRole('button', { name: /^down sleeping bag, winter/ }).waitFor()
  await look('kinds')
  await page.getByRole('button', { name: /^down sleeping bag, winter/ }).click()
  await page.getByText('Measure it', { exact: true }).click()
  await page.getByLabel('Around it').fill('50')
  await page.getByLabel('Length (').first().fill('28')
  await page.getByRole('button', { name: /^Use 5\.6/ }).waitFor()
  await look('measure')
  await page.getByLabel('Insulated').check()
  await page.getByLabel('Mass of the fill').fill('450')
  await page.getByRole('button', { name: /Stuffed by hand/ }).waitFor()
  await look('squeeze')
}

describe('twenty-five names and grams', () => {
  journey('become litres with a range in four taps and one paste', async ({ open }) => {
    const page = await open()
    await planned(page)
    let taps = 0
    const tap = async (name: string | RegExp) => {
      taps++
      await page.getByRole('button', { name }).click()
    }
    await tap('Paste a list')
    await pasteInto(page, LIST)
    await page.getByText('25 clear lines', { exact: true }).waitFor()
    expect(await page.locator('.pasted').count()).toBe(0)
    await page.getByText(/^25 items/).waitFor()
    await tap('Add 25 items')
    expect(await page.locator('.row .facts-line').filter({ hasText: 'by kind' }).count()).toBe(25)
    expect(await page.getByLabel('One item a line, with its mass').inputValue()).toBe('')
    taps++
    await go(page, 'Need')
    const likely = await page.getByText(/^likely \d+ to \d+\sL/).textContent()
    const [low = 0, high = 0] = likely!.match(/\d+/g)!.map(Number)
    // Typical litres from memory leave the need open by several litres; a narrow range would not be honest.
    expect(high - low).toBeGreaterThanOrEqual(5)
    expect(taps).toBeLessThanOrEqual(4)
  })

  journey(
    'stay in the text over a close and a reload until they are added, and undo takes all back',
    async ({ open }) => {
      const page = await open()
      await planned(page)
      await page.getByRole('button', { name: 'Paste a list' }).click()
      await pasteInto(page, LIST)
      await page.getByRole('button', { name: 'Paste a list' }).click()
      await saved(page)
      await page.reload()
      await untilDrawn(page)
      await page.getByRole('button', { name: 'Paste a list' }).click()
      await page.getByRole('button', { name: 'Add 25 items' }).click()
      await page.getByText('25 items added to the gear.').waitFor()
      await page.locator('.added').getByRole('button', { name: 'Undo' }).click()
      expect(await page.locator('.row .facts-line').filter({ hasText: 'by kind' }).count()).toBe(0)
      expect(await page.getByLabel('One item a line, with its mass').inputValue()).toBe(LIST)
    },
  )
})

describe('the panels of the gear', () => {
  journey('keep the rules', async ({ open }) => {
    const page = await open()
    await planned(page)
    await throughPanels(page, panel => expectKeepsRules(page, { state: panel }))
  })
})
