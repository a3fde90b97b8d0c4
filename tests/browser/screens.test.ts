// Every screen, small and large, light and dark: no accessibility rule broken, nothing too wide, nothing too small to touch.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { openDiffering, openMore } from './backups'
import { at360, at1280, dark, journey, LIGHTS } from './harness'
import { enlarge, tooSmall, tooWide } from './sizes'

const PLACES = ['Trip', 'Gear', 'Need', 'Packs'] as const

async function openDemo(page: Page) {
  await page.getByRole('button', { name: 'Look at a demo trip' }).click()
  await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
}

/** Goes to a place and opens its second entry, so that an editor is among what is looked at. */
async function openPlace(page: Page, place: string) {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: place }).click()
  await page.getByRole('heading', { name: place, level: 2 }).waitFor()
  if (place === 'Need') return
  const row = page.locator('.row > .summary').nth(1)
  if ((await row.getAttribute('aria-expanded')) === 'false') await row.click()
  for (const summary of await page.locator('.editor summary').all()) await summary.click()
}

describe('on a phone', () => {
  for (const [light, options] of LIGHTS) {
    journey(`every screen keeps the rules ${light}`, async ({ open }) => {
      const page = await open(options)
      await openDemo(page)
      for (const place of PLACES) {
        await openPlace(page, place)
        await expectAccessible(page)
        expect(await tooWide(page)).toBeLessThanOrEqual(0)
        expect(await tooSmall(page)).toEqual([])
      }
      await page.getByRole('button', { name: 'More', exact: true }).click()
      await page.getByRole('heading', { name: 'Trips and settings' }).waitFor()
      await page.getByRole('button', { name: 'Save everything as a file' }).waitFor()
      await expectAccessible(page)
      expect(await tooSmall(page)).toEqual([])
      await openDiffering(page)
      await expectAccessible(page)
      expect(await tooWide(page)).toBeLessThanOrEqual(0)
      expect(await tooSmall(page)).toEqual([])
    })
  }

  journey('every screen fits 320 px with text twice as large', async ({ open }) => {
    const page = await open({ ...at360(), viewport: { width: 320, height: 568 } })
    await openDemo(page)
    await enlarge(page)
    for (const place of PLACES) {
      await openPlace(page, place)
      expect(await tooWide(page), place).toBeLessThanOrEqual(0)
    }
    await openMore(page)
    await openDiffering(page)
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
  })
})

describe('on a desk', () => {
  for (const [light, options] of [
    ['by day', at1280()],
    ['in the dark', { ...at1280(), ...dark }],
  ] as const) {
    journey(`the four places stand side by side and keep the rules ${light}`, async ({ open }) => {
      const page = await open(options)
      await openDemo(page)
      for (const place of PLACES) await page.getByRole('heading', { name: place, level: 2 }).waitFor()
      await expectAccessible(page)
      expect(await tooWide(page)).toBeLessThanOrEqual(0)
    })
  }
})
