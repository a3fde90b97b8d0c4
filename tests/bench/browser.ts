// How long the built app takes in Chromium: the first visit on a slow link, the next one without a network, typing,
// opening places and moving along the load line. They decide no test. `npm run bench:browser -- 9`: nine runs each.

import { join } from 'node:path'
import { type BrowserContext, type CDPSession, chromium, type Page } from 'playwright-core'
import demo from '../../data/demo-plan.json'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { type Records, storeRecords } from '../browser/database'
import { recordsOf } from '../browser/records'
import { serve } from '../browser/server'
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs'
import { printTable } from './print-table'
import { documentOf } from './sizes'

const runs = Number(process.argv[2] ?? 5)
const PHONE = { viewport: { width: 360, height: 740 }, isMobile: true, hasTouch: true }
const KEYS = 20
/** As quick hands type: closer together, keys would wait for each other. */
const APART_MS = 250

const browser = await chromium.launch({ executablePath: chromiumPath(), args: chromiumFlags })
const site = await serve(join(import.meta.dirname, '..', '..', '.dist'))
const found = new Map<string, number[]>()
const note = (what: string, value: number) => found.set(what, [...(found.get(what) ?? []), value])

const large = await recordsOf(newId =>
  drafted(documentOf({ items: 300, stops: 60, nights: 59, packs: 100 }), newId),
)
const small = await recordsOf(newId => drafted(demo, newId), { demo: true })
for (let run = 0; run < runs; run++) {
  await firstVisit()
  await repeated(small)
  await typing(large)
  await places(large)
}
await browser.close()
await site.stop()

printTable(
  ['what', 'median', 'least', 'most'],
  [...found].map(([what, values]) => {
    const sorted = values.toSorted((a, b) => a - b)
    return [what, ...[sorted[sorted.length >> 1]!, sorted[0]!, sorted.at(-1)!].map(shown)]
  }),
)

function shown(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toFixed(1)
}

function drafted(document: unknown, newId: () => string) {
  const parsed = parsePlan(document)
  if (!parsed.ok) throw new Error(parsed.problems[0]!.message)
  return fromPlanDocument(parsed.document, newId)
}

/** At 1.6 Mb/s and 150 ms, the processor four times slower. */
async function firstVisit() {
  const { context, page, session } = await opened(4)
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: 150,
    downloadThroughput: 200_000,
    uploadThroughput: 94_000,
  })
  await page.goto(site.url, { waitUntil: 'commit' })
  await page.locator('#opening').waitFor({ state: 'detached' })
  const seen = await page.evaluate(() => {
    const paint = performance.getEntriesByName('first-contentful-paint')[0]!.startTime
    const sent = performance.getEntriesByType('resource') as PerformanceResourceTiming[]
    return { paint, before: 1 + sent.filter(({ responseEnd }) => responseEnd < paint).length }
  })
  note('first visit, slow link, 4×: first picture, ms', seen.paint)
  note('first visit: requests answered before it', seen.before)
  note('first visit: demo tapped until its need stands, ms', await figureAfterTap(page))
  await context.close()
}

async function figureAfterTap(page: Page): Promise<number> {
  const begun = performance.now()
  await page.getByRole('button', { name: 'Look at a demo trip' }).click()
  await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
  return performance.now() - begun
}

/** The app answered by its service worker, with the demo trip at its need. */
async function repeated(records: Records) {
  const { context, page, session } = await opened(1)
  await page.goto(site.blankUrl)
  await storeRecords(page, records)
  await page.goto(site.url)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  const begun = performance.now()
  await page.goto(site.url, { waitUntil: 'commit' })
  await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
  note('next visit from what is stored, 4×: the need stands, ms', performance.now() - begun)
  await context.close()
}

/** 300 items, 60 stops, 100 packs, the processor six times slower. */
async function typing(records: Records) {
  const { context, page, session } = await withLarge(records)
  await go(page, 'Gear')
  await page.locator('.row > .summary').first().click()
  const field = page.getByLabel('Mass, each')
  await field.fill('')
  const script = await scriptMs(session)
  const paints = await paintsOf(page, 'input', () =>
    field.pressSequentially('1'.repeat(KEYS), { delay: APART_MS }),
  )
  note('a key in the gear, 6×: script, ms', ((await scriptMs(session)) - script) / KEYS)
  note('a key in the gear, 6×: until it is painted, 95 %, ms', atShare(paints, 0.95))
  await context.close()
}

async function places(records: Records) {
  const { context, page } = await withLarge(records)
  for (const place of ['Trip', 'Gear', 'Packs', 'Need'] as const) {
    const [ms = 0] = await paintsOf(page, 'click', () => go(page, place))
    note(`${place} opened, 6×: until it is painted, ms`, ms)
    note(`${place}: elements`, await page.locator('*').count())
  }
  const slider = page.getByRole('slider').first()
  await slider.focus()
  const paints = await paintsOf(page, 'keydown', async () => {
    for (let key = 0; key < KEYS; key++) {
      await slider.press('ArrowRight')
      await page.waitForTimeout(APART_MS)
    }
  })
  note('a step along the load line, 6×: until it is painted, 95 %, ms', atShare(paints, 0.95))
  await context.close()
}

async function withLarge(records: Records) {
  const on = await opened(1)
  await on.page.goto(site.blankUrl)
  await storeRecords(on.page, records)
  await on.page.goto(site.url)
  await on.page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
  // The other places are fetched ahead.
  await on.page.waitForTimeout(2500)
  await on.session.send('Emulation.setCPUThrottlingRate', { rate: 6 })
  return on
}

async function go(page: Page, place: string) {
  await page
    .getByRole('navigation', { name: 'Places' })
    .getByRole('button', { name: place, exact: true })
    .click()
}

/** From each event of a kind to the frame that shows what came of it, ms. */
async function paintsOf(page: Page, kind: string, act: () => Promise<unknown>): Promise<number[]> {
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

async function scriptMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics')
  return 1000 * metrics.find(({ name }) => name === 'ScriptDuration')!.value
}

function atShare(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? Number.NaN
}

async function opened(
  slowdown: number,
): Promise<{ context: BrowserContext; page: Page; session: CDPSession }> {
  const context = await browser.newContext(PHONE)
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  await session.send('Network.enable')
  await session.send('Performance.enable')
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  return { context, page, session }
}
