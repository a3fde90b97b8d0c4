// The fit of rigid things and the placing of the load, from sizes typed on a small phone to what is said of each pack.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { askAll, figuresOn } from './figures'
import { at1280, go, journey } from './harness'
import { openPack } from './places'
import { tooWide, tooWideAtSmallest } from './sizes'

/** The placing in the first pack, open. */
async function openPlacing(page: Page) {
  await page.getByText('Where heavy items go').first().click()
  await page.locator('.placing svg').waitFor()
}

/** All that is said of the first pack, over the page. */
async function openReasons(page: Page) {
  await page.getByText('All reasons and figures').first().click()
  await page.locator('.fitting').first().waitFor()
}

describe('a rigid thing', () => {
  journey(
    'made a box goes into a pack with corners, and a box too wide is told at once',
    async ({ openDemo }) => {
      const page = await openDemo()
      await go(page, 'Gear')
      await page.getByText('Hard food box').first().click()
      await page.getByText('Containers, size, options').click()
      await page.getByLabel('Box', { exact: true }).last().check()
      await page.getByLabel('Width (cm)').last().fill('23')
      await page.getByLabel('Depth (cm)').last().fill('17')
      await openPack(page, 'Small frameless')
      const first = page.locator('.pack-page')
      await first.getByText('Something is too wide:').first().waitFor()
      await first.getByText('Edit figures').click()
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
  journey('give every figure its reason', async ({ openDemo }) => {
    const page = await openDemo()
    await openPack(page)
    await openPlacing(page)
    const inSheets = await askAll(page)
    const ours = [...(await figuresOn(page)), ...inSheets].filter(
      ({ state }) => state === 'unmarked' || state === 'unexplained',
    )
    expect(ours.map(({ figure, near, state }) => `${figure}, ${state}: ${near}`)).toEqual([])
  })

  journey('keep the rules on a phone', async ({ openDemo }) => {
    const page = await openDemo()
    await openPack(page)
    await openPlacing(page)
    await openReasons(page)
    await expectAccessible(page)
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
    expect(await tooWideAtSmallest(page)).toBeLessThanOrEqual(0)
  })

  journey('keep the rules at a desk', async ({ openDemo }) => {
    const page = await openDemo(at1280())
    await openPack(page)
    await openPlacing(page)
    await openReasons(page)
    await expectAccessible(page)
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
  })
})
