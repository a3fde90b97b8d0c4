// A track of 100,000 points read on a processor six times slower: the tasks of the page's own thread, from the choice of
// the file until its terrain is drawn.

import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { type Bench, go, phone } from './phone'

const POINTS = 100_000
/** A metre of latitude, degrees. */
const METRE = 1 / 111_200

/** An invented way of 400 km due north over 40 hills, with a name every 5 km. */
function trackText(): string {
  const at = (m: number) => (44 + m * METRE).toFixed(7)
  const names = Array.from(
    { length: 79 },
    (_, i) => `<wpt lat="${at((i + 1) * 5000)}" lon="7"><name>Place ${i + 1}</name></wpt>`,
  )
  const points = Array.from({ length: POINTS }, (_, i) => {
    const ele = 900 + 350 * Math.sin((i / POINTS) * 80 * Math.PI) + 5 * Math.sin(i)
    return `<trkpt lat="${at(i * 4)}" lon="7"><ele>${ele.toFixed(1)}</ele></trkpt>`
  })
  return `<?xml version="1.0"?><gpx version="1.1" creator="bench" xmlns="http://www.topografix.com/GPX/1/1">${names.join('\n')}<trk><name>Long way</name><trkseg>${points.join('\n')}</trkseg></trk></gpx>`
}

export async function longTrack(bench: Bench) {
  const { context, page, session } = await phone(bench, 1)
  await page.goto(bench.site.url)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await page.getByRole('button', { name: 'Plan a trip' }).click()
  const door = page.getByRole('button', { name: 'Stops from a track (GPX)' })
  await door.waitFor()
  await page.waitForTimeout(2500)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 6 })
  const task = async (during: string, act: () => Promise<unknown>) =>
    bench.note(
      `Track of 100,000 points, 6×: longest task while ${during}, ms`,
      await longestTask(bench, page, act),
    )
  // By its path: handed over as bytes, the driver would take the page's own thread for seconds.
  const folder = await mkdtemp(join(tmpdir(), 'long-track-'))
  const file = join(folder, 'long.gpx')
  await writeFile(file, trackText())
  const choice = page.getByLabel('Choose a track file (GPX)')
  await task('its door opens', async () => {
    await door.click()
    await choice.waitFor()
  })
  const use = page.getByRole('button', { name: 'Use these stops' })
  await task('it is read and its stops are shown', async () => {
    const begun = performance.now()
    await choice.setInputFiles(file)
    await use.waitFor()
    bench.note('Track of 100,000 points, 6×: from its choice to its stops, ms', performance.now() - begun)
  })
  await task('its stops are used', async () => {
    await use.click()
    await page.getByRole('heading', { name: 'Stops', exact: true }).waitFor()
  })
  await task('its terrain is drawn', async () => {
    await go(page, 'Need')
    await page.locator('.terrain .ridge').waitFor()
  })
  await context.close()
  await rm(folder, { recursive: true })
}

interface Traced {
  name: string
  ph: string
  tid: number
  pid: number
  /** Time of the processor, microseconds: what other programs take does not count. */
  tdur?: number
  args?: { name?: string }
}

/** The longest task of the page's own thread while something is done, in time of the processor, ms. */
async function longestTask({ browser }: Bench, page: Page, act: () => Promise<unknown>): Promise<number> {
  await browser.startTracing(page, { categories: ['toplevel', '__metadata'] })
  await act()
  await page.waitForTimeout(500)
  const { traceEvents } = JSON.parse(String(await browser.stopTracing())) as { traceEvents: Traced[] }
  const threadOf = ({ pid, tid }: Traced) => `${pid} ${tid}`
  const main = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(threadOf),
  )
  const tasks = traceEvents.filter(event => main.has(threadOf(event)) && event.name.endsWith('RunTask'))
  return Math.max(0, ...tasks.map(({ tdur = 0 }) => tdur / 1000))
}
