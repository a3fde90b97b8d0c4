// The shelf on a small phone: a trip's gear put on it, another trip packed from it, a change offered and taken over;
// rows dragged and moved by keys, in the trip and on the shelf; thousands of things; and every state of it held to the
// rules of every screen.

import type { Locator, Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { at1280, go, journey, type Open, openMore, saved, untilDrawn, untilQuiet } from './harness'
import { expectKeepsRules, tooSmall, tooWide } from './sizes'

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click()

/** The demo's gear on the shelf, and the shelf open. */
async function shelved(openDemo: Open): Promise<Page> {
  const page = await openDemo()
  await go(page, 'Gear')
  await press(page, 'Put all on the shelf')
  await press(page, 'Open the shelf')
  await page.getByRole('heading', { name: 'Shelf', level: 2 }).waitFor()
  return page
}

const names = (page: Page) => page.locator('.rows .row .name').allTextContents()
const nameAt = async (page: Page, index: number) => (await names(page))[index]
const grip = (page: Page, name: string) => page.getByRole('button', { name: `Move ${name}`, exact: true })

/** Drags by the pointer from a grip to beside a row: above its middle, or below it. */
async function drag(page: Page, from: Locator, to: Locator, where: 'above' | 'below') {
  // Both clear of the edges, where the page would scroll along.
  await from.evaluate(element => {
    element.scrollIntoView({ block: 'center' })
    scrollBy(0, -150)
  })
  const start = (await from.boundingBox())!
  const end = (await to.boundingBox())!
  await page.mouse.move(start.x + start.width / 2, start.y + start.height / 2)
  await page.mouse.down()
  const y = where === 'above' ? end.y + 3 : end.y + end.height - 3
  await page.mouse.move(start.x + 30, y, { steps: 8 })
  await page.locator('.drop-line').waitFor()
}

/** Goes through what the shelf can show, and calls back at each. */
async function throughShelf(page: Page, look: (state: string) => Promise<void>) {
  await look('list')
  await page.locator('.row > .summary').nth(1).click()
  await page.getByLabel('Note', { exact: true }).fill('Lives in the blue bag')
  await press(page, 'Today')
  await untilQuiet(page)
  for (const summary of await page.locator('.editor summary').all()) await summary.click()
  await look('thing')
  await page.locator('.row > .summary').nth(1).click()
  await press(page, 'Choose')
  await page.getByRole('checkbox').nth(1).check()
  await page.getByRole('checkbox').nth(2).check()
  await press(page, 'Sort')
  await look('choosing')
  await press(page, 'Pack')
  await page.getByRole('checkbox').first().check()
  await look('packing')
  await press(page, 'Back')
  await press(page, 'Change')
  await page.getByLabel('Its name').fill('Three-season kit')
  await look('changing')
  await press(page, 'Make the kit')
  await page.getByText('Three-season kit is a kit now.').waitFor()
  await page.getByRole('radio', { name: '1 kit' }).check()
  await page.locator('.row > .summary').first().click()
  await page.getByLabel('Name', { exact: true }).waitFor()
  await look('base')
}

describe('a shelf', () => {
  journey(
    'is filled from one trip, packs another, and offers it what changes later',
    async ({ openDemo }) => {
      const page = await shelved(openDemo)
      await openMore(page)
      await press(page, 'New trip')
      await go(page, 'Gear')
      await press(page, 'Pack from the shelf')
      await page.getByLabel(/^Search/).fill('mat')
      await page.getByRole('checkbox', { name: /Foam mat/ }).check()
      await page.getByLabel(/^Search/).fill('tarp')
      await page.getByRole('checkbox', { name: /Ridge tarp/ }).check()
      await press(page, 'Pack')
      await page.getByLabel('How many of Foam mat').fill('2')
      await press(page, 'Pack 2 items')
      await page.getByText('2 items packed into').waitFor()

      await page.getByRole('button', { name: /^Foam mat/ }).click()
      await page.getByText('In this trip and 1 other').first().waitFor()
      await page.getByRole('textbox', { name: /^Mass/ }).fill('395')
      await go(page, 'Gear')
      await page.getByText('2 × Foam mat').waitFor()
      expect(await page.locator('.row', { hasText: 'Foam mat' }).textContent()).toContain('380')
      await page.getByText('1 item changed on the shelf').click()
      await page.getByText(/^mass: from 380/).waitFor()
      await expectAccessible(page)
      expect(await tooSmall(page)).toEqual([])
      await press(page, 'Take over Foam mat')
      expect(await page.locator('.row', { hasText: 'Foam mat' }).textContent()).toContain('395')
      expect(await page.locator('.offers').count()).toBe(0)

      await saved(page)
      await page.reload()
      await untilDrawn(page)
      await page.getByRole('button', { name: /Foam mat/, expanded: false }).click()
      await page.getByText(/how many: 2 \(on the shelf: 1\)/).waitFor()
    },
  )

  journey('is reached without any trip', async ({ openDemo }) => {
    const page = await shelved(openDemo)
    await openMore(page)
    await page.getByRole('button', { name: /^Delete trip/ }).click()
    await press(page, 'Open the shelf')
    await page.getByRole('heading', { name: 'Shelter' }).waitFor()
    expect(await names(page)).toContain('Foam mat')
    await press(page, 'Close')
    await page.getByRole('heading', { name: 'Trips and settings' }).waitFor()
  })
})

describe('rows', () => {
  for (const where of ['trip', 'shelf'] as const)
    journey(`of the ${where} are dragged by their grip, and moved by keys`, async ({ openDemo }) => {
      const page = await shelved(openDemo)
      if (where === 'trip') await go(page, 'Gear')
      await grip(page, 'Foam mat').waitFor()
      const row = (name: string) => page.locator('.row', { hasText: name })
      expect((await names(page)).slice(0, 4)).toEqual([
        'Ridge tarp with inner',
        'Pegs and lines',
        'Sleeping bag in its sack',
        'Foam mat',
      ])

      await drag(page, grip(page, 'Foam mat'), row('Pegs and lines'), 'above')
      await page.mouse.up()
      await expect.poll(() => nameAt(page, 1)).toBe('Foam mat')
      await page.getByText('Foam mat: place 2 of 23, in Shelter.').waitFor({ state: 'attached' })
      expect(await page.locator('.drop-line, .dragged, .lifted').count()).toBe(0)

      await page.keyboard.press('ArrowUp')
      await expect.poll(() => nameAt(page, 0)).toBe('Foam mat')
      await page.keyboard.press('End')
      await expect.poll(async () => (await names(page)).at(-1)).toBe('Foam mat')
      expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
        'Move Foam mat',
      )

      await drag(page, grip(page, 'Pegs and lines'), row('Ridge tarp'), 'above')
      await page.keyboard.press('Escape')
      await page.mouse.up()
      expect(await nameAt(page, 0)).toBe('Ridge tarp with inner')
    })

  journey('are dragged beyond the window, which scrolls along', async ({ openDemo }) => {
    const page = await shelved(openDemo)
    await grip(page, 'Ridge tarp with inner').scrollIntoViewIfNeeded()
    const start = (await grip(page, 'Ridge tarp with inner').boundingBox())!
    await page.mouse.move(start.x + 20, start.y + 20)
    await page.mouse.down()
    const foot = (await page.locator('.foot').boundingBox())!
    await page.mouse.move(start.x + 20, foot.y - 5, { steps: 6 })
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(900)
    await page.mouse.up()
    await expect.poll(async () => (await names(page)).indexOf('Ridge tarp with inner')).toBeGreaterThan(7)
  })

  journey('are pushed by a finger without the page scrolling under it', async ({ openDemo }) => {
    const page = await shelved(openDemo)
    expect(await grip(page, 'Foam mat').evaluate(element => getComputedStyle(element).touchAction)).toBe(
      'none',
    )
  })
})

describe('a shelf of hundreds of things', () => {
  journey('draws a few of them, finds any, and scrolls to the last', async ({ open }) => {
    const page = await open()
    await press(page, 'Plan a trip')
    await go(page, 'Gear')
    await press(page, 'Paste a list')
    const lines = Array.from({ length: 400 }, (_, i) => `Cord number ${i} ${10 + (i % 90)} g`)
    await page.getByLabel('One item a line, with its mass').fill(lines.join('\n'))
    await page.getByRole('button', { name: /^Add \d+ items/ }).click()
    await press(page, 'Paste a list')
    await page.getByRole('button', { name: 'Put all on the shelf' }).click()
    await press(page, 'Open the shelf')
    await page.getByText('Cord number 0', { exact: true }).waitFor()
    expect(await page.locator('.row').count()).toBeLessThan(80)
    expect(await page.locator('.row').first().getAttribute('aria-setsize')).toMatch(/^40[01]$/)

    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight))
    await page.getByText('Cord number 399', { exact: true }).waitFor()
    expect(await page.locator('.row').count()).toBeLessThan(80)
    await expectAccessible(page)

    await page.getByLabel(/^Search/).fill('number 234')
    await page.getByText('Cord number 234', { exact: true }).waitFor()
    expect(await page.locator('.row').count()).toBe(1)
  })
})

describe('the screens of the shelf', () => {
  journey('keep the rules', async ({ openDemo }) => {
    const page = await shelved(openDemo)
    await throughShelf(page, state => expectKeepsRules(page, { state }))
  })

  journey('stand beside the gear on a desk, and stay while an item is opened there', async ({ openDemo }) => {
    const page = await openDemo(at1280())
    await go(page, 'Gear')
    await press(page, 'Put all on the shelf')
    await press(page, 'Open the shelf')
    for (const place of ['Shelf', 'Gear'])
      await page.getByRole('heading', { name: place, level: 2 }).waitFor()
    await expectAccessible(page)
    await page.getByRole('region', { name: 'gear' }).getByRole('button', { name: 'Open Foam mat' }).click()
    await page.getByText('From the shelf, the same here as there.').waitFor()
    expect(await page.getByRole('heading', { name: 'Shelf', level: 2 }).isVisible()).toBe(true)
    await page.getByRole('region', { name: 'shelf' }).getByRole('button', { name: 'Close' }).click()
    await page.getByRole('heading', { name: 'Shelf', level: 2 }).waitFor({ state: 'detached' })
    await page.getByRole('heading', { name: 'Gear', level: 2 }).waitFor()
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
  })
})
