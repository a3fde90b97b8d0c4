// The large plan – 300 items, 60 stops, 100 packs – on a processor six times slower: typing, opening places, moving along
// the load line.

import type { CDPSession, Page } from 'playwright-core'
import type { Records } from '../browser/database'
import { atShare, type Bench, go, paintsOf, phoneWith, scriptMs } from './phone'

const KEYS = 20
/** As quick hands type: closer together, keys would wait for each other. */
const APART_MS = 250

export async function typing(bench: Bench, records: Records) {
  const { context, page, session } = await phoneWith(bench, records, 6)
  const { before, paints, script } = await keys(page, session)
  bench.note('A key in the gear, 6×: script before it is painted, 95 %, ms', atShare(before, 0.95))
  bench.note('A key in the gear, 6×: until it is painted, 95 %, ms', atShare(paints, 0.95))
  bench.note('A key in the gear, 6×: all script, ms', script)
  await context.close()
}

/** Types into the mass of the first item: script before each key is painted, time until then, and all script a key, ms. */
export async function keys(page: Page, session: CDPSession) {
  await go(page, 'Gear')
  await page.locator('.row > .summary').first().click()
  const field = page.getByLabel('Mass, each')
  await field.fill('')
  await page.evaluate(() => {
    const before: number[] = []
    Object.assign(globalThis, { before })
    new PerformanceObserver(list => {
      for (const entry of list.getEntries() as PerformanceEventTiming[])
        if (entry.name === 'input') before.push(entry.processingEnd - entry.processingStart)
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit)
  })
  const since = await scriptMs(session)
  const paints = await paintsOf(page, 'input', () =>
    field.pressSequentially('1'.repeat(KEYS), { delay: APART_MS }),
  )
  const script = ((await scriptMs(session)) - since) / KEYS
  const before = await page.evaluate(() => (globalThis as unknown as { before: number[] }).before)
  return { before, paints, script }
}

export async function places(bench: Bench, records: Records) {
  const { context, page } = await phoneWith(bench, records, 6)
  for (const place of ['Trip', 'Gear', 'Packs', 'Need'] as const) {
    const [ms = 0] = await paintsOf(page, 'click', () => go(page, place))
    bench.note(`${place} opened, 6×: until it is painted, ms`, ms)
    bench.note(`${place}: elements`, await page.locator('*').count())
  }
  const slider = page.getByRole('slider').first()
  await slider.focus()
  const paints = await paintsOf(page, 'keydown', async () => {
    for (let key = 0; key < KEYS; key++) {
      await slider.press('ArrowRight')
      await page.waitForTimeout(APART_MS)
    }
  })
  bench.note('A step along the load line, 6×: until it is painted, 95 %, ms', atShare(paints, 0.95))
  await context.close()
}
