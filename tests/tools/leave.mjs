// Types a word and leaves the page so many milliseconds after the last key, by each way of leaving, and looks whether the
// word is there when the app is opened again.
//   npm run leave -- 100 100     a hundred rounds each, 100 ms after the last key; exit code 1 when one was lost
//   npm run leave -- 100 0 folder     at once, on a build that lies in another folder
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { chromiumFlags, chromiumPath } from './chromium.mjs'
import { killBrowserOf, serveBuild } from './kill.mjs'

const sleep = ms => new Promise(resolve => setTimeout(resolve, ms))

/** Pages that are left may wait in the back/forward cache, as in a browser of everyday use. */
const launch = profile =>
  chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    args: chromiumFlags,
    ignoreDefaultArgs: ['--disable-back-forward-cache'],
    viewport: { width: 360, height: 740 },
  })

/** Each leaves the page and gives the one that is there then. */
const WAYS = {
  'to another page of the site': async ({ page, url }) => {
    await page.goto(`${url}icon.svg`)
    return page
  },
  'to an empty page': async ({ page }) => {
    await page.goto('about:blank')
    return page
  },
  'by closing the tab': async ({ page, context }) => {
    const other = await context.newPage()
    await page.close({ runBeforeUnload: true })
    return other
  },
  'by a reload': async ({ page }) => {
    await page.reload()
    return page
  },
}

const KILLED = 'to an empty page, and the browser is killed 0.3 to 1 s later'

async function openApp(page, url) {
  await page.goto(url)
  await page.locator('.head-state').waitFor()
}

async function type(page, word) {
  const name = page.getByLabel('Name of the trip')
  if (!(await name.count()))
    await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: 'Trip' }).click()
  await name.waitFor()
  await page.getByRole('status').getByText('Saved', { exact: true }).waitFor()
  await name.evaluate((input, text) => {
    const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')
    set.call(input, text)
    input.dispatchEvent(new Event('input', { bubbles: true }))
  }, word)
}

async function leaveRounds({ url, rounds, afterMs, way, profile }) {
  let context = await launch(profile)
  let page = context.pages()[0] ?? (await context.newPage())
  await page.goto(url)
  await page
    .getByRole('button', { name: 'Look at a demo trip' })
    .or(page.locator('.head-state'))
    .first()
    .waitFor()
  const demo = page.getByRole('button', { name: 'Look at a demo trip' })
  if (await demo.count()) await demo.click()
  await page.locator('.head-state').waitFor()
  let lost = 0
  for (let round = 1; round <= rounds; round++) {
    const word = `word ${round} ${Math.random()}`
    await type(page, word)
    await sleep(afterMs)
    if (way === KILLED) {
      await page.goto('about:blank')
      await sleep(300 + 700 * Math.random())
      const closed = new Promise(resolve => context.once('close', resolve))
      await killBrowserOf(profile)
      await closed
      context = await launch(profile)
      page = context.pages()[0] ?? (await context.newPage())
    } else page = await WAYS[way]({ page, context, url })
    await openApp(page, url)
    if ((await page.locator('.head-title h1').textContent()) !== word) lost++
  }
  await context.close()
  return lost
}

const [rounds, afterMs] = [Number(process.argv[2] ?? 100), Number(process.argv[3] ?? 100)]
const server = await serveBuild(process.argv[4])
const profile = await mkdtemp(join(tmpdir(), 'leave-'))
try {
  const url = server.resolvedUrls.local[0]
  for (const way of [...Object.keys(WAYS), KILLED]) {
    const lost = await leaveRounds({ url, rounds, afterMs, way, profile })
    console.log(`${way}, ${afterMs} ms after the last key: ${lost} of ${rounds} lost.`)
    if (lost > 0) process.exitCode = 1
  }
} finally {
  await killBrowserOf(profile)
  await rm(profile, { recursive: true, force: true })
  await server.close()
}
