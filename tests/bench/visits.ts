// The first visit on a slow link, and the next one without a network.

import type { CDPSession, Page } from 'playwright-core'
import { type Records, storeRecords } from '../browser/database'
import { type Bench, need, phone } from './phone'

/** 1.6 Mb/s and 150 ms. */
const SLOW_LINK = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 94_000 }
/** How long the welcome is read before the demo is asked for. */
const READ_MS = 3000

/** The processor four times slower. The demo is tapped as soon as the app is there, or once the welcome was read. */
export async function firstVisit(bench: Bench) {
  const { note } = bench
  for (const isRead of [false, true]) {
    const { context, page, session } = await phone(bench, 4)
    await session.send('Network.emulateNetworkConditions', SLOW_LINK)
    const bytes = await receivedBy(session)
    await watchPaints(page)
    await page.goto(bench.site.url, { waitUntil: 'commit' })
    await page.locator('#opening').waitFor({ state: 'detached' })
    if (isRead) await page.waitForTimeout(READ_MS)
    const seen = await page.evaluate(paintsSeen)
    const figure = await figureAfterTap(page)
    if (isRead) note('First visit, slow link, 4×: demo tapped after 3 s until its need stands, ms', figure)
    else {
      note('First visit, slow link, 4×: first picture (FCP), ms', seen.first)
      note('First visit, slow link, 4×: largest picture (LCP), ms', seen.largest)
      note('First visit: requests answered before it', seen.requests)
      note('First visit: kB of answers before it', bytes(seen.first) / 1000)
      note('First visit, slow link, 4×: demo tapped at once until its need stands, ms', figure)
    }
    const { shift } = await page.evaluate(paintsSeen)
    note('First visit: layout shift (CLS)', shift)
    await context.close()
  }
}

async function figureAfterTap(page: Page): Promise<number> {
  const begun = performance.now()
  await page.getByRole('button', { name: 'Look at a demo trip' }).click()
  await need(page)
  return performance.now() - begun
}

/** The app answered by its service worker with the network gone, the demo trip at its need, four times slower. */
export async function offlineRepeat(bench: Bench, records: Records) {
  const { context, page, session } = await phone(bench, 1)
  await page.goto(bench.site.blankUrl)
  await storeRecords(page, records)
  await page.goto(bench.site.url)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await context.setOffline(true)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  const begun = performance.now()
  await page.goto(bench.site.url, { waitUntil: 'commit' })
  await need(page)
  bench.note('Next visit without a network, 4×: the need stands, ms', performance.now() - begun)
  await context.close()
}

interface Paints {
  largest: number
  shift: number
}

async function watchPaints(page: Page) {
  await page.addInitScript(() => {
    const paints: Paints = { largest: 0, shift: 0 }
    Object.assign(globalThis, { paints })
    new PerformanceObserver(list => {
      for (const { startTime } of list.getEntries()) paints.largest = startTime
    }).observe({ type: 'largest-contentful-paint', buffered: true })
    new PerformanceObserver(list => {
      for (const entry of list.getEntries() as (PerformanceEntry & {
        value: number
        hadRecentInput: boolean
      })[])
        if (!entry.hadRecentInput) paints.shift += entry.value
    }).observe({ type: 'layout-shift', buffered: true })
  })
}

function paintsSeen() {
  const first = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN
  const sent = performance.getEntriesByType('resource') as PerformanceResourceTiming[]
  const requests = 1 + sent.filter(({ responseEnd }) => responseEnd > 0 && responseEnd < first).length
  return { first, requests, ...(globalThis as unknown as { paints: Paints }).paints }
}

/** The bytes that came in the first so many milliseconds after the page was asked for. */
async function receivedBy(session: CDPSession): Promise<(ms: number) => number> {
  const chunks: [number, number][] = []
  let begun = Number.POSITIVE_INFINITY
  session.on('Network.requestWillBeSent', ({ timestamp }) => {
    begun = Math.min(begun, timestamp)
  })
  session.on('Network.loadingFinished', ({ timestamp, encodedDataLength }) => {
    chunks.push([timestamp, encodedDataLength])
  })
  return ms => chunks.reduce((sum, [at, size]) => ((at - begun) * 1000 <= ms ? sum + size : sum), 0)
}
