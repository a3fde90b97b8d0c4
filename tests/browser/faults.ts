// How storage goes wrong in a real browser, and what must hold then: the page says so, stays editable, and the trip can
// be saved as a file.
import { readFile } from 'node:fs/promises'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { expect } from 'vitest'
import { at360, newContext, openMore, rename, untilDrawn } from './harness'
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
  const context = options.context ?? (await newContext(browser, at360()))
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

export const notice = (page: Page, text: string | RegExp) =>
  page.locator('.app-notices').getByText(text).waitFor()
export const title = (page: Page) => page.locator('.head-title h1').textContent()

/** The edit is there, and can be had as a plan file, whatever the storage does. */
export async function expectWorks(page: Page, name: string) {
  await rename(page, name)
  await expect.poll(() => title(page)).toBe(name)
  await openMore(page)
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save this trip as a file' }).click(),
  ])
  expect(JSON.parse(await readFile(await download.path(), 'utf8')).name).toBe(name)
  await page.getByRole('button', { name: 'Back', exact: true }).click()
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
  await expect.poll(() => copies().catch(() => false)).toBe(true)
}
