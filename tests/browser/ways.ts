// The ways to the places of an open trip, for journeys and for photographs: nothing here knows of tests.

import type { Page } from 'playwright-core'

export type Place = 'Trip' | 'Gear' | 'Need' | 'Packs'

export const placeTab = (page: Page, place: Place) =>
  page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: place, exact: true })

/** Goes to one of the four places of an open trip on a phone, and waits until it is there. */
export async function go(page: Page, place: Place): Promise<void> {
  await placeTab(page, place).click()
  await page.getByRole('heading', { name: place, level: 2, exact: true }).waitFor()
}

/** Opens what lies behind the four places. */
export async function openMore(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'More', exact: true }).click()
  await page.getByRole('heading', { name: 'Trips and settings' }).waitFor()
}

/** Waits until nothing on the page is still on its way: parts fetched, files read, what is reckoned after the picture. */
export const untilQuiet = (page: Page) =>
  page.waitForFunction(
    () =>
      !/Working it out…|Opening…|Reading…|Calculating .* more dry camp/.test(document.body.textContent ?? ''),
  )
