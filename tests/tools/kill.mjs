// Ends the browser in the middle of typing, as a flat battery or the system does, and looks whether every edit that the
// app had called "Saved" is there at the next start.
//   npm run kill -- 60     sixty rounds on the built app (npm run build first); exit code 1 when one was lost
//   npm run kill -- 60 folder     the same on a build that lies in another folder
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { chromiumFlags, chromiumPath } from './chromium.mjs'

/** The processes of the browser that runs on this profile, and of no other. Linux only. */
async function processesOf(profile) {
  const found = []
  for (const pid of (await readdir('/proc')).filter(name => /^\d+$/.test(name))) {
    // A process may end between the two readings.
    const command = await readFile(`/proc/${pid}/cmdline`, 'utf8').catch(() => '')
    if (command.split('\0').some(part => part === `--user-data-dir=${profile}`)) found.push(Number(pid))
  }
  return found
}

/** Kills that browser without a warning and waits until it is gone. */
export async function killBrowserOf(profile) {
  for (let pids = await processesOf(profile); pids.length > 0; pids = await processesOf(profile)) {
    for (const pid of pids) killOne(pid)
    await new Promise(resolve => setTimeout(resolve, 20))
  }
  for (const name of await readdir(profile))
    if (name.startsWith('Singleton')) await rm(join(profile, name), { force: true })
}

function killOne(pid) {
  try {
    process.kill(pid, 'SIGKILL')
  } catch (error) {
    if (error.code !== 'ESRCH') throw error
  }
}

/** Types numbered names into the open trip until it is stopped, and says which number was called "Saved". */
function typeOn(first) {
  const status = document.querySelector('.head-state [role="status"]')
  const field = [...document.querySelectorAll('label')].find(
    label => label.textContent === 'Name of the trip',
  )
  const input = document.getElementById(field.htmlFor)
  const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')
  const until = text =>
    new Promise(resolve => {
      if (status.textContent === text) return resolve()
      const watcher = new MutationObserver(() => {
        if (status.textContent !== text) return
        watcher.disconnect()
        resolve()
      })
      watcher.observe(status, { characterData: true, childList: true, subtree: true })
    })
  void (async () => {
    for (let n = first; ; n++) {
      set.call(input, `edit ${n}`)
      input.dispatchEvent(new Event('input', { bubbles: true }))
      await until('Saving…')
      await until('Saved')
      await globalThis.acknowledge(n)
    }
  })()
}

/**
 * Runs rounds of typing and killing on one profile. Returns how many edits were called "Saved", and a sentence for each
 * round after which one of them was missing.
 */
export async function killRounds({ url, rounds, profile, executablePath = chromiumPath() }) {
  const result = { acknowledged: 0, losses: [] }
  let last = 0
  for (let round = 0; round <= rounds; round++) {
    const context = await chromium.launchPersistentContext(profile, {
      executablePath,
      args: chromiumFlags,
      viewport: { width: 360, height: 740 },
    })
    context.on('weberror', () => {})
    const page = context.pages()[0] ?? (await context.newPage())
    let enough = () => {}
    const acknowledged = new Promise(resolve => {
      enough = resolve
    })
    const wanted = 1 + Math.floor(Math.random() * 4)
    const first = last + 1
    await page.exposeFunction('acknowledge', n => {
      last = n
      result.acknowledged += 1
      if (n >= first + wanted - 1) enough()
    })
    await page.goto(url)
    if (round === 0) await page.getByRole('button', { name: 'Look at a demo trip' }).click()
    // A database that is slow to answer is stood in for by the second copy until it does.
    await page.locator('.head-state').getByText('Saved', { exact: true }).waitFor()
    const name = await page.locator('.head-title h1').textContent()
    const stored = Number(/^edit (\d+)$/.exec(name)?.[1] ?? Number.NaN)
    if (round > 0 && !(stored >= last))
      result.losses.push(`round ${round}: “edit ${last}” was saved, “${name}” is there`)
    last = Math.max(last, stored || 0)
    if (round === rounds) {
      await context.close()
      break
    }
    await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: 'Trip' }).click()
    await page.getByLabel('Name of the trip').waitFor()
    await page.evaluate(typeOn, last + 1)
    await acknowledged
    // At any moment of the next edit: before it, between its keystroke and its saving, or while it is written.
    await new Promise(resolve => setTimeout(resolve, Math.random() * 450))
    const closed = new Promise(resolve => context.once('close', resolve))
    await killBrowserOf(profile)
    await closed
  }
  return result
}

/**
 * The share of rounds with a loss that these rounds do not rule out at 95 %: the exact one-sided bound for so many
 * losses in so many rounds. Without any it is near 3 / rounds (the "rule of three"; computed from the binomial).
 */
export function lossBound(losses, rounds) {
  let [low, high] = [losses / rounds, 1]
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (atMost(losses, rounds, middle) > 0.05) low = middle
    else high = middle
  }
  return high
}

/** The chance of at most so many losses in so many rounds. */
function atMost(losses, rounds, chance) {
  let term = (1 - chance) ** rounds
  let sum = term
  for (let k = 1; k <= losses; k++) {
    term *= ((rounds - k + 1) / k) * (chance / (1 - chance))
    sum += term
  }
  return sum
}

/** Serves the built app, or a build in another folder. */
export async function serveBuild(folder) {
  const { preview } = await import('vite')
  return preview({
    configFile: join(import.meta.dirname, '..', '..', 'vite.config.ts'),
    ...(folder && { build: { outDir: resolve(folder) } }),
    preview: { port: 0, host: '127.0.0.1' },
  })
}

async function main() {
  const rounds = Number(process.argv[2] ?? 60)
  if (!Number.isInteger(rounds) || rounds < 1) {
    console.error(`How many rounds? ${process.argv[2]} is no number of rounds: npm run kill -- 60`)
    return 2
  }
  const server = await serveBuild(process.argv[3])
  const profile = await mkdtemp(join(tmpdir(), 'kill-'))
  try {
    const url = server.resolvedUrls.local[0]
    const { acknowledged, losses } = await killRounds({ url, rounds, profile })
    for (const loss of losses) console.error(loss)
    console.log(
      `${rounds} rounds, ${acknowledged} edits called “Saved”, ${losses.length} rounds with a loss.`,
    )
    const bound = (100 * lossBound(losses.length, rounds)).toPrecision(2)
    console.log(
      `What this shows at 95 %: fewer than ${bound} rounds in 100 lose an edit when the browser is killed. It says nothing of a device that loses power.`,
    )
    return losses.length > 0 ? 1 : 0
  } finally {
    await killBrowserOf(profile)
    await rm(profile, { recursive: true, force: true })
    await server.close()
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) process.exitCode = await main()
