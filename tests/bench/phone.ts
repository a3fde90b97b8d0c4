// A phone to be timed: the built app in Chromium, slowed down.

import type {
  Browser,
  BrowserContext,
  BrowserContextOptions,
  CDPSession,
  Locator,
  Page,
} from 'playwright-core'
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

export const PHONE: BrowserContextOptions = {
  viewport: { width: 360, height: 740 },
  isMobile: true,
  hasTouch: true,
}

/** `slowdown`: how many times slower than this machine the processor is. */
export async function phone({ browser }: Bench, slowdown: number, size = PHONE): Promise<Phone> {
  const context = await browser.newContext(size)
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  await session.send('Network.enable')
  // Script in time of the processor, which a busy machine lengthens less than time by the clock.
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  return { context, page, session }
}

/** One at the need of what is stored, with the other places fetched ahead; slowed down from then on. */
export async function phoneWith(
  bench: Bench,
  records: Records,
  slowdown: number,
  size = PHONE,
): Promise<Phone> {
  const on = await phone(bench, 1, size)
  await on.page.goto(bench.site.blankUrl)
  await storeRecords(on.page, records)
  await on.page.goto(bench.site.url)
  await need(on.page)
  await on.page.waitForTimeout(2500)
  await on.session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  return on
}

export const need = (page: Page) => page.getByRole('heading', { name: 'Heaviest load' }).waitFor()

export const placeButton = (page: Page, place: string): Locator =>
  page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: place, exact: true })

export const go = (page: Page, place: string) => placeButton(page, place).click()

export function atShare(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? Number.NaN
}

/** From each event of a kind to the frame that shows what came of it, ms. */
export async function paintsOf(page: Page, kind: string, act: () => Promise<unknown>): Promise<number[]> {
  await page.evaluate(listened => {
    const times: number[] = []
    Object.assign(globalThis, { times })
    addEventListener(
      listened,
      ({ timeStamp }) =>
        requestAnimationFrame(() => setTimeout(() => times.push(performance.now() - timeStamp))),
      true,
    )
  }, kind)
  await act()
  await page.evaluate(() => new Promise(done => requestAnimationFrame(() => setTimeout(done))))
  return page.evaluate(() => (globalThis as unknown as { times: number[] }).times)
}

export async function scriptMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics')
  return 1000 * metrics.find(({ name }) => name === 'ScriptDuration')!.value
}
