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
import { expect, inject, test } from 'vitest'
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs'
import { storeRecords } from './database'
import { type Site, serve } from './server'
import { type Troubles, watch } from './watch'
import { go, placeTab } from './ways'

export { go, openMore, type Place, untilQuiet } from './ways'

export const built = join(import.meta.dirname, '..', '..', '.dist')

/** As long as a journey waits for anything: for what it polls (`expect.poll` in vite.config.ts) and for the browser. */
const PATIENCE_MS = 15_000

/** A small phone, held in one hand; drawn at one pixel for each of CSS, since nobody looks. */
export const at360 = (): BrowserContextOptions => ({
  viewport: { width: 360, height: 740 },
  isMobile: true,
  hasTouch: true,
})

/** A desk. */
export const at1280 = (): BrowserContextOptions => ({ viewport: { width: 1280, height: 800 } })

/** The smallest window that is looked after. */
export const at320 = (): BrowserContextOptions => ({ ...at360(), viewport: { width: 320, height: 568 } })

/** Spread into the options: `open({ ...at360(), ...dark })`. */
export const dark: BrowserContextOptions = { colorScheme: 'dark' }

/** Opens the app on a fresh profile (a small phone unless told otherwise) and waits until it has drawn itself. */
export type Open = (options?: BrowserContextOptions) => Promise<Page>

/** A profile that journeys use one after the other, and the page that keeps its process between them. */
interface Profile {
  context: BrowserContext
  keeper: Page
  kind: string
  journeys: number
}

/** What closed pages leave in their process makes the next ones slower from about here. */
const MOST_JOURNEYS = 8

interface Fixtures {
  browser: Browser
  site: Site
  troubles: Map<Page, Troubles>
  /** Those that no journey uses now. */
  idle: Profile[]
  newPage: (options: BrowserContextOptions, has: { serviceWorker: boolean }) => Promise<Page>
  /** An empty app, without its service worker: nothing is fetched beside what the journey looks at. */
  open: Open
  /** As `open`, with the demo trip stored, so that its need is the first picture. */
  openDemo: Open
  /** An empty app, once its service worker has stored all of it: for what works without a network. */
  openStored: Open
  openOnDisk: Open
}

export const journey = test.extend<Fixtures>({
  browser: [
    // biome-ignore lint/correctness/noEmptyPattern: vitest reads what a fixture needs from this pattern
    async ({}, use) => {
      const browser = await chromium.launch(launching({ oneProcess: inject('oneProcess') }))
      await use(browser)
      await browser.close()
    },
    { scope: 'worker' },
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

  idle: [
    // biome-ignore lint/correctness/noEmptyPattern: as above
    async ({}, use) => use([]),
    { scope: 'worker' },
  ],

  // A process of its own costs a page half a second, and every journey has a site of its own, so that nothing stored
  // meets: those with the same window share a profile, each of two in one journey has its own.
  newPage: async ({ browser, site, idle }, use) => {
    const used: Profile[] = []
    await use(async (options, { serviceWorker }) => {
      const kind = JSON.stringify({ options, serviceWorker })
      const at = idle.findIndex(profile => profile.kind === kind)
      const profile =
        at < 0 ? await newProfile(kind, options, { browser, site, serviceWorker }) : idle.splice(at, 1)[0]!
      used.push(profile)
      return profile.context.newPage()
    })
    for (const profile of used) {
      const { context, keeper } = profile
      profile.journeys += 1
      if (changed.has(context) || profile.journeys >= MOST_JOURNEYS) await context.close()
      else {
        for (const page of context.pages()) if (page !== keeper) await page.close()
        idle.push(profile)
      }
    }
  },

  open: async ({ newPage, site, troubles }, use) => {
    await use(async (options = at360()) =>
      visit(await newPage(options, { serviceWorker: false }), site, troubles),
    )
  },

  openDemo: async ({ newPage, site, troubles }, use) => {
    await use(async (options = at360()) => {
      const page = await newPage(options, { serviceWorker: false })
      await page.goto(site.blankUrl)
      await storeRecords(page, inject('demoRecords'))
      await visit(page, site, troubles)
      await untilDemo(page)
      return page
    })
  },

  openStored: async ({ newPage, site, troubles }, use) => {
    await use(async (options = at360()) => {
      const page = await visit(await newPage(options, { serviceWorker: true }), site, troubles)
      await untilStored(page)
      return page
    })
  },

  /** As `openStored`, by a whole browser on a profile that is a folder on disk: it can install the app. */
  openOnDisk: async ({ site, troubles }, use) => {
    const opened: { context: BrowserContext; folder: string }[] = []
    await use(async (options = at360()) => {
      const folder = await mkdtemp(join(tmpdir(), 'profile-'))
      const context = await chromium.launchPersistentContext(folder, {
        ...launching({ whole: true }),
        ...options,
      })
      opened.push({ context, folder })
      const page = await visit(context.pages()[0] ?? (await context.newPage()), site, troubles)
      await untilStored(page)
      return page
    })
    for (const { context, folder } of opened) {
      await context.close()
      await rm(folder, { recursive: true, force: true })
    }
  },
})

const changed = new WeakSet<BrowserContext>()

/** The profile of a page, for what changes more of it than its storage: no other journey uses it then. */
export function profileOf(page: Page): BrowserContext {
  const context = page.context()
  changed.add(context)
  return context
}

async function newProfile(
  kind: string,
  options: BrowserContextOptions,
  { browser, site, serviceWorker }: { browser: Browser; site: Site; serviceWorker: boolean },
): Promise<Profile> {
  const context = await (serviceWorker ? browser.newContext(options) : newContext(browser, options))
  const keeper = await context.newPage()
  await keeper.goto(site.blankUrl)
  return { context, keeper, kind, journeys: 0 }
}

/** A fresh profile of a browser that has no service workers. */
export async function newContext(browser: Browser, options: BrowserContextOptions): Promise<BrowserContext> {
  const context = await browser.newContext(options)
  await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'))
  return context
}

function launching({ whole = false, oneProcess = false } = {}): LaunchOptions {
  const args = oneProcess ? [...chromiumFlags, '--renderer-process-limit=1'] : chromiumFlags
  return { executablePath: chromiumPath({ whole }), args }
}

async function visit(page: Page, site: Site, troubles: Map<Page, Troubles>): Promise<Page> {
  page.setDefaultTimeout(PATIENCE_MS)
  troubles.set(page, await watch(page))
  await page.goto(site.url)
  await untilDrawn(page)
  return page
}

/** Waits until the app has drawn something into its place: the first page shows the welcome ahead of it. */
export async function untilDrawn(page: Page): Promise<void> {
  await page.locator('#opening').waitFor({ state: 'detached' })
  await page.locator('#app > *:visible').first().waitFor()
}

const untilDemo = (page: Page) => page.getByRole('heading', { name: 'Heaviest load' }).waitFor()

/** From the first page of an empty app to the need of the demo trip. */
export async function lookAtDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Look at a demo trip' }).click()
  await untilDemo(page)
}

/** Gives the open trip a name by typing it; at a desk its field is in view, on a phone it may lie at another place. */
export async function rename(page: Page, name: string): Promise<void> {
  const field = page.getByLabel('Name of the trip')
  const tab = placeTab(page, 'Trip')
  await field.or(tab).first().waitFor()
  if (!(await field.isVisible()) && (await tab.isVisible())) await go(page, 'Trip')
  await field.fill(name)
}

/** Waits until every edit is called saved. */
export const saved = (page: Page): Promise<void> =>
  page.getByRole('status').getByText('Saved', { exact: true }).waitFor()

/**
 * Lets the page's own clock (`page.clock.install`) run until something is so. What the app does of itself it begins in
 * its own time, so that no single run of the clock is sure to come after it.
 */
export async function runClockUntil(page: Page, isSo: () => boolean | Promise<boolean>): Promise<void> {
  const isSoLater = async () => {
    await page.clock.runFor(1000)
    return isSo()
  }
  await expect.poll(isSoLater).toBe(true)
}

/** Waits until the service worker has stored the whole app and serves this page: no network is needed from here on. */
export async function untilStored(page: Page): Promise<void> {
  const state = () => page.evaluate(() => navigator.serviceWorker.controller?.state)
  await expect.poll(state).toBe('activated')
}

/** Asks the browser to look for a new release now, as it does by itself on a visit. */
export async function lookForUpdate(page: Page): Promise<void> {
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
  const waiting = () =>
    page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting?.state)
  await expect.poll(waiting).toBe('installed')
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
