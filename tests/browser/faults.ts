// How storage goes wrong in a real browser, and what must hold then: the page says so, stays editable, and the trip can
// be saved as a file.
import { readFile } from 'node:fs/promises'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { expect } from 'vitest'
import { at360, untilDrawn } from './harness'
import type { Site } from './server'

export interface Opened {
  context: BrowserContext
  page: Page
  /** Errors that nothing in the page has caught. */
  uncaught: string[]
}

interface Visit {
  context?: BrowserContext
  /** Runs in the page before the app. */
  fault?: () => void
  /** Runs before the first visit. */
  before?: (page: Page) => Promise<void>
}

/** Opens the app in a page on which something is wrong from the start. */
export async function visit(browser: Browser, site: Site, options: Visit = {}): Promise<Opened> {
  const context = options.context ?? (await browser.newContext(at360()))
  const page = await context.newPage()
  const uncaught: string[] = []
  page.on('pageerror', error => uncaught.push(error.message))
  page.setDefaultTimeout(15_000)
  if (options.fault) await page.addInitScript(options.fault)
  await options.before?.(page)
  await page.goto(site.url)
  await untilDrawn(page)
  return { context, page, uncaught }
}

export const openDemo = async (page: Page) => {
  await page.getByRole('button', { name: 'Look at a demo trip' }).click()
  await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
}

export const go = (page: Page, place: string) =>
  page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: place }).click()

export const openMore = async (page: Page) => {
  await page.getByRole('button', { name: 'More', exact: true }).click()
  await page.getByRole('heading', { name: 'Keeping your trips' }).waitFor()
}

export const saved = (page: Page) => page.getByRole('status').getByText('Saved', { exact: true }).waitFor()
export const notice = (page: Page, text: string | RegExp) =>
  page.locator('.app-notices').getByText(text).waitFor()
export const title = (page: Page) => page.locator('.head-title h1').textContent()

/** Gives the open trip a name by typing it. */
export async function rename(page: Page, name: string) {
  if ((await page.getByLabel('Name of the trip').count()) === 0) await go(page, 'Trip')
  await page.getByLabel('Name of the trip').fill(name)
}

/** The edit is there, and can be had as a plan file, whatever the storage does. */
export async function expectWorks(page: Page, name: string) {
  await rename(page, name)
  expect(await title(page)).toBe(name)
  await openMore(page)
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save this trip as a file' }).click(),
  ])
  expect(JSON.parse(await readFile(await download.path(), 'utf8')).name).toBe(name)
  await page.getByRole('button', { name: 'Back' }).click()
}

/** Waits until the second copy holds a trip of this name; a page that is hidden need not wait for its turn. */
export async function untilCopied(page: Page, name: string) {
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true })
    document.dispatchEvent(new Event('visibilitychange'))
    Reflect.deleteProperty(document, 'visibilityState')
  })
  const copies = () =>
    page.evaluate(async wanted => {
      const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('pack-reckoner-copy')
      const manifest = JSON.parse(
        await (await (await folder.getFileHandle('manifest.json')).getFile()).text(),
      )
      for await (const [file, handle] of folder.entries()) {
        if (!file.startsWith('trip') || handle.kind !== 'file') continue
        const text = await (await (handle as FileSystemFileHandle).getFile()).text()
        const isListed = Object.values(manifest.entries).some(entry =>
          file.includes((entry as { hash: string }).hash),
        )
        if (isListed && text.includes(JSON.stringify(wanted))) return true
      }
      return false
    }, name)
  await expect.poll(() => copies().catch(() => false), { timeout: 15_000 }).toBe(true)
}
