// "Keeping your trips" in a real browser: what is promised is asked for by a tap, and nothing damaged goes unseen.
import { readFile } from 'node:fs/promises'
import { describe, expect } from 'vitest'
import { storeRecords } from './database'
import { expectWorks, notice, visit } from './faults'
import { journey, lookAtDemo, openMore, saved, untilDrawn } from './harness'

describe('a damaged record', () => {
  journey('is left alone, and goes only after its text was offered as a file', async ({ browser, site }) => {
    const { context, page } = await visit(browser, site)
    await lookAtDemo(page)
    await saved(page)
    const damaged = { format: 'pack-reckoner/trip', version: 1, id: 'bad', draft: { name: 'Torn map' } }
    await storeRecords(page, [['trip/bad', damaged]])
    await page.reload()
    await untilDrawn(page)
    await notice(page, /“Torn map” is damaged/)
    await expectWorks(page, 'The others')
    await openMore(page)
    const remove = page.getByRole('button', { name: 'Remove the damaged record' })
    expect(await remove.count()).toBe(0)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save its text as a file' }).click(),
    ])
    expect(JSON.parse(await readFile(await download.path(), 'utf8')).value).toEqual(damaged)
    await remove.click()
    await expect.poll(() => page.getByText('Damaged records').count()).toBe(0)
    await page.reload()
    await untilDrawn(page)
    await expect.poll(() => page.locator('.app-notices').textContent()).toBe('')
    await context.close()
  })
})

describe('the promise of the browser', () => {
  journey('is asked for by a tap and never at the start', async ({ browser, site }) => {
    const { context, page } = await visit(browser, site, {
      fault: () => {
        let [asked, given] = [0, false]
        Object.assign(globalThis, { asked: () => asked })
        StorageManager.prototype.persisted = async () => given
        StorageManager.prototype.persist = async () => {
          asked += 1
          given = true
          return true
        }
      },
    })
    await lookAtDemo(page)
    await saved(page)
    await openMore(page)
    await page.getByText('None: it may clear them').waitFor()
    await page.getByText('None saved yet.').waitFor()
    expect(await page.evaluate('asked()')).toBe(0)
    await page.getByRole('button', { name: 'Ask the browser to keep them' }).click()
    await page.getByText('Given: it does not clear them').waitFor()
    expect(await page.evaluate('asked()')).toBe(1)
    await page.getByRole('button', { name: 'Save this trip as a file' }).click()
    await page.getByText('nothing has changed since').waitFor()
    await context.close()
  })
})
