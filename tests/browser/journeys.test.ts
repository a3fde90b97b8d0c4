// What a hiker does with the app on a small phone, from an empty list to a verdict, and what must never happen to it.

import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import demo from '../../data/demo-plan.json'
import { parsePlan, parsePlanText } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import {
  go,
  journey,
  lookAtDemo,
  openMore,
  type Place,
  reloadFromStore,
  saved,
  untilDrawn,
  untilQuiet,
} from './harness'
import { tooWide } from './sizes'

async function addItem(page: Page, fields: Record<string, string>) {
  await page.getByRole('button', { name: 'Add an item' }).click()
  for (const [label, text] of Object.entries(fields)) await page.getByLabel(label).first().fill(text)
}

/** By keyboard, so that what loads above it cannot move it away from under the pointer. */
async function choose(page: Page, name: string) {
  const radio = page.getByRole('radio', { name })
  await radio.focus()
  await page.keyboard.press('Space')
  await expect.poll(() => radio.isChecked()).toBe(true)
}

describe('from nothing to a verdict', () => {
  journey('a few numbers, one item and one tag are enough', async ({ open }) => {
    const page = await open()
    await page.getByRole('button', { name: 'Plan a trip' }).click()
    await page.getByLabel('Days', { exact: true }).fill('3')
    await page.getByRole('button', { name: 'Make the stops' }).click()
    await go(page, 'Gear')
    await addItem(page, { Name: 'Everything', 'Mass, each': '6,5 kg', 'Packed volume': '1800 cu in' })
    await go(page, 'Packs')
    await page.getByRole('button', { name: 'Add a pack' }).click()
    await page.getByLabel('Main body (L)').fill('50')
    await page.getByLabel('Mass (g)').fill('2 lb 3 oz')
    await page.getByLabel('Rated load').fill('15')
    await page
      .getByText(/^(● |◐ )?Does/)
      .first()
      .waitFor()
    // 1800 cubic inches of soft things at 95 %, and the water that nothing holds yet.
    await go(page, 'Need')
    await page.getByRole('button', { name: /more$|caution/ }).click()
    await page.getByRole('dialog').getByText('No item in the gear holds water').waitFor()
  })

  journey('the demo shows what the engine reckons', async ({ open }) => {
    const page = await open()
    await lookAtDemo(page)
    const parsed = parsePlan(demo)
    if (!parsed.ok) throw new Error('the demo plan is refused')
    const reckoned = reckon(parsed.plan)
    if (!reckoned.ok) throw new Error('the demo plan does not settle')
    const { need, packs } = reckoned.reckoning
    const formats = formatsIn('metric')
    await page.getByText(formats.litresUp(need.bodyLitres), { exact: true }).waitFor()
    await page.getByText(formats.kg(need.peakLoadFullWaterKg), { exact: true }).first().waitFor()
    await go(page, 'Packs')
    // A pack is what the best of its set-ups is.
    const failing = parsed.plan.packs.filter((_, index) =>
      packs.every(({ pack, suffices }) => pack !== index || !suffices),
    ).length
    await expect.poll(() => page.locator('.pack-row[data-answer="does-not"]').count()).toBe(failing)
  })

  journey('typing in one place moves the answer in view', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Gear')
    const ticker = page.getByRole('button', { name: /open the need/ })
    const before = await ticker.textContent()
    await page.getByRole('button', { name: /^Sleeping bag/ }).click()
    await page.getByLabel('Packed volume, each').fill('20')
    await expect.poll(() => ticker.textContent()).not.toBe(before)
  })
})

describe('nothing typed is lost', () => {
  journey(
    'text that is no number stays, says how to mend it, and the need goes on without it',
    async ({ openDemo }) => {
      const page = await openDemo()
      await go(page, 'Gear')
      await page.getByRole('button', { name: /^Ridge tarp/ }).click()
      const mass = page.getByLabel('Mass, each')
      await mass.fill('12 kgg')
      await page.getByLabel('Name', { exact: true }).focus()
      await page.getByText('"12 kgg"').first().waitFor()
      await saved(page)
      await page.reload()
      await untilDrawn(page)
      expect(await page.getByLabel('Mass, each').inputValue()).toBe('12 kgg')
      await go(page, 'Need')
      await page
        .getByRole('region', { name: 'Left out' })
        .getByRole('button', { name: /^Ridge tarp/ })
        .click()
      await page.getByLabel('Mass, each').fill('790')
      await go(page, 'Need')
      expect(await page.getByRole('region', { name: 'Left out' }).count()).toBe(0)
    },
  )

  journey('a reload comes back to the same entry on the same screen', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Trip')
    await page.getByRole('button', { name: /Goat Well/ }).click()
    await page.getByLabel('Distance (km)').fill('8,25')
    await saved(page)
    await page.reload()
    await untilDrawn(page)
    expect(await page.getByLabel('Distance (km)').inputValue()).toBe('8.25')
  })

  journey('what is deleted comes back, also after a reload', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Gear')
    await page.getByRole('button', { name: /^Field glasses/ }).click()
    await page.getByRole('button', { name: 'Delete Field glasses' }).click()
    expect(await page.getByRole('button', { name: /^Field glasses/ }).count()).toBe(0)
    await saved(page)
    await page.reload()
    await untilDrawn(page)
    await page.getByRole('button', { name: /^Undo: Delete/ }).click()
    await page.getByRole('button', { name: /^Field glasses/ }).waitFor()
  })

  journey('entries move, double and go by buttons alone', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Trip')
    const names = () => page.locator('.stops .name').allTextContents()
    await page.getByRole('button', { name: /Goat Well/ }).click()
    await page.getByRole('button', { name: 'Move up Goat Well' }).click()
    expect((await names()).slice(1, 4)).toEqual(['Cistern Terrace', 'Goat Well', 'Bare Saddle'])
    await page.getByRole('button', { name: 'Duplicate Goat Well' }).click()
    expect(await names()).toContain('Goat Well (copy)')
    await page.getByRole('button', { name: 'Delete Goat Well', exact: true }).click()
    expect(await names()).not.toContain('Goat Well')
  })
})

describe('several trips', () => {
  journey('lie side by side, and one deleted can be had back', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    await page.getByRole('button', { name: 'New trip' }).click()
    await page.getByLabel('Name of the trip').fill('Round the lake')
    await saved(page)
    await openMore(page)
    await page.getByRole('button', { name: /^Salt Ridge/ }).waitFor()
    await page.getByRole('button', { name: 'Delete trip Round the lake' }).click()
    expect(await page.getByRole('button', { name: /^Round the lake/ }).count()).toBe(0)
    await page.getByRole('button', { name: 'Undo', exact: true }).click()
    await page.getByRole('button', { name: /^Round the lake/ }).waitFor()
  })

  journey(
    'a plan file goes out and comes in as another trip; a bad one changes nothing',
    async ({ openDemo }) => {
      const page = await openDemo()
      await openMore(page)
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save this trip as a file' }).click(),
      ])
      const text = await readFile(await download.path(), 'utf8')
      const parsed = parsePlanText(text)
      expect(parsed.ok && parsed.plan).toEqual((parsePlan(demo) as { plan: unknown }).plan)

      const input = page.getByLabel('Open a plan file')
      await input.setInputFiles({
        name: 'bad.json',
        mimeType: 'application/json',
        buffer: Buffer.from('{"a":'),
      })
      await page.getByText('nothing here has changed').waitFor()
      await input.setInputFiles({
        name: 'good.json',
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      })
      await expect.poll(() => page.getByRole('button', { name: /^Salt Ridge/ }).count()).toBe(2)
    },
  )
})

describe('units', () => {
  journey('change what is shown and never what is stored', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    await choose(page, 'US customary')
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    await page.getByRole('button', { name: /Cistern Terrace/ }).click()
    await page.getByText('7.8 mi').first().waitFor()
    await page.getByLabel('Distance (mi)').focus()
    await page.getByLabel('Climb (ft)').focus()
    await openMore(page)
    await choose(page, 'Metric')
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    await page.getByRole('button', { name: /Cistern Terrace/ }).click()
    expect(await page.getByLabel('Distance (km)').inputValue()).toBe('12.5')
  })

  journey('bright sun and large targets are kept, and fit a phone', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    await page.getByLabel(/^Bright sun/).check()
    await page.getByLabel(/^Large targets/).check()
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    await saved(page)
    await page.reload()
    await untilDrawn(page)
    for (const place of ['Trip', 'Gear', 'Need', 'Packs'] as const) {
      await go(page, place)
      await untilQuiet(page)
      expect(await tooWide(page), place).toBeLessThanOrEqual(0)
      const least = await page
        .locator('.tabs button, .rows .summary, .grip, .step, .actions button')
        .evaluateAll(all => Math.min(...all.map(each => each.getBoundingClientRect().height)))
      expect(least, place).toBeGreaterThanOrEqual(59.5)
      expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor), place).toMatch(
        /^(?:rgb\(255, 255, 255\)|rgba\(0, 0, 0, 0\))$/,
      )
    }
  })
})

describe('on the trail', () => {
  journey('every screen opens with the server gone', async ({ openStored, site }) => {
    const page = await openStored()
    await site.stop()
    expect(await reloadFromStore(page)).toEqual([])
    await lookAtDemo(page)
    for (const place of ['Trip', 'Gear', 'Need', 'Packs'] satisfies Place[]) await go(page, place)
    await openMore(page)
  })

  journey('the load line is read out moment by moment with the keyboard', async ({ openDemo }) => {
    const page = await openDemo()
    const slider = page.getByRole('slider', { name: 'Moment of the trip' })
    await slider.focus()
    const before = await slider.getAttribute('aria-valuetext')
    await page.keyboard.press('ArrowRight')
    await expect.poll(() => slider.getAttribute('aria-valuetext')).not.toBe(before)
  })
})
