// Ways to what lies behind the four places, on the demo trip.

import type { Page } from 'playwright-core'
import { go } from './harness'

/** The gear by what takes the room, once that is reckoned. */
export async function openCosts(page: Page): Promise<void> {
  await go(page, 'Gear')
  await page.getByRole('button', { name: 'What takes the room' }).click()
  await page.locator('.cost').first().waitFor()
}

/** The list to tick, and the pack on the scale, with a reading that is too much. */
export async function openPackingDay(page: Page): Promise<void> {
  await go(page, 'Trip')
  await page.getByRole('main').getByRole('button', { name: 'Packing day' }).click()
  await page.getByRole('textbox', { name: /^It weighs/ }).fill('15')
  await page.getByRole('heading', { name: 'Likely causes' }).waitFor()
}

/** What came home, with food left over. */
export async function openAfterTrip(page: Page): Promise<void> {
  await go(page, 'Trip')
  await page.getByRole('button', { name: 'After the trip' }).click()
  await page.getByRole('textbox', { name: /^Food left over/ }).fill('0.8')
  await page.getByRole('button', { name: / a day from now on$/ }).waitFor()
}

/** What should be left at a stop of the demo. */
export async function openOnTheWay(page: Page): Promise<void> {
  await go(page, 'Trip')
  await page.getByRole('main').getByRole('button', { name: 'On the way' }).click()
  await page.getByRole('button', { name: /^Bare Saddle/ }).click()
  await page.getByRole('heading', { name: /^Skip the resupply/ }).waitFor()
}

/** The demo's sleeping bag with a heavier one as its alternative, both told, and one of them taken. */
export async function openAlternatives(page: Page): Promise<void> {
  await go(page, 'Gear')
  const bag = 'Sleeping bag in its sack'
  const openRow = (name: string) =>
    page
      .locator('.row > .summary')
      .filter({ has: page.locator('.name', { hasText: new RegExp(`^${name}$`) }) })
      .click()
  await openRow(bag)
  await page.getByRole('button', { name: `Duplicate ${bag}` }).click()
  await openRow(`${bag} \\(copy\\)`)
  await page.getByRole('textbox', { name: /^Mass/ }).fill('2 kg')
  await page.getByRole('button', { name: 'Put on the shelf' }).click()
  await page.getByRole('button', { name: `Delete ${bag} (copy)` }).click()
  await openRow(bag)
  await page.getByText('Alternatives', { exact: true }).click()
  await page.getByRole('button', { name: `Add ${bag} (copy) as an alternative` }).click()
  await openRow(bag)
  await page.getByRole('button', { name: /^or / }).click()
  await page.getByRole('button', { name: /^Take .* \+1\.\d kg/ }).click()
  await page.getByRole('button', { name: /^Take .* −1\.\d kg/ }).waitFor()
}

/** Goes to the page of a pack: the first whose name holds this text. */
export async function openPack(page: Page, name = ''): Promise<void> {
  await go(page, 'Packs')
  await page
    .locator('.pack-row > .door')
    .filter({ has: page.locator('.name', { hasText: name }) })
    .first()
    .click()
  await page.locator('.pack-page').waitFor()
}
