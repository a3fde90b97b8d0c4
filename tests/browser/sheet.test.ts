// The sheet on paper: A4 and Letter, one page for a common trip, more with repeated heads, and nothing of the app.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import demo from '../../data/demo-plan.json'
import { expectAccessible } from './axe'
import { at360, at1280, dark, journey, openMore } from './harness'
import { tooWide } from './sizes'

const PAPERS = ['A4', 'Letter'] as const
const WORDS = [
  'Trowel',
  'Towel',
  'Mug and spoon',
  'Repair tape',
  'Sun hat',
  'Gloves',
  'Spare laces',
  'Knife',
  'Whistle',
]

/** The demo's gear with more of the kind, up to a number of items. */
const gearOf = (count: number) => [
  ...demo.gear,
  ...Array.from({ length: count - demo.gear.length }, (_, i) => ({
    id: `more-${i}`,
    name: `${WORDS[i % WORDS.length]}`,
    massKg: 0.05,
    litres: 0.1,
    stow: ['main-body', 'outside-pocket', 'worn'][i % 3],
  })),
]

async function openSheet(page: Page, items = demo.gear.length) {
  await openMore(page)
  if (items !== demo.gear.length) {
    await page.getByLabel('Open a plan file').setInputFiles({
      name: 'plan.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...demo, gear: gearOf(items) })),
    })
    await page.getByText(`${items} items`).waitFor()
  }
  await page.getByRole('button', { name: 'Print a sheet' }).click()
  await page.getByRole('button', { name: 'Print', exact: true }).waitFor()
  await page.locator('.sheet .load-line svg').first().waitFor()
}

async function pagesOf(page: Page, format: string): Promise<number> {
  const pdf = await page.pdf({ format })
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0
}

describe('a printed sheet', () => {
  for (const [device, options] of [
    ['a phone', at360()],
    ['a desk in the dark', { ...at1280(), ...dark }],
  ] as const)
    journey(`is one page of A4 or Letter for the demo trip, from ${device}`, async ({ openDemo }) => {
      const page = await openDemo(options)
      await openSheet(page)
      for (const paper of PAPERS) expect(await pagesOf(page, paper), paper).toBe(1)
    })

  journey('is one page for 40 items, and goes on with repeated heads for more', async ({ openDemo }) => {
    const page = await openDemo(at1280())
    await openSheet(page, 40)
    for (const paper of PAPERS) expect(await pagesOf(page, paper), paper).toBe(1)
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    await page.getByLabel('Open a plan file').setInputFiles({
      name: 'plan.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...demo, gear: gearOf(200) })),
    })
    await page.getByText('200 items').waitFor()
    await page.getByRole('button', { name: 'Print a sheet' }).click()
    await page.getByText('Whistle').first().waitFor()
    for (const paper of PAPERS) expect(await pagesOf(page, paper), paper).toBeGreaterThan(1)
    // What makes a browser repeat a table's head on each page and column.
    const heads = await page
      .locator('.places thead')
      .evaluateAll(all => all.map(head => getComputedStyle(head).display))
    expect(new Set(heads)).toEqual(new Set(['table-header-group']))
  })

  journey('holds nothing of the app, and only black, white and grey', async ({ openDemo }) => {
    const page = await openDemo({ ...at1280(), ...dark })
    await openSheet(page)
    await page.emulateMedia({ media: 'print' })
    expect(await page.getByRole('button').filter({ visible: true }).count()).toBe(0)
    expect(await page.getByRole('slider').filter({ visible: true }).count()).toBe(0)
    expect(await page.getByRole('heading', { name: 'Sheet', exact: true }).isVisible()).toBe(false)
    expect(await page.getByRole('article').isVisible()).toBe(true)
    const coloured = await page.evaluate(() => {
      const grey = (colour: string) => {
        const channels = colour.match(/^rgba?\((\d+), (\d+), (\d+)/)?.slice(1) ?? []
        return new Set(channels).size <= 1
      }
      return [...document.querySelectorAll('.sheet *')]
        .filter(element => element.checkVisibility())
        .flatMap(element => {
          const { color, fill, stroke, backgroundColor } = getComputedStyle(element)
          const odd = [color, fill, stroke, backgroundColor].filter(each => !grey(each))
          return odd.length ? [`${element.tagName}.${element.getAttribute('class')}: ${odd.join(' ')}`] : []
        })
    })
    expect(coloured).toEqual([])
  })

  journey('is shown on a phone without running out of it', async ({ openDemo }) => {
    const page = await openDemo(at360())
    await openSheet(page)
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
    await expectAccessible(page)
  })
})
