// Every screen, and the ways to what lies behind the four places, on the demo trip. Nothing here knows of tests.

import type { Page } from 'playwright-core'
import { go, openMore, untilQuiet } from './ways'

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
  await page.getByRole('main').getByRole('button', { name: 'After the trip' }).click()
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

/** The demo walked by two adults and a child, shared out. Goes through what a family does: one tap a person, three figures each. */
export async function openShared(page: Page): Promise<void> {
  await go(page, 'Trip')
  await page.getByRole('button', { name: 'Walk with somebody' }).click()
  await page.getByRole('button', { name: 'Add another' }).click()
  const people = [
    ['Ada', '60', '38'],
    ['Bo', '80', '40'],
    ['Cy', '34', '10'],
  ] as const
  for (const [nth, [name, mass, age]] of people.entries()) {
    const person = page.locator('.person').nth(nth)
    await person.getByRole('textbox', { name: /^Name/ }).fill(name)
    await person.getByRole('textbox', { name: /^Body mass/ }).fill(mass)
    await person.getByRole('textbox', { name: /^Age/ }).fill(age)
  }
  await page.locator('.people').getByRole('button', { name: 'Who carries what' }).click()
  await page.getByRole('button', { name: 'Share out', exact: true }).click()
  await page.getByText(/^No fairer share exists/).waitFor()
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

/** Goes to the page of a pack: the first whose name holds this text, in the rows or at a desk in the table. */
export async function openPack(page: Page, name = ''): Promise<void> {
  await go(page, 'Packs')
  await page
    .locator('.pack-row > .door, .pack-table tbody tr')
    .filter({ has: page.locator('.name, .line-name', { hasText: name }) })
    .first()
    .click()
  await page.locator('.pack-page').waitFor()
}

/** The page that explains the model, with all its parts open. */
export async function openHelp(page: Page): Promise<void> {
  await openMore(page)
  await page.getByRole('button', { name: 'How it works' }).click()
  await page.getByRole('button', { name: 'Open all' }).click()
  await page.getByRole('heading', { name: 'Sources' }).waitFor()
}

/** A screen behind a button of the packs. */
const fromPacks = (button: string) => async (page: Page) => {
  await go(page, 'Packs')
  // At a desk it stands at the side.
  await page.getByRole('button', { name: button, exact: true }).first().click()
}

/** A screen behind a button of what lies behind the four places. */
const fromMore = (button: string) => async (page: Page) => {
  await openMore(page)
  await page.getByRole('button', { name: button, exact: true }).first().click()
}

interface Way {
  name: string
  /** Leads there from any of the four places of the demo trip. */
  open: (page: Page) => Promise<void>
  /** Has no places: the way back is its own. */
  isApart?: true
}

/** Every screen of an open trip with the way to it. */
export const SCREENS: readonly Way[] = [
  { name: 'Trip', open: page => go(page, 'Trip') },
  { name: 'Gear', open: page => go(page, 'Gear') },
  { name: 'Need', open: page => go(page, 'Need') },
  { name: 'Packs', open: page => go(page, 'Packs') },
  { name: 'What takes the room', open: openCosts },
  { name: 'On the way', open: openOnTheWay },
  { name: 'At the shop', open: fromPacks('At the shop') },
  { name: 'All my trips', open: fromPacks('All my trips') },
  { name: 'Packs side by side', open: fromPacks('Packs side by side') },
  { name: 'Side by side', open: fromPacks('Side by side') },
  { name: 'A pack', open: page => openPack(page) },
  { name: 'Packing day', open: openPackingDay },
  { name: 'After the trip', open: openAfterTrip },
  { name: 'Your own packing', open: openOwnPacking },
  { name: 'Shelf', open: fromMore('Open the shelf') },
  { name: 'My packs', open: fromMore('My packs') },
  { name: 'More', open: openMore, isApart: true },
  { name: 'Sheet', open: fromMore('Print a sheet'), isApart: true },
  { name: 'How it works', open: openHelp, isApart: true },
  { name: 'Who carries what', open: openShared },
]

async function openOwnPacking(page: Page) {
  await go(page, 'Need')
  await page.getByRole('heading', { name: 'How sure it is' }).click()
  await page
    .getByRole('button', { name: /your own packing|^Packed it/i })
    .first()
    .click()
}

/** Back to a place of the trip from where there are no places. */
export async function backFrom(page: Page, { isApart }: Way): Promise<void> {
  const places = page.getByRole('navigation', { name: 'Places', exact: true })
  while (isApart && !(await places.isVisible())) {
    await page.getByRole('button', { name: 'Back', exact: true }).first().click()
    await untilQuiet(page)
  }
}
