// Names that are markup, a policy that lets nothing in, and a page that asks nobody for anything.

import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import demo from '../../data/demo-plan.json'
import { headersFor } from '../../vite.config'
import { visit } from './faults'
import { at1280, built, go, journey, lookAtDemo, openMore, profileOf, saved, untilDrawn } from './harness'
import { tooWide } from './sizes'

/** Its names are markup that would set `polluted`, or would fetch something from elsewhere. */
const hostile = (name: string) => join(import.meta.dirname, '..', 'hostile', name)
/** What of a name has become more than text: elements and attributes that the app never makes, and what they have run. */
const foundIn = (page: Page) =>
  page.evaluate(() => {
    const never =
      'iframe, object, embed, base, style, img:not([src^="blob:"]), [http-equiv="refresh"], b > i, [autofocus]'
    const elements = [...document.body.querySelectorAll('*')]
    const handlers = elements.flatMap(({ attributes }) =>
      [...attributes].filter(({ name }) => /^on/.test(name)),
    )
    // The page's own inline script is the first of its head: its text is held to by the policy.
    const own = document.querySelector('head > script:not([src])')
    const scripts = [...document.querySelectorAll('script')].filter(
      script => script !== own && !script.src.startsWith(location.origin),
    )
    const links = [...document.querySelectorAll('a')].filter(({ href }) => /^javascript:/i.test(href))
    return {
      ran: 'polluted' in globalThis,
      made: [...document.body.querySelectorAll(never), ...scripts, ...links].map(
        ({ outerHTML }) => outerHTML,
      ),
      handlers: handlers.map(({ name, value }) => `${name}=${value}`),
      prototype: Object.keys(Object.prototype),
    }
  })
const NOTHING = { ran: false, made: [], handlers: [], prototype: [] }

/** Every request of the page and its workers that goes anywhere else. */
function watchElsewhere(page: Page, origin: string): string[] {
  const elsewhere: string[] = []
  profileOf(page).on('request', request => {
    const url = request.url()
    if (!url.startsWith(origin) && !/^(?:blob|data):/.test(url)) elsewhere.push(url)
  })
  return elsewhere
}

const PLACES = ['Trip', 'Gear', 'Need', 'Packs'] as const

/** Opens each place, and the first entries in it, and looks. */
async function lookEverywhere(page: Page) {
  for (const place of PLACES) {
    await go(page, place)
    for (const row of (await page.locator('.row > .summary[aria-expanded="false"]').all()).slice(0, 2))
      await row.click()
    expect(await foundIn(page), place).toEqual(NOTHING)
  }
  await openMore(page)
  expect(await foundIn(page), 'More').toEqual(NOTHING)
  await page.getByRole('button', { name: 'Print a sheet' }).click()
  await page.locator('.sheet .load-line svg').first().waitFor()
  expect(await foundIn(page), 'sheet').toEqual(NOTHING)
}

describe('a plan whose names are markup', () => {
  journey('is only text wherever it is shown, when it came by link', async ({ open, site }) => {
    const page = await open()
    const elsewhere = watchElsewhere(page, new URL(site.url).origin)
    await page.evaluate(
      fragment => {
        location.hash = fragment
      },
      await readFile(hostile('link/markup-in-names.txt'), 'utf8'),
    )
    await page.getByRole('heading', { name: 'Someone’s plan' }).waitFor()
    expect(await foundIn(page)).toEqual(NOTHING)
    await page.getByRole('button', { name: 'Keep it as a trip' }).click()
    await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
    expect(await page.locator('.head-title h1').textContent()).toContain('<img src=x')
    await lookEverywhere(page)
    expect(elsewhere).toEqual([])
  })

  journey('is only text when it came by file, and so are a track and a list', async ({ openDemo, site }) => {
    const page = await openDemo()
    const elsewhere = watchElsewhere(page, new URL(site.url).origin)
    await openMore(page)
    const file = (name: string, buffer: Buffer) => ({ name, mimeType: 'application/json', buffer })
    const names = await readFile(hostile('plan/markup-in-names.txt'))
    const fields = await readFile(hostile('plan/markup-in-fields.txt'))
    await page
      .getByLabel('Open a plan file')
      .setInputFiles(file('<img src=x onerror=polluted=1>.json', fields))
    await page.getByText('“<img src=x onerror=polluted=1>”: no plan has such a part').waitFor()
    expect(await foundIn(page)).toEqual(NOTHING)
    await page.getByLabel('Open a plan file').setInputFiles(file('plan.json', names))
    await page.locator('.trips .name').getByText('<img src=x').waitFor()
    await page.getByRole('button', { name: 'Back', exact: true }).click()

    await go(page, 'Gear')
    await page.getByRole('button', { name: 'Paste a list' }).click()
    await page
      .getByLabel('One item a line, with its mass')
      .fill(await readFile(hostile('list/markup.txt'), 'utf8'))
    await page.getByText(/^3 clear lines/).click()
    await page.getByText('<script>polluted=1</script>').first().waitFor()
    expect(await foundIn(page)).toEqual(NOTHING)

    await go(page, 'Trip')
    await page.getByText('Start over', { exact: true }).click()
    await page.getByRole('button', { name: 'Stops from a track (GPX)' }).click()
    await page.getByLabel('Choose a track file (GPX)').setInputFiles(hostile('gpx/markup-in-names.gpx'))
    await page.locator('.gpx').getByText('<img src=x onerror=polluted=1>').first().waitFor()
    expect(await foundIn(page)).toEqual(NOTHING)
    await page.getByRole('button', { name: 'Leave without changes' }).click()
    await lookEverywhere(page)
    expect(elsewhere).toEqual([])
  })
})

describe('a plan whose names are 200 letters without a space', () => {
  journey('fits the phone at every place', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    const long = JSON.stringify(demo, (key, value) =>
      typeof value === 'string' && ['name', 'group', 'fabric'].includes(key) ? 'm'.repeat(200) : value,
    )
    await page.getByLabel('Open a plan file').setInputFiles({
      name: `${'x'.repeat(150)}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(long),
    })
    await page.locator('.trips .name').getByText('mmmm').waitFor()
    expect(await tooWide(page), 'More').toBeLessThanOrEqual(0)
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    for (const place of PLACES) {
      await go(page, place)
      const row = page.locator('.row > .summary[aria-expanded="false"]').first()
      if (await row.count()) await row.click()
      expect(await tooWide(page), place).toBeLessThanOrEqual(0)
    }
  })
})

describe('the policy of the built page', () => {
  journey('lets in nothing but files of this site, through two named doors', async ({ browser, site }) => {
    const html = await readFile(join(built, 'index.html'), 'utf8')
    const written = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? ''
    const policy = written.replaceAll('&#39;', "'")
    expect(headersFor(html)['Content-Security-Policy']).toBe(`${policy}; frame-ancestors 'none'`)
    const rules = new Map(policy.split('; ').map(rule => [rule.split(' ')[0], rule.split(' ').slice(1)]))
    expect(rules.get('default-src')).toEqual(["'none'"])
    // What is written into the page is let in by its hash, and nothing else.
    const hashOf = (tag: string) => {
      const texts = [...html.matchAll(new RegExp(`<${tag}>([\\s\\S]*?)</${tag}>`, 'g'))].map(
        ([, text]) => text!,
      )
      return texts.map(text => `'sha256-${createHash('sha256').update(text).digest('base64')}'`)
    }
    expect(rules.get('script-src')).toEqual(["'self'", ...hashOf('script')])
    expect(rules.get('style-src')).toEqual(["'self'", ...hashOf('style')])
    expect([hashOf('script').length, hashOf('style').length]).toEqual([1, 1])
    expect(rules.get('connect-src')).toEqual(["'self'"])
    expect(rules.get('require-trusted-types-for')).toEqual(["'script'"])
    expect(rules.get('trusted-types')?.length).toBeLessThanOrEqual(2)
    expect(policy).not.toMatch(/unsafe|\*|https?:|allow-duplicates/)
    expect(html).not.toMatch(/<script(?![^>]*\ssrc=)(?!>)|<style(?!>)|\sstyle=|\son\w+=/)

    const { page, context } = await visit(browser, site)
    // Later, since what is evaluated from outside may do more than the page.
    const said = await page.evaluate(async () => {
      await new Promise(resolve => setTimeout(resolve))
      const trying = (what: () => unknown) => {
        try {
          what()
          return 'done'
        } catch (error) {
          return (error as Error).name
        }
      }
      const types = (
        globalThis as unknown as { trustedTypes: { createPolicy(name: string, rules: object): void } }
      ).trustedTypes
      return {
        markup: trying(() => {
          document.createElement('p').innerHTML = '<b>x</b>'
        }),
        text: await new Promise(resolve => setTimeout(() => resolve(trying(() => new Function('return 1'))))),
        door: trying(() => types.createPolicy('another', {})),
        worker: trying(() => new Worker('./sw.js')),
      }
    })
    expect(said).toEqual({ markup: 'TypeError', text: 'EvalError', door: 'TypeError', worker: 'TypeError' })
    await context.close()
  })
})

describe('once it is stored', () => {
  journey(
    'a whole journey asks nobody for anything, but the host for a newer version',
    async ({ openStored, site }) => {
      const page = await openStored(at1280())
      const elsewhere = watchElsewhere(page, new URL(site.url).origin)
      await page.reload()
      await untilDrawn(page)
      const before = site.asked.length

      await lookAtDemo(page)
      await openMore(page)
      await profileOf(page).grantPermissions(['clipboard-read', 'clipboard-write'])
      await page.getByRole('button', { name: 'Copy link' }).click()
      await page.getByText(/The link is copied/).waitFor()
      const link = await page.evaluate(() => navigator.clipboard.readText())
      await page.getByRole('button', { name: 'Show as a code' }).click()
      await page.getByText(/too large for a code/).waitFor()
      await page.getByRole('button', { name: 'Print a sheet' }).click()
      await page.locator('.sheet .load-line svg').first().waitFor()
      await page.evaluate(hash => {
        location.hash = hash
      }, new URL(link).hash)
      await page.getByRole('heading', { name: 'Someone’s plan' }).waitFor()
      await page.getByRole('button', { name: 'Keep it as a trip' }).click()
      await saved(page)
      await page.reload()
      await untilDrawn(page)
      await page.getByRole('button', { name: 'At the shop' }).first().click()
      await page.getByRole('button', { name: 'Back to packs' }).click()
      await page.getByRole('button', { name: 'All my trips' }).first().click()
      await page.getByRole('button', { name: 'Back to packs' }).click()
      await go(page, 'Gear')
      await page.getByRole('button', { name: 'Paste a list' }).click()
      await page.getByLabel('One item a line, with its mass').fill('Tent 1 kg')
      await go(page, 'Trip')
      await page.getByText('Start over', { exact: true }).click()
      await page.getByRole('button', { name: 'Stops from a track (GPX)' }).click()
      await page.getByLabel('Choose a track file (GPX)').setInputFiles(hostile('gpx/several-tracks.gpx'))
      await page.locator('.gpx').getByText('Two parts').first().waitFor({ state: 'attached' })
      await saved(page)

      expect(elsewhere).toEqual([])
      expect([...new Set(site.asked.slice(before))].filter(path => !path.endsWith('/sw.js'))).toEqual([])
    },
  )
})
