// What a journey needs: the built app on a small host, a Chromium, pages on fresh profiles that are watched for
// anything going wrong. `journey` is vitest's test with these at hand; leaving a journey asserts that nothing went wrong.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type LaunchOptions,
  type Page,
} from 'playwright-core'
import { expect, test } from 'vitest'
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs'
import { type Site, serve } from './server'
import { type Troubles, watch } from './watch'

export const built = join(import.meta.dirname, '..', '..', '.dist')

/** A journey that waits longer than this for anything has failed; on a busy machine most take a tenth of it. */
const PATIENCE_MS = 15_000

/** A small phone, held in one hand. */
export const at360 = (): BrowserContextOptions => ({
  viewport: { width: 360, height: 740 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
})

/** A desk. */
export const at1280 = (): BrowserContextOptions => ({ viewport: { width: 1280, height: 800 } })

/** Spread into the options: `open({ ...at360(), ...dark })`. */
export const dark: BrowserContextOptions = { colorScheme: 'dark' }

/** The small phone in both lights: what a journey that looks at rules is called and opened with. */
export const LIGHTS = [
  ['by day', at360()],
  ['in the dark', { ...at360(), ...dark }],
] as const

/** Opens the app on a fresh profile (a small phone unless told otherwise) and waits until it has drawn itself. */
export type Open = (options?: BrowserContextOptions) => Promise<Page>

interface Fixtures {
  browser: Browser
  site: Site
  troubles: Map<Page, Troubles>
  open: Open
  openOnDisk: Open
}

export const journey = test.extend<Fixtures>({
  browser: [
    // biome-ignore lint/correctness/noEmptyPattern: vitest reads what a fixture needs from this pattern
    async ({}, use) => {
      const browser = await chromium.launch(launching())
      await use(browser)
      await browser.close()
    },
    { scope: 'file' },
  ],

  // biome-ignore lint/correctness/noEmptyPattern: as above
  site: async ({}, use) => {
    const site = await serve(built)
    await use(site)
    await site.stop()
  },

  // biome-ignore lint/correctness/noEmptyPattern: as above
  troubles: async ({}, use) => {
    const troubles = new Map<Page, Troubles>()
    await use(troubles)
    expect([...troubles.values()].flatMap(each => each.list)).toEqual([])
  },

  open: async ({ browser, site, troubles }, use) => {
    const contexts: BrowserContext[] = []
    await use(async (options = at360()) => {
      const context = await browser.newContext(options)
      contexts.push(context)
      return visit(await context.newPage(), site, troubles)
    })
    for (const context of contexts) await context.close()
  },

  /** As `open`, on a profile that is a folder on disk: what only a lasting profile allows, such as installing. */
  openOnDisk: async ({ site, troubles }, use) => {
    const opened: { context: BrowserContext; folder: string }[] = []
    await use(async (options = at360()) => {
      const folder = await mkdtemp(join(tmpdir(), 'profile-'))
      const context = await chromium.launchPersistentContext(folder, { ...launching(), ...options })
      opened.push({ context, folder })
      return visit(context.pages()[0] ?? (await context.newPage()), site, troubles)
    })
    for (const { context, folder } of opened) {
      await context.close()
      await rm(folder, { recursive: true, force: true })
    }
  },
})

function launching(): LaunchOptions {
  return { executablePath: chromiumPath(), args: chromiumFlags }
}

async function visit(page: Page, site: Site, troubles: Map<Page, Troubles>): Promise<Page> {
  page.setDefaultTimeout(PATIENCE_MS)
  troubles.set(page, await watch(page))
  await page.goto(site.url)
  await untilDrawn(page)
  return page
}

/** Waits until the app has drawn something into its place. */
export async function untilDrawn(page: Page): Promise<void> {
  await page.locator('#app > *:visible').first().waitFor()
}

/** Waits until the service worker has stored the whole app and serves this page: no network is needed from here on. */
export async function untilStored(page: Page): Promise<void> {
  const state = () => page.evaluate(() => navigator.serviceWorker.controller?.state)
  await expect.poll(state, { timeout: PATIENCE_MS }).toBe('activated')
}

/** Asks the browser to look for a new release now, as it does by itself on a visit. */
export async function lookForUpdate(page: Page): Promise<void> {
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
  const waiting = () =>
    page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting?.state)
  await expect.poll(waiting, { timeout: PATIENCE_MS }).toBe('installed')
}

/** Reloads and returns what did not come from the service worker: nothing, when the app is offline-ready. */
export async function reloadFromStore(page: Page): Promise<string[]> {
  const fromNetwork: string[] = []
  page.on('response', response => {
    if (!response.fromServiceWorker()) fromNetwork.push(response.url())
  })
  await page.reload()
  await untilDrawn(page)
  return fromNetwork
}
