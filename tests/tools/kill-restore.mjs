// Ends the browser while backups of 500 things are taken in, in one tab and in two at once, and looks at the next start
// whether all of a backup is there once it was said to be, and never a part of it.
//   npm run kill:restore -- 60     sixty rounds on the built app (npm run build first); exit code 1 when one went wrong
//   npm run kill:restore -- 60 folder     the same on a build that lies in another folder
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { chromiumFlags, chromiumPath } from './chromium.mjs'
import { killBrowserOf, lossBound, serveBuild } from './kill.mjs'

const THINGS = 500
/** A profile is used for so many rounds, so that what it holds stays what a hiker may own. */
const ROUNDS_A_PROFILE = 8
/** The browser is ended at any time up to this long after the tap. */
const LONGEST_MS = 1500

async function open(profile, url) {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    args: chromiumFlags,
    viewport: { width: 360, height: 740 },
  })
  const page = context.pages()[0] ?? (await context.newPage())
  await page.goto(url)
  await page.locator('#app > *:visible').first().waitFor()
  return { context, page }
}

/** A backup as the app itself writes one. */
async function template(page) {
  await page.getByRole('button', { name: 'Look at a demo trip' }).click()
  await page.locator('.head-state').getByText('Saved').waitFor()
  await page.getByRole('button', { name: 'More', exact: true }).click()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save everything as a file' }).click(),
  ])
  return JSON.parse(await readFile(await download.path(), 'utf8'))
}

/** The backup of one restore: a trip and things that carry its name. */
function backupOf(from, name) {
  const [trip] = from.trips
  const things = Array.from({ length: THINGS }, (_, i) => ({
    id: `${name}-${i}`,
    item: { name: `${name}-${i}`, massKg: 0.1 },
    changed: {},
  }))
  const trips = [{ ...trip, id: name, draft: { ...trip.draft, name } }]
  return JSON.stringify({ ...from, trips, shelf: { ...from.shelf, things } })
}

/** Opens the backup on the page and stops before it is taken in. */
async function offer(page, text) {
  await page.evaluate(contents => {
    const dataTransfer = new DataTransfer()
    dataTransfer.items.add(new File([contents], 'backup.json'))
    document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }))
  }, text)
  await page.getByRole('button', { name: 'Merge it' }).waitFor()
}

/** Taps, and tells Node when the page says that all is here. Runs in the page. */
function takeIn() {
  const watcher = new MutationObserver(() => {
    if (!/Now here: /.test(document.body.textContent)) return
    watcher.disconnect()
    void globalThis.saidHere()
  })
  watcher.observe(document.body, { childList: true, subtree: true, characterData: true })
  const isMerge = button => button.textContent === 'Merge it'
  ;[...document.querySelectorAll('button')].find(isMerge).click()
}

/** How many things of each restore, and which trips, the database holds. Runs in a page of the site. */
function held() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('pack-reckoner')
    request.onerror = () => reject(request.error)
    request.onsuccess = () => {
      const store = request.result.transaction('documents').objectStore('documents')
      const [shelf, keys] = [store.get('shelf'), store.getAllKeys()]
      keys.onsuccess = () => {
        request.result.close()
        const counts = {}
        for (const { id } of shelf.result?.things ?? []) {
          const name = id.slice(0, id.lastIndexOf('-'))
          counts[name] = (counts[name] ?? 0) + 1
        }
        resolve({
          counts,
          trips: keys.result.filter(key => String(key).startsWith('trip/')).map(key => key.slice(5)),
        })
      }
    }
  })
}

async function main() {
  const rounds = Number(process.argv[2] ?? 60)
  if (!Number.isInteger(rounds) || rounds < 1) {
    console.error(`How many rounds? ${process.argv[2]} is no number of rounds: npm run kill:restore -- 60`)
    return 2
  }
  const server = await serveBuild(process.argv[3])
  const url = server.resolvedUrls.local[0]
  let profile = ''
  let from = null
  const result = { said: 0, restores: 0, wrong: [] }
  /** What was begun on this profile: its name, and whether it was said to be here. */
  let begun = new Map()

  async function look(page, round) {
    // What was put aside is taken in by the start, and saved half a second later at the latest.
    await new Promise(resolve => setTimeout(resolve, 1000))
    const { counts, trips } = await page.evaluate(held)
    for (const [name, isSaid] of begun) {
      const [count, isTrip] = [counts[name] ?? 0, trips.includes(name)]
      const isWhole = count === THINGS && isTrip
      const isNone = count === 0 && !isTrip
      if (isWhole || (isNone && !isSaid)) continue
      result.wrong.push(
        `round ${round}: of ${name} (${isSaid ? 'said to be here' : 'not said'}) ${count} things, trip ${isTrip}`,
      )
    }
  }

  try {
    for (let round = 0; round <= rounds; round++) {
      if (round % ROUNDS_A_PROFILE === 0 && round < rounds) {
        if (profile) {
          const { context, page } = await open(profile, url)
          await look(page, round)
          await context.close()
          await rm(profile, { recursive: true, force: true })
        }
        profile = await mkdtemp(join(tmpdir(), 'kill-'))
        begun = new Map()
        from = null
      }
      const { context, page } = await open(profile, url)
      from ??= await template(page)
      if (begun.size > 0) await look(page, round)
      if (round === rounds) {
        await context.close()
        break
      }
      const pages = [page]
      if (round % 2 === 1) {
        const second = await context.newPage()
        await second.goto(url)
        await second.locator('#app > *:visible').first().waitFor()
        pages.push(second)
      }
      for (const [i, each] of pages.entries()) {
        const name = `restore${round}${'ab'[i]}`
        begun.set(name, false)
        result.restores += 1
        await each.exposeFunction('saidHere', () => {
          begun.set(name, true)
          result.said += 1
        })
        await offer(each, backupOf(from, name))
      }
      await Promise.all(pages.map(each => each.evaluate(takeIn)))
      await new Promise(resolve => setTimeout(resolve, Math.random() * LONGEST_MS))
      const closed = new Promise(resolve => context.once('close', resolve))
      await killBrowserOf(profile)
      await closed
    }
    for (const line of result.wrong) console.error(line)
    console.log(
      `${rounds} rounds, ${result.restores} backups of ${THINGS} things, ${result.said} said to be here, ${result.wrong.length} wrong.`,
    )
    const bound = (100 * lossBound(result.wrong.length, rounds)).toPrecision(2)
    console.log(
      `What this shows at 95 %: fewer than ${bound} rounds in 100 go wrong when the browser is killed.`,
    )
    return result.wrong.length > 0 ? 1 : 0
  } finally {
    await killBrowserOf(profile)
    await rm(profile, { recursive: true, force: true })
    await server.close()
  }
}

process.exitCode = await main()
