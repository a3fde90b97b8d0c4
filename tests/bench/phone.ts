// A phone to be timed: the built app in Chromium, slowed down.

import type { Browser, BrowserContext, CDPSession, Page } from 'playwright-core'
import { type Records, storeRecords } from '../browser/database'
import type { Site } from '../browser/server'

export interface Bench {
  browser: Browser
  site: Site
  /** Keeps a figure of one run. */
  note: (what: string, value: number) => void
}

export interface Phone {
  context: BrowserContext
  page: Page
  session: CDPSession
}

/** `slowdown`: how many times slower than this machine the processor is. */
export async function phone({ browser }: Bench, slowdown: number): Promise<Phone> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    isMobile: true,
    hasTouch: true,
  })
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  await session.send('Network.enable')
  await session.send('Performance.enable')
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  return { context, page, session }
}

/** One at the need of what is stored, with the other places fetched ahead; slowed down from then on. */
export async function phoneWith(bench: Bench, records: Records, slowdown: number): Promise<Phone> {
  const on = await phone(bench, 1)
  await on.page.goto(bench.site.blankUrl)
  await storeRecords(on.page, records)
  await on.page.goto(bench.site.url)
  await need(on.page)
  await on.page.waitForTimeout(2500)
  await on.session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  return on
}

export const need = (page: Page) => page.getByRole('heading', { name: 'Heaviest load' }).waitFor()

export async function go(page: Page, place: string) {
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: place, exact: true })
    .click()
}

export function atShare(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? Number.NaN
}
