// How sure the answer is, on a small phone: one tap from a doubt to its measuring, one's own packing kept over a
// reload and taken back, and the trial run apart from the page, without a network.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { go, journey, lookAtDemo, profileOf, saved, untilDrawn } from './harness'
import { openLine } from './lines'
import { openPack } from './places'
import { expectKeepsRules, tooWide } from './sizes'

const openSure = (page: Page) => openLine(page, 'How sure it is')

const openCalibration = async (page: Page) => {
  await openSure(page)
  await page.getByRole('button', { name: 'Use your own packing', exact: true }).click()
  await page.getByRole('heading', { name: 'Your own packing', level: 2 }).waitFor()
}

async function keepPacking(page: Page) {
  await page.getByLabel('Which pack').selectOption({ index: 1 })
  await page.getByLabel('How full').fill('85')
  await page.getByRole('button', { name: 'Add this packing' }).click()
  await page.getByText('Added. This trip uses it now.').waitFor()
}

describe('the greatest doubt', () => {
  journey('is one tap from its measuring, and measured it is none any more', async ({ openDemo }) => {
    const page = await openDemo()
    await openSure(page)
    const first = page.locator('.to-measure button').first()
    const name = (await first.locator('.name').textContent())!
    await first.tap()
    await page.getByRole('group', { name: 'Measure it as' }).waitFor()
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Measure it')
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe(name)
    await page.getByLabel('In water').check()
    await page.getByLabel('The water rises by').fill('3')
    await page.getByRole('button', { name: /^Use 3/ }).click()
    await go(page, 'Need')
    await openSure(page)
    expect(await page.locator('.to-measure .name').allTextContents()).not.toContain(name)
  })
})

describe('one’s own packing', () => {
  journey('is reckoned with over a reload, and one undo takes back all of it', async ({ openDemo }) => {
    const page = await openDemo()
    await openCalibration(page)
    await keepPacking(page)
    await saved(page)
    await page.reload()
    await untilDrawn(page)
    await page.getByRole('heading', { name: 'Your packings' }).waitFor()
    expect(await page.locator('.packing').count()).toBe(1)
    await page.getByRole('button', { name: 'Back to need' }).click()
    await openSure(page)
    await page
      .getByText(/^Based on one packing of your own/)
      .first()
      .waitFor()
    await openPack(page)
    await page
      .locator('.verdict')
      .getByText(/^Based on one packing of your own/)
      .first()
      .waitFor()
    await page.getByRole('button', { name: /^Undo/ }).first().click()
    await page
      .locator('.verdict')
      .getByText(/^Based on average packing/)
      .first()
      .waitFor()
    await go(page, 'Need')
    await openCalibration(page)
    expect(await page.locator('.packing').count()).toBe(0)
  })

  journey('keeps the rules of every screen', async ({ openDemo }) => {
    const page = await openDemo()
    await openCalibration(page)
    await keepPacking(page)
    for (const way of ['Would not close', 'In a carton', 'Closed']) {
      await page.getByLabel(way, { exact: true }).check()
      await expectKeepsRules(page, { state: way })
    }
  })
})

describe('the trial', () => {
  journey(
    'runs in a worker without a network, and says how formula and trial compare',
    async ({ openStored }) => {
      const page = await openStored()
      await lookAtDemo(page)
      await profileOf(page).setOffline(true)
      const worker = page.waitForEvent('worker')
      await openSure(page)
      await page.getByRole('button', { name: 'Check by simulation' }).click()
      await worker
      await page.getByText(/^Formula and simulation (agree|differ)/).waitFor()
      const rows = page
        .getByRole('table', { name: 'Main body, by formula and by simulation' })
        .getByRole('row')
      expect(await rows.count()).toBeGreaterThanOrEqual(5)
      const seed1 = await rows.allTextContents()
      await page.getByRole('button', { name: 'Run again' }).click()
      await page.getByText('Run 2.').waitFor()
      expect(await rows.allTextContents()).not.toEqual(seed1)
      await expectAccessible(page)
      expect(await tooWide(page)).toBeLessThanOrEqual(0)
      // The trip changes: what was tried is not shown as if it were of the changed one.
      await go(page, 'Gear')
      await page.getByRole('button', { name: /^Sleeping bag/ }).click()
      await page.getByLabel('Packed volume, each').fill('9')
      await go(page, 'Need')
      await openSure(page)
      await page.getByRole('button', { name: 'Check by simulation' }).waitFor()
    },
  )

  journey('ends when it is cancelled, and can be started again', async ({ openDemo }) => {
    const page = await openDemo()
    // It runs, and its answer does not come before it is cancelled, however slow the page.
    await page.evaluate(() => {
      const Usual = Worker
      globalThis.Worker = class extends Usual {
        constructor(...of: ConstructorParameters<typeof Worker>) {
          super(...of)
          this.addEventListener('message', event => event.stopImmediatePropagation())
          globalThis.Worker = Usual
        }
      }
    })
    await openSure(page)
    await page.getByRole('button', { name: 'Check by simulation' }).click()
    await page.getByRole('button', { name: 'Cancel', exact: true }).click()
    await page.getByText('Simulation cancelled.').waitFor()
    await expect.poll(() => page.workers().length).toBe(0)
    await openSure(page)
    await page.getByRole('button', { name: 'Check by simulation' }).click()
    await page.getByText(/^Formula and simulation (agree|differ)/).waitFor()
  })
})
