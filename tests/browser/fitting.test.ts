// The fit of rigid things and the placing of the load, from sizes typed on a small phone to what is said of each pack.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { figuresOn, openReasons } from './figures'
import { at360, at1280, dark, journey } from './harness'
import { enlarge, tooWide } from './sizes'

const go = (page: Page, place: string) =>
  page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: place }).click()

async function openDemo(page: Page) {
  await page.getByRole('button', { name: 'Look at a demo trip' }).click()
  await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
}

/** Both panels of the first pack, open. */
async function openBoth(page: Page) {
  await page.getByText('All reasons and figures').first().click()
  await page.locator('.fitting').first().waitFor()
  await page.getByText('Where heavy things go').first().click()
  await page.locator('.placing svg').waitFor()
}

describe('a rigid thing', () => {
  journey(
    'made a box goes into a pack with corners, and a box too wide is told at once',
    async ({ open }) => {
      const page = await open()
      await openDemo(page)
      await go(page, 'Gear')
      await page.getByText('Hard food box').first().click()
      await page.getByText('Containers, size, options').click()
      await page.getByLabel('Box', { exact: true }).last().check()
      await page.getByLabel('Width (cm)').last().fill('23')
      await page.getByLabel('Depth (cm)').last().fill('17')
      await go(page, 'Packs')
      const first = page.locator('.row').first()
      await first.getByText('Something is too wide:').first().waitFor()
      await first.locator('.summary').first().click()
      await first.getByText('Price, fabric, inner size').click()
      await first.getByLabel('With corners').check()
      await expect.poll(() => first.getByText('Something is too wide:').count()).toBe(0)
      await first.getByText('All reasons and figures').click()
      expect(
        await first.locator('.fits li').filter({ hasText: 'Hard food box' }).first().textContent(),
      ).toMatch(/Hard food box: fits upright/)
    },
  )
})

describe('fit and placing of the demo', () => {
  journey('give every figure its reason', async ({ open }) => {
    const page = await open()
    await openDemo(page)
    await go(page, 'Packs')
    await openBoth(page)
    await openReasons(page)
    const ours = (await figuresOn(page)).filter(
      ({ state }) => state === 'unmarked' || state === 'unexplained',
    )
    expect(ours.map(({ figure, near, state }) => `${figure}, ${state}: ${near}`)).toEqual([])
  })

  for (const [where, options] of [
    ['on a phone by day', at360()],
    ['on a phone in the dark', { ...at360(), ...dark }],
    ['at a desk', at1280()],
  ] as const)
    journey(`keep the rules ${where}`, async ({ open }) => {
      const page = await open(options)
      await openDemo(page)
      if (where !== 'at a desk') await go(page, 'Packs')
      await openBoth(page)
      await expectAccessible(page)
      expect(await tooWide(page)).toBeLessThanOrEqual(0)
    })

  journey('fit 320 px with text twice as large', async ({ open }) => {
    const page = await open({ ...at360(), viewport: { width: 320, height: 568 } })
    await openDemo(page)
    await enlarge(page)
    await go(page, 'Packs')
    await openBoth(page)
    await openReasons(page)
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
  })
})
