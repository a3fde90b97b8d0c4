// Ways to what lies behind the four places, on the demo trip.

import type { Page } from 'playwright-core'
import { go } from './harness'

/** The gear by what takes the room, once that is reckoned. */
export async function openCosts(page: Page): Promise<void> {
  await go(page, 'Gear')
  await page.getByRole('button', { name: 'What takes the room' }).click()
  await page.locator('.cost').first().waitFor()
}

/** What should be left at a stop of the demo. */
export async function openOnTheWay(page: Page): Promise<void> {
  await go(page, 'Trip')
  await page.getByRole('button', { name: 'On the way' }).click()
  await page.getByRole('button', { name: /^Bare Saddle/ }).click()
  await page.getByRole('heading', { name: /^Skip the resupply/ }).waitFor()
}
