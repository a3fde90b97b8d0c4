// The hiker's packs without any trip: brought in by a table, marked, given on by a link, and opened by somebody else.

import { expect } from 'vitest'
import { expectAccessible } from './axe'
import { storedRecords } from './database'
import { journey, profileOf, untilDrawn } from './harness'

journey('packs are kept without a trip, set aside, and given on by a link', async ({ open }) => {
  const page = await open()
  const button = (name: string | RegExp, exact = true) => page.getByRole('button', { name, exact })
  await button(/^More/, false).click()
  await button('My packs').click()
  await button('Import a table').click()
  await page.locator('input[type=file]').last().setInputFiles('data/invented-packs.csv')
  await button('Add 60 packs').click()
  await page.getByText('60 packs added to the packs.').waitFor()
  await button('Import a table').click()
  await page.locator('.row > .summary').first().click()
  await button(/^Star /, false).click()
  await button(/^Set aside /, false).click()
  await page.getByLabel('Why? May stay empty').fill('too hot')
  await button('Set it aside').click()
  await expectAccessible(page)
  await button('Back to packs').click()
  await page.locator('.row').first().waitFor()
  // Where one is, is stored a moment later.
  await expect
    .poll(async () => JSON.stringify(await storedRecords(page, 'library')))
    .toContain('"detail":null')

  await page.reload()
  await untilDrawn(page)
  await page.locator('.row').first().waitFor()
  await button(/1 starred$/, false).click()
  await page.getByText('1 of 60 packs shown').waitFor()
  await page.getByText('“too hot”').waitFor()
  await button('Give packs on').click()
  await profileOf(page).grantPermissions(['clipboard-read', 'clipboard-write'])
  await button('Copy link').click()
  await page.getByText(/The link is copied/).waitFor()
  const link = await page.evaluate(() => navigator.clipboard.readText())
  await expectAccessible(page)

  const other = await open()
  await other.evaluate(hash => {
    location.hash = hash
  }, new URL(link).hash)
  await other.getByRole('heading', { name: 'Someone’s packs' }).waitFor()
  await expectAccessible(other)
  await other.getByRole('button', { name: 'Add 1 pack' }).click()
  await other.locator('.row').first().waitFor()
  expect(await other.locator('.row').count()).toBe(1)
  expect(await other.getByText('too hot').count()).toBe(0)
})
