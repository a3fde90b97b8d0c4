// What can go wrong with backups and snapshots, in a real browser: the page says it plainly, nothing that was not read is
// overwritten, what is in memory stays editable and can be saved.

import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { drop, goOn, openFile, preview, savedBackup } from './backups'
import { expectWorks, visit } from './faults'
import { journey, lookAtDemo, openMore, untilDrawn } from './harness'

/** A backup with the same trip under another id and name. */
function another(text: string): string {
  const backup = JSON.parse(text)
  const [trip] = backup.trips
  backup.trips.push({ ...trip, id: 'other', draft: { ...trip.draft, name: 'Coast' } })
  return JSON.stringify(backup)
}

const FOLDER = 'pack-reckoner-snapshots'

const putFiles = (page: Page, files: Record<string, string>) =>
  page.evaluate(
    async ({ folder, contents }) => {
      const root = await navigator.storage.getDirectory()
      const place = await root.getDirectoryHandle(folder, { create: true })
      for (const [name, text] of Object.entries(contents)) {
        const stream = await (await place.getFileHandle(name, { create: true })).createWritable()
        await stream.write(text)
        await stream.close()
      }
    },
    { folder: FOLDER, contents: files },
  )

const fileNames = (page: Page) =>
  page.evaluate(async folder => {
    const place = await (await navigator.storage.getDirectory()).getDirectoryHandle(folder)
    return Array.fromAsync(place.keys())
  }, FOLDER)

/** Takes the backup in without a snapshot, puts it back, and goes on editing. */
async function restoresWithout(page: Page, message: RegExp) {
  await openMore(page)
  const { text } = await savedBackup(page)
  await openFile(page, another(text))
  await preview(page)
  await page.getByRole('button', { name: 'Merge it' }).click()
  await page.getByText('Now here: 2 trips').waitFor()
  await page.getByText(message).waitFor()
  await page.getByRole('button', { name: 'Save what was here as a file' }).waitFor()
  await page.getByRole('button', { name: 'Put back as it was' }).click()
  await page.getByText('Everything is as it was').waitFor()
  await goOn(page)
  expect((await savedBackup(page)).text).toBe(text)
  await page.getByRole('button', { name: 'Back', exact: true }).click()
  await expectWorks(page, 'Still editable')
}

describe('a snapshot that cannot be kept', () => {
  journey(
    'for want of room: the backup comes in all the same, and can be put back',
    async ({ browser, site }) => {
      const { context, page, uncaught } = await visit(browser, site, {
        fault: () => {
          const { createWritable } = FileSystemFileHandle.prototype
          FileSystemFileHandle.prototype.createWritable = function (...options) {
            if (this.name.endsWith('.snapshot'))
              return Promise.reject(new DOMException('', 'QuotaExceededError'))
            return createWritable.apply(this, options)
          }
        },
      })
      await lookAtDemo(page)
      await restoresWithout(page, /no room left for a snapshot/)
      expect(await fileNames(page)).toEqual([])
      expect(uncaught).toEqual([])
      await context.close()
    },
  )

  journey('because its place does not answer: as well', async ({ browser, site }) => {
    const { context, page, uncaught } = await visit(browser, site, {
      fault: () => {
        StorageManager.prototype.getDirectory = () => new Promise(() => {})
      },
    })
    await lookAtDemo(page)
    await restoresWithout(page, /does not answer/)
    expect(uncaught).toEqual([])
    await context.close()
  })
})

describe('snapshots that are damaged or newer', () => {
  journey('are left alone beside the whole ones, until they are removed', async ({ openDemo }) => {
    const page = await openDemo()
    const head = { format: 'pack-reckoner/snapshot', version: 1, at: 1e12, day: '2001-09-09', reason: 'day' }
    const torn = { ...head, trips: 3, things: 1, hash: 'f'.repeat(64), packed: false }
    await putFiles(page, {
      '1-day.snapshot': '\u0000\u0001\u0002',
      '2-day.snapshot': `${JSON.stringify({ ...head, version: 7 })}\nlater`,
      '3-day.snapshot': `${JSON.stringify(torn)}\n{"format":`,
      '4-day.snapshot': '',
    })
    await openMore(page)
    await page.getByText('A damaged snapshot, which is left alone.').waitFor()
    await page.getByText('A snapshot of a newer version').waitFor()
    await page.getByRole('button', { name: /^Look at it: the snapshot/ }).click()
    await page.getByText('This snapshot is damaged: choose another one.').waitFor()
    const { text } = await savedBackup(page)
    await openFile(page, another(text))
    await preview(page)
    await page.getByRole('button', { name: 'Merge it' }).click()
    await page.getByText('Now here: 2 trips').waitFor()
    await goOn(page)
    expect((await fileNames(page)).filter(name => /^[123]-/.test(name))).toHaveLength(3)
    await page.getByRole('button', { name: 'Remove the snapshot of 1-day.snapshot' }).click()
    await page.getByText('Snapshot removed.').waitFor()
    expect(await fileNames(page)).not.toContain('1-day.snapshot')
  })
})

describe('a file that is not whole, or no backup', () => {
  journey('is refused with the reason, and nothing here changes', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    const { text } = await savedBackup(page)
    const huge = () =>
      page.evaluate(() => {
        const dataTransfer = new DataTransfer()
        dataTransfer.items.add(new File(['{', new Uint8Array(60_000_000)], 'huge.json'))
        document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }))
      })
    const cases: [() => Promise<unknown>, string | RegExp][] = [
      [() => openFile(page, text.slice(0, -40)), /was cut short: its end is missing/],
      [() => openFile(page, text.replace('"trips"', '"trips')), /somewhere inside, its text is not/],
      [() => openFile(page, ''), /is empty, or did not arrive whole/],
      [
        () =>
          openFile(
            page,
            text.replace(/"version": (\d+)\n}/, (_, now) => `"version": ${Number(now) + 1}\n}`),
          ),
        /newer version of Pack Reckoner/,
      ],
      [() => openFile(page, '{"name":"package"}'), /neither a plan nor a backup/],
      [() => openFile(page, Buffer.from([0x50, 0x4b, 3, 4])), /zip archive/],
      [() => drop(page, 'page.html', '<!doctype html><h1>Hello'), /web page/],
      [huge, /60 MB large; a backup is read up to 30 MB/],
    ]
    for (const [open, message] of cases) {
      await open()
      await page.getByRole('heading', { name: 'This file cannot be opened' }).waitFor()
      await page.getByText(message).waitFor()
      await page.getByRole('button', { name: 'Go on without it' }).click()
    }
    expect((await savedBackup(page)).text).toBe(text)
  })

  journey(
    'taken in while the database hangs is in memory, can be edited and saved',
    async ({ browser, openDemo, site }) => {
      const first = await openDemo()
      await openMore(first)
      const { text } = await savedBackup(first)
      const { context, page, uncaught } = await visit(browser, site, {
        fault: () => {
          IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest
        },
      })
      await untilDrawn(page)
      await drop(page, 'backup.json', text)
      await preview(page)
      await page.getByRole('button', { name: 'Merge it' }).click()
      await page.getByText('Now here, but not saved: 1 trip').waitFor()
      await goOn(page)
      await expectWorks(page, 'In memory')
      await openMore(page)
      expect((await savedBackup(page)).text).toContain('In memory')
      expect(uncaught).toEqual([])
      await context.close()
    },
  )
})
