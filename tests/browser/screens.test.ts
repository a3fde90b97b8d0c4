// Every screen, small and large, light and dark: no accessibility rule broken, nothing too wide, nothing too small to touch.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible, expectAccessibleInDark } from './axe'
import { openDiffering } from './backups'
import { at320, at1280, go, journey, type Place, untilQuiet } from './harness'
import {
  openAfterTrip,
  openCosts,
  openHelp,
  openOnTheWay,
  openPack,
  openPackingDay,
  openShared,
} from './places'
import { enlarge, expectKeepsRules, tooWide, tooWideSpaced } from './sizes'

const PLACES = ['Trip', 'Gear', 'Need', 'Packs'] as const

/** Asserts all that is asked of a screen, in both lights. */
async function expectKept(page: Page, state: string) {
  await expectKeepsRules(page, { state })
  await expectAccessibleInDark(page)
}

/** Goes to a place and opens its second entry, so that an editor is among what is looked at. */
async function openPlace(page: Page, place: Place) {
  await go(page, place)
  if (place === 'Need') return
  if (place === 'Packs') {
    await page.getByRole('button', { name: 'Filter', exact: true }).click()
    return
  }
  const row = page.locator('.row > .summary').nth(1)
  if ((await row.getAttribute('aria-expanded')) === 'false') await row.click()
  await untilQuiet(page)
  for (const summary of await page.locator('.editor summary').all()) await summary.click()
}

describe('on a phone', () => {
  journey('every screen keeps the rules', async ({ openDemo }) => {
    const page = await openDemo()
    for (const place of PLACES) {
      await openPlace(page, place)
      await expectKept(page, place)
      expect(await tooWideSpaced(page), `${place} with letters and words apart`).toBeLessThanOrEqual(0)
    }
    await openPack(page, 'Two-way')
    await page.getByText('Edit figures').click()
    for (const summary of await page.locator('.pack-page .editor summary').all()) await summary.click()
    await expectKept(page, 'a pack')
    await openCosts(page)
    await expectKept(page, 'What takes the room')
    await openOnTheWay(page)
    await expectKept(page, 'On the way')
    await openPackingDay(page)
    await expectKept(page, 'Packing day')
    await openAfterTrip(page)
    await expectKept(page, 'After the trip')
    await openShared(page)
    await expectKept(page, 'Who carries what')
    for (const place of ['Trip', 'Need'] as const) {
      await go(page, place)
      await untilQuiet(page)
      await expectKept(page, `${place} of several people`)
    }
    await openHelp(page)
    await expectKept(page, 'How it works')
    await page.getByRole('button', { name: 'Back' }).click()
    await page.getByRole('heading', { name: 'Trips and settings' }).waitFor()
    await expectKept(page, 'More')
    await openDiffering(page)
    await expectKept(page, 'a backup')
  })

  journey('what takes the focus is seen whole, above the foot', async ({ openDemo }) => {
    const page = await openDemo()
    await openPlace(page, 'Trip')
    const covered = () =>
      page.evaluate(() => {
        const focused = document.activeElement!
        if (focused === document.body || focused.closest('.foot')) return ''
        const { top, bottom } = focused.getBoundingClientRect()
        const foot = document.querySelector('.foot')!.getBoundingClientRect().top
        return top >= -0.5 && bottom <= foot + 0.5
          ? ''
          : `${focused.textContent} ${top} to ${bottom} of ${foot}`
      })
    const seen = new Set<string>()
    for (let i = 0; i < 60; i++) {
      await page.keyboard.press('Tab')
      expect(await covered()).toBe('')
      seen.add(await page.evaluate(() => document.activeElement!.outerHTML.slice(0, 300)))
    }
    expect(seen.size).toBeGreaterThan(30)
  })

  journey('the places can be gone through in 320 px with text twice as large', async ({ openDemo }) => {
    const page = await openDemo(at320())
    await enlarge(page)
    for (const place of PLACES) {
      await openPlace(page, place)
      expect(await tooWide(page), place).toBeLessThanOrEqual(0)
    }
    await openPack(page, 'Two-way')
    await page.getByText('Edit figures').click()
    expect(await tooWide(page), 'a pack').toBeLessThanOrEqual(0)
  })
})

describe('on a desk', () => {
  journey('each place stands over the rest, beside the answer, and keeps the rules', async ({ openDemo }) => {
    const page = await openDemo(at1280())
    const side = page.getByRole('complementary', { name: 'Answer and places' })
    const sideTop = () => side.evaluate(element => element.getBoundingClientRect().top)
    for (const place of PLACES) {
      await go(page, place)
      await untilQuiet(page)
      await side.getByRole('heading', { name: 'Heaviest load' }).waitFor()
      expect(await page.title()).toBe(`${place} · Salt Ridge (invented) · Pack Reckoner`)
      const top = await sideTop()
      await page.evaluate(() => scrollBy(0, 200))
      expect(await sideTop(), place).toBe(top)
      await expectAccessible(page)
      expect(await tooWide(page), place).toBeLessThanOrEqual(0)
    }
  })
})
