// A browser that is killed, and a database that is damaged on the disk while the browser is closed: what was called
// "Saved" is there. How Chromium lays the database out is looked at, not assumed.
//   DAMAGES=all npx vitest run --project faults tests/browser/faults-damage.test.ts     more kinds of damage
import { randomBytes } from 'node:crypto'
import { cp, mkdtemp, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { describe, expect } from 'vitest'
import demo from '../../data/demo-plan.json'
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs'
import { killRounds } from '../tools/kill.mjs'
import { untilCopied } from './faults'
import { at360, journey, lookAtDemo, openMore, rename, saved, untilDrawn } from './harness'

const launch = async (profile: string, url: string) => {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    args: chromiumFlags,
    ...at360(),
  })
  const page = context.pages()[0] ?? (await context.newPage())
  page.setDefaultTimeout(15_000)
  await page.goto(url)
  await untilDrawn(page)
  return { context, page }
}

/** So large, and so hard to compress, that Chromium keeps it in a file of its own. */
const largePlan = () =>
  JSON.stringify({
    ...demo,
    name: 'Large',
    gear: Array.from({ length: 1500 }, (_, n) => ({
      id: `i${n}`,
      name: randomBytes(60).toString('hex'),
      massKg: 0.01,
      litres: 0.01,
    })),
  })

const filesIn = async (folder: string, like: RegExp) =>
  (await readdir(folder)).filter(name => like.test(name)).map(name => join(folder, name))

/** Changes every 97th byte of a file. */
async function flip(file: string) {
  const bytes = await readFile(file)
  for (let i = 0; i < bytes.length; i += 97) bytes[i] = bytes[i]! ^ 0xff
  await writeFile(file, bytes)
}

const each = (like: RegExp, damage: (file: string) => Promise<void>) => async (folder: string) => {
  const files = await filesIn(folder, like)
  if (files.length === 0) throw new Error(`no file like ${like} to damage in ${folder}`)
  for (const file of files) await damage(file)
}
const halve = async (file: string) => truncate(file, Math.floor((await readFile(file)).length / 2))

interface Damage {
  /** What is done to the folder of the database. */
  to: (folder: string) => Promise<void>
  /** The trips listed afterwards; all of them under their names if not given. */
  trips?: string[]
}

const all = ['First', 'Large', 'Second 4']
const damages: Record<string, Damage> = {
  'CURRENT is garbage': { to: each(/^CURRENT$/, file => writeFile(file, 'garbage')) },
  'the log has flipped bytes': { to: each(/\.log$/, flip) },
  // The record is still there, so it is kept as it is and the copy goes beside it.
  'large values, kept beside it, are gone': {
    to: folder => rm(folder.replace(/leveldb$/, 'blob'), { recursive: true }),
    trips: ['First', 'Large (second copy)', 'Second 4'],
  },
}
const moreDamages: Record<string, Damage> = {
  'MANIFEST is empty': { to: each(/^MANIFEST-/, file => truncate(file, 0)) },
  'the log is cut to half': { to: each(/\.log$/, halve) },
  'MANIFEST has flipped bytes': { to: each(/^MANIFEST-/, flip) },
  'the log is empty': { to: each(/\.log$/, file => truncate(file, 0)) },
  'every file is empty': { to: each(/./, file => truncate(file, 0)) },
  'the folder is gone': { to: folder => rm(folder, { recursive: true }) },
}
if (process.env.DAMAGES === 'all') Object.assign(damages, moreDamages)

/** Opens the app on a profile and waits, at most for some seconds, for word of the second copy. */
async function stateOf(profile: string, url: string) {
  const { context, page } = await launch(profile, url)
  const word = page.locator('.app-notices').getByText('second copy')
  const isSaid = await word.waitFor({ timeout: 8000 }).then(
    () => true,
    () => false,
  )
  await openMore(page)
  const trips = await page.locator('.trips .name').allTextContents()
  await context.close()
  return { trips, isSaid }
}

describe('a browser that is killed while one types', () => {
  journey.skipIf(process.platform !== 'linux')('loses no edit that was called "Saved"', async ({ site }) => {
    const profile = await mkdtemp(join(tmpdir(), 'kill-'))
    const { acknowledged, losses } = await killRounds({ url: site.url, rounds: 3, profile })
    expect(losses).toEqual([])
    expect(acknowledged).toBeGreaterThanOrEqual(3)
    await rm(profile, { recursive: true, force: true })
  })
})

describe('a database damaged on the disk', () => {
  journey(
    'is noticed, and every trip comes back as it was last saved',
    async ({ site, skip }) => {
      const base = await mkdtemp(join(tmpdir(), 'damage-'))
      const whole = join(base, 'whole')
      const { context, page } = await launch(whole, site.url)
      await lookAtDemo(page)
      await rename(page, 'First')
      await saved(page)
      await openMore(page)
      await page.getByLabel('Open a plan file').setInputFiles({
        name: 'large.json',
        mimeType: 'application/json',
        buffer: Buffer.from(largePlan()),
      })
      await page.getByRole('button', { name: /^Large/ }).waitFor()
      await page.getByRole('button', { name: 'New trip' }).click()
      for (let i = 1; i <= 4; i++) {
        await rename(page, `Second ${i}`)
        await saved(page)
      }
      await untilCopied(page, 'Second 4')
      await context.close()

      const databases = join('Default', 'IndexedDB')
      const [folder] = await readdir(join(whole, databases)).then(names =>
        names.filter(name => name.includes('127.0.0.1') && name.endsWith('.indexeddb.leveldb')),
      )
      if (!folder)
        return skip('this Chromium keeps IndexedDB in another way than LevelDB: write its damages anew')

      const found: Record<string, unknown> = {}
      for (const [what, { to: damage }] of Object.entries(damages)) {
        const profile = join(base, what.replaceAll(' ', '-'))
        await cp(whole, profile, { recursive: true })
        await damage(join(profile, databases, folder))
        found[what] = await stateOf(profile, site.url)
        await rm(profile, { recursive: true, force: true })
      }
      const asSaved = Object.entries(damages).map(([what, { trips = all }]) => [
        what,
        { trips, isSaid: true },
      ])
      expect(found).toEqual(Object.fromEntries(asSaved))
      await rm(base, { recursive: true, force: true })
    },
    180_000,
  )
})
