// A reason within reach of every figure that the app reckons: walked over every screen of the demo trip, at 360 px, with
// everything unfolded and every figure asked.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { askAll, figuresOn, type Seen, unfold } from './figures'
import { go, journey, openMore, untilQuiet } from './harness'
import {
  openAfterTrip,
  openAlternatives,
  openCosts,
  openHelp,
  openOnTheWay,
  openPack,
  openPackingDay,
} from './places'
import { tooSmall, tooWideAtSmallest } from './sizes'

/** An invented way due north over a hill, 24 km. */
const track = `<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Hill</name><trkseg>${Array.from(
  { length: 241 },
  (_, i) =>
    `<trkpt lat="${(46 + i / 1112).toFixed(6)}" lon="7"><ele>${Math.round(900 + 500 * Math.sin(i / 40))}</ele></trkpt>`,
).join('')}</trkseg></trk></gpx>`

/** Everything in view that is a figure, once all is unfolded and every figure was asked. */
async function seenOn(page: Page): Promise<Seen[]> {
  await unfold(page)
  await untilQuiet(page)
  const inSheets = await askAll(page)
  return [...(await figuresOn(page)), ...inSheets]
}

const without = (seen: Seen[]) =>
  seen
    .filter(({ state }) => state === 'unmarked' || state === 'unexplained')
    .map(({ figure, near, state }) => `${figure}, ${state}: ${near}`)

/** Fields that count as something while they are empty, and do not say where that comes from. Nothing and one of a kind need no origin. */
const withoutOrigin = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLInputElement>('.field input[placeholder]')].flatMap(input => {
      const { placeholder, value } = input
      if (value || !placeholder || Number(placeholder) === 0 || placeholder === '1') return []
      const about =
        input.closest('.field')!.textContent +
        (input.closest('details, fieldset, section')?.textContent ?? '')
      const said = /our judgement|common practice|third-party copy|a stand-in/.test(about)
      return said ? [] : [input.dataset.path ?? placeholder]
    }),
  )

function expectReasons(seen: Seen[], least: number) {
  expect(without(seen)).toEqual([])
  expect(seen.filter(({ state }) => state === 'why').length).toBeGreaterThanOrEqual(least)
}

const plain = (text: string) => text.replace(/\s/g, ' ')

async function openRow(page: Page, name: RegExp) {
  const row = page
    .locator('.row > .summary')
    .filter({ has: page.locator('.name', { hasText: name }) })
    .first()
  if ((await row.getAttribute('aria-expanded')) === 'false') await row.click()
}

describe('every figure has its reason within reach', () => {
  journey(
    'on the need; on one’s own packing and more all is typed; on the page that explains the model',
    async ({ openDemo }) => {
      const page = await openDemo()
      expectReasons(await seenOn(page), 60)
      await page
        .getByRole('button', { name: /your own packing|^Packed it/i })
        .first()
        .click()
      await page.getByRole('heading', { name: 'Heaviest load' }).waitFor({ state: 'detached' })
      expect(without(await seenOn(page))).toEqual([])
      await openMore(page)
      expect(without(await seenOn(page))).toEqual([])
      await page.getByRole('button', { name: 'Back', exact: true }).first().click()
      await openHelp(page)
      expectReasons(await seenOn(page), 10)
    },
  )

  journey('on the trip and the gear, packing day, on the way and after', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Trip')
    await openRow(page, /Bare Saddle/)
    expectReasons(await seenOn(page), 4)
    await page.getByRole('checkbox', { name: /^Work the hourly rate out/ }).check()
    expectReasons(await seenOn(page), 6)
    expect(await withoutOrigin(page)).toEqual([])
    await go(page, 'Gear')
    await openRow(page, /^Gas$/)
    await page.getByRole('button', { name: /^Work out .* from the water/ }).click()
    expectReasons(await seenOn(page), 6)
    expect(await withoutOrigin(page)).toEqual([])
    await openCosts(page)
    expectReasons(await seenOn(page), 20)
    await openOnTheWay(page)
    await page.getByRole('textbox', { name: /^Water \(L\)/ }).fill('1')
    await page.getByLabel(/^Left Cistern Terrace/).fill('07:00')
    await page.getByLabel(/^Reached Bare Saddle/).fill('13:30')
    await page.getByText(/times the time/).waitFor()
    expectReasons(await seenOn(page), 20)
    await openPackingDay(page)
    expectReasons(await seenOn(page), 8)
    await openAfterTrip(page)
    expectReasons(await seenOn(page), 3)
  })

  journey(
    'of what an item may be instead, a thing measured, a day’s food mixed, a track',
    async ({ openDemo }) => {
      const page = await openDemo()
      await openAlternatives(page)
      expectReasons(await seenOn(page), 2)
      await expectAccessible(page)
      await openRow(page, /^Gas$/)
      await page.getByText('Measure it', { exact: true }).click()
      await page.getByRole('textbox', { name: /^Around it/ }).fill('34')
      await page
        .getByRole('textbox', { name: /^Length/ })
        .first()
        .fill('11')
      await page.getByText('two times in three within that').waitFor()
      await page.getByRole('button', { name: /day’s food/ }).click()
      for (const [food, grams] of [
        ['oats', '150'],
        ['nuts', '80'],
      ] as const) {
        await page.getByRole('textbox', { name: 'Find a food' }).fill(food)
        await page.locator('.mixer .kind').first().click()
        await page.locator('.portion input').last().fill(grams)
      }
      await page.getByText('Energy by mass').waitFor()
      expectReasons(await seenOn(page), 10)
      await go(page, 'Trip')
      await page.getByText('Start over').click()
      await page.getByRole('button', { name: 'Stops from a track (GPX)' }).click()
      const file = { name: 'hill.gpx', mimeType: 'application/gpx+xml', buffer: Buffer.from(track) }
      await page.getByLabel('Choose a track file (GPX)').setInputFiles(file)
      await page.getByRole('heading', { name: 'Proposed stops' }).waitFor()
      expectReasons(await seenOn(page), 12)
    },
  )

  journey('on the packs, at the shop and over all trips', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Packs')
    await page.getByLabel('Sorted by').selectOption('carried mass')
    const row = page.locator('.pack-row', { hasText: 'Small frameless' })
    const told = plain((await row.locator('.row-says, .row-figure').allTextContents()).join(' '))
    expect(told).toMatch(/ kg.* L too small, .* kg over$/)
    await page.getByRole('button', { name: 'Chart', exact: true }).click()
    await page.getByRole('slider', { name: 'Packs on the chart' }).press('ArrowRight')
    expectReasons(await seenOn(page), 8)
    // A row is the door to the page with its reasons.
    await openPack(page, 'Two-way')
    expectReasons(await seenOn(page), 25)
    await openPack(page, 'Small frameless')
    expectReasons(await seenOn(page), 15)
    expect(await withoutOrigin(page)).toEqual([])
    const pageReasons = await page
      .locator('[data-reason]')
      .evaluateAll(asked => asked.map(each => (each as HTMLElement).dataset.reason).join(' '))
    for (const [figure] of told.matchAll(/[\d.]+ (?:kg|L)/g)) expect(plain(pageReasons)).toContain(figure)
    await go(page, 'Packs')
    await page.getByRole('button', { name: 'At the shop' }).click()
    const tag = { 'Main body': '44', 'Pack mass': '1100', 'Rated load': '12' }
    for (const [name, text] of Object.entries(tag))
      await page.getByRole('textbox', { name: new RegExp(`^${name}`) }).fill(text)
    expectReasons(await seenOn(page), 8)
    await page.getByRole('button', { name: 'Back to packs' }).click()
    await page.getByRole('button', { name: 'All my trips' }).click()
    await page.getByRole('heading', { name: 'All my trips' }).waitFor()
    expectReasons(await seenOn(page), 10)
    await page.getByRole('button', { name: 'Back to packs' }).click()
    await page.getByRole('button', { name: 'Packs side by side' }).click()
    await page.getByRole('table').waitFor()
    expect(without(await seenOn(page))).toEqual([])
  })
})

describe('the walk over the figures', () => {
  journey('finds one without a reason, and one that its reason does not name', async ({ openDemo }) => {
    const page = await openDemo()
    await page.evaluate(() => {
      const add = (to: string, text: string) => {
        const line = document.createElement('p')
        line.textContent = text
        document.querySelector(to)!.append(line)
      }
      add('.screen', 'No reason for 77.7 kg.')
      add('.answer', 'Another 88.8 L.')
    })
    const found = without(await seenOn(page)).join('\n')
    expect(found).toMatch(/77\.7 kg, unmarked/)
    expect(found).toMatch(/88\.8 L, unexplained/)
  })
})

describe('a reason', () => {
  journey(
    'opens by key, leads to its field; Escape and the way back leave the page as it was',
    async ({ openDemo }) => {
      const page = await openDemo()
      await page.evaluate(() => scrollTo(0, 80))
      await page
        .locator('.answer .ask')
        .nth(1)
        .evaluate(button => (button as HTMLElement).click())
      await page.locator('dialog .why-panel').waitFor()
      await page.goBack()
      await expect.poll(() => page.locator('dialog').count()).toBe(0)
      await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
      expect(await page.evaluate(() => scrollY)).toBe(80)

      // The reason of the load, with every line of it, stands for all: they are one design.
      await page.locator('.answer .ask').nth(1).click()
      await page.locator('dialog .why-panel').waitFor()
      await expectAccessible(page)
      expect(await tooSmall(page, 'dialog')).toEqual([])
      await page.evaluate(() => {
        for (const details of document.querySelectorAll<HTMLDetailsElement>('.why-panel details'))
          details.open = true
      })
      expect(await tooWideAtSmallest(page)).toBeLessThanOrEqual(0)
      await page.keyboard.press('Escape')
      await expect.poll(() => page.locator('dialog').count()).toBe(0)

      const figure = page.locator('.answer .ask').first()
      const isFocused = () => figure.evaluate(element => element === document.activeElement)
      await figure.focus()
      const before = await page.evaluate(() => scrollY)
      await page.keyboard.press('Enter')
      await page.locator('dialog .why-panel').waitFor()
      await page.keyboard.press('Tab')
      await page.keyboard.press('Escape')
      await expect.poll(() => page.locator('dialog').count()).toBe(0)
      expect(await isFocused()).toBe(true)
      expect(await page.evaluate(() => scrollY)).toBe(before)

      await page.keyboard.press('Enter')
      await page.getByRole('button', { name: /^Soft items fill of the gaps, .*: change it$/ }).click()
      const field = () => page.evaluate(() => document.activeElement?.getAttribute('data-path'))
      await expect.poll(field).toBe('settings/fillEfficiency')
      expect(await page.locator('dialog').count()).toBe(0)
    },
  )
})
