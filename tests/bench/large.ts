// The large plan – 300 items, 60 stops, 100 packs – on a processor six times slower: typing, opening places, moving along
// the load line.

import type { CDPSession, Page } from 'playwright-core'
import type { Records } from '../browser/database'
import { atShare, type Bench, go, phoneWith } from './phone'

const KEYS = 20
/** As quick hands type: closer together, keys would wait for each other. */
const APART_MS = 250

export async function typing(bench: Bench, records: Records) {
  const { context, page, session } = await phoneWith(bench, records, 6)
  await go(page, 'Gear')
  await page.locator('.row > .summary').first().click()
  const field = page.getByLabel('Mass, each')
  await field.fill('')
  const script = await scriptMs(session)
  const paints = await paintsOf(page, 'input', () =>
    field.pressSequentially('1'.repeat(KEYS), { delay: APART_MS }),
  )
  bench.note('A key in the gear, 6×: script, ms', ((await scriptMs(session)) - script) / KEYS)
  bench.note('A key in the gear, 6×: until it is painted, 95 %, ms', atShare(paints, 0.95))
  await context.close()
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
