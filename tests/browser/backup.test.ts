// Everything as one file and back, in a real browser: saved, wiped, taken in; merged and put back; snapshots; and every
// door through which a file comes in.

import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import demo from '../../data/demo-plan.json'
import { expectAccessible } from './axe'
import { drop, goOn, openDiffering, openFile, paste, preview, savedBackup } from './backups'
import {
  at1280,
  go,
  journey,
  lookAtDemo,
  newContext,
  openMore,
  profileOf,
  rename,
  saved,
  untilDrawn,
} from './harness'

const tripCount = (page: Page) => page.locator('.trips > li').count()
const planText = JSON.stringify(demo)

describe('a backup file', () => {
  journey('saved, wiped, taken in and saved again is the same to the byte', async ({ open, openDemo }) => {
    const page = await openDemo()
    await rename(page, 'Über den Grat \u2013 עברית')
    await openMore(page)
    await page.getByRole('button', { name: 'Duplicate trip' }).click()
    await page.getByLabel('Dark', { exact: true }).check()
    const first = await savedBackup(page)
    expect(first.name).toMatch(/^pack-reckoner-\d{4}-\d\d-\d\d\.json$/)
    expect(JSON.parse(first.text).trips).toHaveLength(2)

    const wiped = await open()
    await drop(wiped, first.name, first.text)
    await preview(wiped)
    await wiped.getByRole('button', { name: 'Merge it' }).click()
    await wiped.getByText('Now here: 2 trips').waitFor()
    await goOn(wiped)
    await openMore(wiped)
    expect((await savedBackup(wiped)).text).toBe(first.text)
    await wiped.getByRole('button', { name: 'Back', exact: true }).click()
    await saved(wiped)
    await wiped.reload()
    await untilDrawn(wiped)
    await openMore(wiped)
    expect((await savedBackup(wiped)).text).toBe(first.text)
  })

  journey(
    'shows what would change before anything does, merges, and is put back as it was',
    async ({ openDemo }) => {
      const page = await openDemo()
      await openMore(page)
      const { text } = await savedBackup(page)
      await openDiffering(page)
      await page.getByText(`${demo.gear.length} items here, ${demo.gear.length - 1} in the file`).waitFor()
      await page.getByText(/Trip 3 “Torn” is damaged/).waitFor()
      await page.getByLabel('Replace all').check()
      await page.getByText('The file’s takes its place').waitFor()
      await page.getByRole('button', { name: 'Leave it' }).click()
      expect(await tripCount(page)).toBe(1)

      await openDiffering(page)
      await page.getByRole('button', { name: 'Merge it' }).click()
      await page.getByText('Now here: 3 trips').waitFor()
      await page.getByRole('button', { name: 'Put back as it was' }).click()
      await page.getByText('Everything is as it was').waitFor()
      await goOn(page)
      expect((await savedBackup(page)).text).toBe(text)
      // Kept for later sessions too: before the merging, and before it was put back.
      await page.getByText('before a backup was taken in').waitFor()
      await page.getByText('before a backup was taken out again').waitFor()
    },
  )

  journey('whose file was opened once is known to be here already', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    const { text } = await savedBackup(page)
    await openFile(page, text)
    await page.getByText('All that is in this file is here already').waitFor()
    expect(await page.getByRole('button', { name: 'Merge it' }).count()).toBe(0)
  })
})

describe('snapshots', () => {
  journey(
    'are taken in a quiet moment after a change, listed, looked at, removed and brought back',
    async ({ open }) => {
      const page = await open()
      await profileOf(page).clock.install()
      await page.reload()
      await lookAtDemo(page)
      await saved(page)
      await openMore(page)
      // Looking after the saves begins before the second copy is made. One leap only, from where nothing is under way:
      // whatever waits for the storage would take a leap for a storage that does not answer.
      await page.getByText('1 trip, up to date').waitFor()
      await page.clock.fastForward(20_000)
      const look = page.getByRole('button', { name: /^Look at it: the snapshot/ })
      await look.waitFor()
      await page.getByText(/1 trip, 0 items, \d+ kB/).waitFor()
      await expectAccessible(page)
      // The trip beside itself, as the snapshot has it.
      await page.getByRole('button', { name: 'Back', exact: true }).click()
      await go(page, 'Packs')
      await page.getByRole('button', { name: 'Side by side', exact: true }).click()
      await page.getByRole('button', { name: 'Look in the snapshots too' }).click()
      await page.getByRole('option', { name: /^in the snapshot of/ }).waitFor({ state: 'attached' })
      await openMore(page)
      await page.getByRole('button', { name: /^Delete trip/ }).click()
      await look.click()
      await preview(page)
      await page.getByRole('button', { name: 'Merge it' }).click()
      await page.getByText('Now here: 1 trip').waitFor()
      await goOn(page)
      await page.getByRole('button', { name: /^Remove the snapshot/ }).click()
      await page.getByText('None yet.').waitFor()
      await page.getByRole('button', { name: 'Bring it in again' }).click()
      await look.waitFor()
    },
  )
})

describe('a file from outside', () => {
  journey(
    'dropped or pasted goes to the reader it belongs to, and changes nothing by itself',
    async ({ open }) => {
      const page = await open(at1280())
      await drop(page, 'holiday.txt', planText)
      await page.getByRole('heading', { name: 'A plan from a file' }).waitFor()
      await page.getByRole('button', { name: 'Keep it as a trip' }).click()
      await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()

      await paste(page, planText)
      await page.getByRole('button', { name: 'Leave it' }).click()
      await paste(page, 'just some words')
      await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
      // In a field it is text like any other.
      await go(page, 'Trip')
      const field = page.getByLabel('Name of the trip')
      await field.evaluate((input, text) => {
        const clipboardData = new DataTransfer()
        clipboardData.setData('text/plain', text)
        input.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true }))
      }, planText)
      expect(await page.getByRole('heading', { name: 'A plan from a file' }).count()).toBe(0)

      const track =
        '<gpx version="1.1"><trk><trkseg><trkpt lat="47" lon="11"/><trkpt lat="47.1" lon="11"/></trkseg></trk></gpx>'
      await drop(page, 'walk', track)
      await page.getByRole('button', { name: 'For a new trip' }).click()
      await page
        .getByText(/11\.1\skm/)
        .first()
        .waitFor()
      await page.getByRole('button', { name: 'Use these stops' }).click()
      await page.getByRole('heading', { name: 'Trip', level: 2 }).waitFor()
    },
  )

  journey('opened with the app by the system is shown', async ({ browser, site }) => {
    const context = await newContext(browser, at1280())
    const page = await context.newPage()
    await page.addInitScript(text => {
      const file = new File([text], 'opened.json')
      const launchQueue = {
        setConsumer: (consumer: (launch: unknown) => void) =>
          consumer({
            files: [{ getFile: async () => file }, { getFile: () => Promise.reject(new Error('gone')) }],
          }),
      }
      Object.defineProperty(globalThis, 'launchQueue', { value: launchQueue })
    }, planText)
    await page.goto(site.url)
    await page.getByRole('heading', { name: 'A plan from a file' }).waitFor()
    await page.getByRole('button', { name: 'Leave it' }).click()
    // The second one could not be had.
    await page.getByText('The file is empty, or did not arrive whole').waitFor()
    await page.getByRole('button', { name: 'Go on without it' }).click()
    await page.getByRole('button', { name: 'Plan a trip' }).waitFor()
    await context.close()
  })

  journey(
    'shared by another app arrives without a network, and leaves no trace in the address',
    async ({ openStored, site }) => {
      const page = await openStored()
      await site.stop()
      const other = await elsewhere(`${site.url}?receive`)
      try {
        // The system posts the form as a navigation that no page has started; another page's form comes closest.
        await page.goto(other.url)
        await page.locator('input').setInputFiles({
          name: 'Gräte.json',
          mimeType: 'application/json',
          buffer: Buffer.from(planText),
        })
        await page.getByRole('button', { name: 'Share' }).click()
        await page.getByRole('heading', { name: 'A plan from a file' }).waitFor()
        expect(page.url()).toBe(site.url)
        expect(await page.evaluate(() => caches.has('pack-reckoner-received'))).toBe(false)
        await page.getByRole('button', { name: 'Leave it' }).click()

        await page.goto(other.url)
        await page.getByRole('button', { name: 'Share' }).click()
        await page.getByText('did not arrive whole').waitFor()
      } finally {
        await other.stop()
      }
    },
  )
})

/** Another site, with a form that posts a file as the share sheet does. */
async function elsewhere(target: string) {
  const server = createServer((_, response) => {
    response.writeHead(200, { 'Content-Type': 'text/html; charset=utf-8' })
    response.end(
      `<form action="${target}" method="post" enctype="multipart/form-data"><input type="file" name="files"><button>Share</button></form>`,
    )
  })
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address() as AddressInfo
  const stop = async () => {
    server.closeAllConnections()
    await new Promise(resolve => server.close(resolve))
  }
  return { url: `http://127.0.0.1:${port}/`, stop }
}
