// Choosing a pack on a small phone: what to do when it is too small, comparing, at the shop, and for several trips.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { go, journey, lookAtDemo, type Open, openMore, reloadFromStore, saved, untilDrawn } from './harness'
import { openPack } from './places'
import { expectKeepsRules } from './sizes'

const open = (page: Page, summary: string) => page.locator('summary', { hasText: summary }).first().click()
const box = (page: Page, name: string) => page.getByRole('textbox', { name })
const packNames = (page: Page) => page.locator('.row .name').allTextContents()

async function toPacks(openDemo: Open): Promise<Page> {
  const page = await openDemo()
  await go(page, 'Packs')
  return page
}

/** Types a tag of a pack that is a little too small for the demo, and keeps it. */
async function keepSmallPack(page: Page) {
  await page.getByRole('button', { name: 'At the shop' }).click()
  await box(page, 'Main body').fill('42')
  await box(page, 'Pockets').fill('8')
  await box(page, 'Pack mass').fill('900')
  await box(page, 'Rated load').fill('20')
  await page.getByRole('button', { name: 'Keep it as a candidate' }).click()
  await page.getByText('Kept:').waitFor()
}

describe('my pack is too small, what now?', () => {
  journey('Packs, one question and one tap: it does, and undo takes it back', async ({ openDemo }) => {
    const page = await toPacks(openDemo)
    await keepSmallPack(page)
    await go(page, 'Need')

    // From here: one screen, Packs. The question is asked and answered where the verdict stands.
    await openPack(page, 'Pack 4')
    const row = page.locator('.pack-page')
    await row.getByText('Too small').waitFor()
    await row.locator('summary', { hasText: 'What would make this pack work?' }).click()
    await row
      .getByRole('button', { name: /^Do it: / })
      .first()
      .click()
    await row.locator('[data-answer="does"], [data-answer="with-care"]').waitFor()
    expect(await row.getByText('Too small').count()).toBe(0)
    await row.getByRole('button', { name: 'Undo' }).click()
    await row.getByText('Too small').waitFor()
  })

  journey('where another set-up of the same pack does, it leads there', async ({ openDemo }) => {
    const page = await openDemo()
    await openPack(page, 'Two-way')
    const row = page.locator('.pack-page')
    await row.locator('summary', { hasText: 'What would make this pack work?' }).click()
    await row.getByRole('button', { name: 'Show the other set-up' }).click()
    const focused = () => page.evaluate(() => document.activeElement?.textContent?.slice(0, 11))
    await expect.poll(focused).toBe('◐ frame in:')
  })
})

describe('comparing packs', () => {
  journey('they stand in the order asked for and only those asked for', async ({ openDemo }) => {
    const page = await toPacks(openDemo)
    await expect
      .poll(() => packNames(page))
      .toEqual(['Big old carrier', 'Two-way with removable frame', 'Small frameless'])
    await page.getByLabel('Sorted by').selectOption('as listed')
    await expect.poll(async () => (await packNames(page))[0]).toBe('Small frameless')
    await page.getByLabel('Sorted by').selectOption('best first')
    await page.getByRole('button', { name: 'Filter', exact: true }).click()
    await page.getByRole('radio', { name: 'Without', exact: true }).check()
    await expect.poll(() => packNames(page)).toEqual(['Two-way with removable frame', 'Small frameless'])
    await page.getByRole('radio', { name: 'Any', exact: true }).check()
    await box(page, 'Price up to').fill('100')
    await expect.poll(() => packNames(page)).toEqual(['Big old carrier'])
    await page.getByText('1 of 3 packs shown').waitFor()
    await page.getByRole('button', { name: 'Remove the filter price up to 100' }).click()
    await expect.poll(() => packNames(page)).toHaveLength(3)
  })

  journey('a page is closed by the way back, to the row it came from', async ({ openDemo }) => {
    const page = await toPacks(openDemo)
    const row = page.locator('.pack-row').last()
    await page.evaluate(() => scrollTo(0, 120))
    await expect.poll(() => page.evaluate(() => scrollY)).toBe(120)
    const top = () => row.evaluate(element => Math.round(element.getBoundingClientRect().top))
    const before = await top()
    await row.locator('.door').click()
    const focused = () => page.evaluate(() => document.activeElement?.textContent)
    await expect.poll(focused).toBe('Small frameless')
    await page.goBack()
    await row.waitFor()
    await expect.poll(top).toBe(before)
    await expect.poll(focused).toContain('Small frameless')
  })
})

describe('at the shop', () => {
  journey(
    'a tag is checked and kept with no network, and survives a reload half typed',
    async ({ openStored, site }) => {
      const page = await openStored()
      await site.stop()
      expect(await reloadFromStore(page)).toEqual([])
      await lookAtDemo(page)
      await go(page, 'Packs')
      await page.getByRole('button', { name: 'At the shop' }).click()
      await page.getByRole('radio', { name: 'A total' }).check()
      await box(page, 'Total').fill('5000 cu in')
      await box(page, 'Pockets').fill('8')
      await page.getByText('Main body: 81.9').waitFor()
      await saved(page)
      await page.reload()
      await untilDrawn(page)
      expect(await box(page, 'Total').inputValue()).toBe('5000 cu in')
      await page.getByText('its mass is missing', { exact: false }).waitFor()
      await box(page, 'Pack mass').fill('1,4 kg')
      await box(page, 'Rated load').fill('9–13 kg')
      await page.getByText('the lower end counts').waitFor()
      await page.locator('.tag-answer', { hasText: 'Does not' }).waitFor()
      await box(page, 'Rated load').fill('24')
      await page.locator('.tag-answer', { hasText: /Does(,|$)/ }).waitFor()
      await page.getByRole('button', { name: 'Keep it as a candidate' }).click()
      await page.getByRole('button', { name: 'Back to packs' }).click()
      await expect.poll(() => packNames(page)).toContain('Pack 4')
      await page.getByRole('button', { name: 'Undo: Add pack Pack 4' }).click()
      await expect.poll(() => packNames(page)).toHaveLength(3)
    },
  )
})

describe('all my trips', () => {
  journey('two trips, their packs together, and the fewest that do for both', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    await page.getByRole('button', { name: /^Duplicate trip/ }).click()
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    await go(page, 'Packs')
    await page.getByRole('button', { name: 'All my trips' }).click()
    const boxes = page.getByRole('checkbox')
    await page.getByRole('heading', { name: 'The fewest suitable packs' }).waitFor()
    // The copy is a trip of one's own; the invented demo is left out until it is asked for.
    expect(await boxes.evaluateAll(all => all.map(it => (it as HTMLInputElement).checked))).toEqual([
      false,
      true,
    ])
    await boxes.first().check()
    await expect.poll(() => page.getByRole('columnheader').count()).toBe(3)
    const fewest = page.getByRole('region', { name: 'The fewest suitable packs' })
    expect(await fewest.getByRole('listitem').count()).toBe(1)
    await fewest.getByText('Big old carrier').waitFor()
    await page.getByRole('heading', { name: 'One pack for all of them' }).waitFor()
  })
})

describe('the rules of every screen', () => {
  const places: [string, (page: Page) => Promise<void>][] = [
    [
      'Packs with all of it open',
      async page => {
        await keepSmallPack(page)
        await page.getByRole('button', { name: 'Back to packs' }).click()
        await page.getByRole('button', { name: 'Filter', exact: true }).click()
        await page.getByRole('button', { name: 'Chart', exact: true }).click()
        await page.getByRole('slider', { name: 'Packs on the chart' }).focus()
        await page.keyboard.press('ArrowRight')
        await page
          .getByText(/, load it can carry /)
          .first()
          .waitFor()
      },
    ],
    [
      'A pack with all of it open',
      async page => {
        await keepSmallPack(page)
        await openPack(page, 'Pack 4')
        await page.locator('summary', { hasText: 'What would make this pack work?' }).last().click()
        await page
          .getByRole('button', { name: /^Do it/ })
          .first()
          .waitFor()
        for (const summary of await page.locator('summary', { hasText: 'How far it reaches' }).all())
          await summary.click()
        await page.getByRole('button', { name: /^Set aside/ }).click()
      },
    ],
    [
      'At the shop with a tag',
      async page => {
        await keepSmallPack(page)
        await page.getByRole('radio', { name: 'A total' }).check()
        await box(page, 'Total').fill('60')
        await box(page, 'Pockets').fill('8')
        await box(page, 'Rated load').fill('9–13 kg')
        await open(page, 'Name, price')
      },
    ],
    [
      'All my trips',
      async page => {
        await page.getByRole('button', { name: 'All my trips' }).click()
        await page.getByRole('table').waitFor()
      },
    ],
    [
      'four packs side by side',
      async page => {
        await page.getByRole('button', { name: 'Packs side by side' }).click()
        for (const columns of [3, 4]) {
          await page.getByRole('combobox', { name: /^(Choose two|One more)/ }).selectOption({ index: 1 })
          await expect.poll(() => page.getByRole('columnheader').count()).toBe(columns)
        }
      },
    ],
  ]

  for (const [name, reach] of places)
    journey(`kept by ${name}`, async ({ openDemo }) => {
      const page = await toPacks(openDemo)
      await reach(page)
      await expectKeepsRules(page)
    })
})
