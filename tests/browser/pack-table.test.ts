// At a desk: the chart over the table of all packs, each naming what the other shows.

import { expect } from 'vitest'
import { expectAccessible } from './axe'
import { at1280, go, journey } from './harness'
import { tooWide } from './sizes'

journey(
  'sixty packs at a desk: ten columns fit, a column sorts, chart and table name one pack',
  async ({ openDemo }) => {
    const page = await openDemo(at1280())
    await go(page, 'Packs')
    await page.getByRole('button', { name: 'Import a table' }).click()
    await page.locator('input[type=file]').last().setInputFiles('data/invented-packs.csv')
    await page.getByRole('button', { name: 'Add 60 packs' }).click()
    await page.getByText('60 packs added to the packs.').waitFor()
    await page.getByText('Columns: 7').click()
    await page.getByRole('checkbox', { name: 'Carried mass' }).check()
    await page.getByText('Columns: 8').click()
    expect(await page.getByRole('columnheader').count()).toBe(10)
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
    const table = page.locator('.table-box')
    expect(await table.evaluate(box => box.scrollWidth - box.clientWidth)).toBeLessThanOrEqual(0)

    await page.getByRole('columnheader', { name: 'Mass' }).getByRole('button').press('Enter')
    await page.locator('th[aria-sort="ascending"]', { hasText: 'Mass' }).waitFor()
    await page.locator('[data-row="3"]').hover()
    const name = await page.locator('[data-row="3"] .line-name').textContent()
    await page.locator('.named strong', { hasText: name! }).waitFor()
    await page.locator('.lit-ring').waitFor()
    await page.getByRole('slider', { name: 'Packs on the chart' }).press('End')
    await expect.poll(() => page.locator('.named strong').textContent()).not.toBe(name)
    await expectAccessible(page)
  },
)
