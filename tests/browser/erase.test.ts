// Erasing for good, in a real browser: of what was erased no byte is left in anything that a page of the site can read.
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { title, untilCopied, visit } from './faults'
import { go, journey, lookAtDemo, openMore, rename, saved } from './harness'

const SECRET = 'Zwischbergen'

/** Runs in the page: all that its storage gives, packed snapshots unpacked, as text. */
async function readAll(): Promise<string> {
  const texts: string[] = [JSON.stringify(localStorage), JSON.stringify(sessionStorage)]
  const asked = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
  for (const { name } of await indexedDB.databases()) {
    const database = await asked(indexedDB.open(name!))
    for (const store of database.objectStoreNames) {
      const all = database.transaction(store).objectStore(store)
      texts.push(name!, JSON.stringify(await asked(all.getAllKeys())))
      texts.push(JSON.stringify(await asked(database.transaction(store).objectStore(store).getAll())))
    }
    database.close()
  }
  const unpacked = async (file: Blob) => {
    const start = new Uint8Array(await file.arrayBuffer()).indexOf(10) + 1
    const stream = file.slice(start).stream().pipeThrough(new DecompressionStream('deflate-raw'))
    return new Response(stream).text().catch(() => '')
  }
  const readFolder = async (folder: FileSystemDirectoryHandle): Promise<void> => {
    for await (const [name, handle] of folder.entries()) {
      texts.push(name)
      if (handle.kind === 'directory') await readFolder(handle as FileSystemDirectoryHandle)
      else {
        const file = await (handle as FileSystemFileHandle).getFile()
        texts.push(await file.text(), await unpacked(file))
      }
    }
  }
  await readFolder(await navigator.storage.getDirectory())
  for (const name of await caches.keys()) {
    const cache = await caches.open(name)
    texts.push(name)
    for (const request of await cache.keys())
      texts.push(request.url, await (await cache.match(request))!.text())
  }
  return texts.join('\n')
}

/** Read once more where a file went away in the midst of it. */
async function hasSecret(page: Page): Promise<boolean> {
  const texts = await page.evaluate(readAll).catch(error => {
    if (!String(error).includes('NotFoundError')) throw error
    return null
  })
  return texts === null ? hasSecret(page) : texts.includes(SECRET)
}

const snapshots = (page: Page) =>
  page.evaluate(async () => {
    const found: string[] = []
    const root = await navigator.storage.getDirectory()
    const folder = await root.getDirectoryHandle('pack-reckoner-snapshots', { create: true })
    for await (const name of folder.keys()) found.push(name)
    return found.length
  })

/** The demo under the secret name, beside a trip "Lake", in every place that a trip of it can get to. */
async function fill(page: Page) {
  await lookAtDemo(page)
  await go(page, 'Trip')
  await rename(page, 'Lake')
  await openMore(page)
  await page.getByRole('button', { name: 'Duplicate trip Lake' }).click()
  await page.getByRole('button', { name: /^Lake \(copy\)/ }).click()
  await go(page, 'Trip')
  await rename(page, SECRET)
  await saved(page)
  await untilCopied(page, SECRET)
  await expect.poll(() => snapshots(page), { timeout: 40_000 }).toBe(1)
  await page.evaluate(async secret => {
    const id = await new Promise<string>(resolve => {
      const request = indexedDB.open('pack-reckoner')
      request.onsuccess = () => {
        const all = request.result.transaction('documents').objectStore('documents').getAll()
        all.onsuccess = () => {
          request.result.close()
          resolve(all.result.find(record => record?.draft?.name === secret).id)
        }
      }
    })
    sessionStorage.setItem(`pack-reckoner/beside/${id}/list`, secret)
    // As a version of the browser left it that could not write the private file system.
    const old = await caches.open('pack-reckoner-copy')
    await old.put('./old', new Response(secret))
  }, SECRET)
}

describe('erasing for good', () => {
  journey('a deleted trip is in no storage any more, in two open tabs', async ({ browser, site }) => {
    const { page, context, uncaught } = await visit(browser, site)
    await fill(page)
    const other = (await visit(browser, site, { context })).page
    await expect.poll(() => title(other)).toBe(SECRET)
    await openMore(page)
    await page.getByRole('button', { name: `Delete trip ${SECRET}` }).click()
    await page.getByText('1 deleted trip can be brought back').click()
    expect(await hasSecret(page)).toBe(true)
    await page.getByRole('button', { name: `Erase for good trip ${SECRET}` }).click()
    await page.getByText('Nothing brings it back after that').waitFor()
    await page.getByText('Files and links that you saved or gave away are beyond reach').waitFor()
    await page.getByRole('button', { name: 'Yes, erase it' }).click()
    await page.getByText('is erased from this device').waitFor()
    expect(await hasSecret(page)).toBe(false)
    // The other tab saves, copies and goes away after that.
    await other.getByRole('button', { name: 'More: trips, shelf, backups' }).click()
    await other.getByRole('button', { name: /^Lake/ }).click()
    await go(other, 'Trip')
    await rename(other, 'Lake, edited')
    await saved(other)
    await untilCopied(other, 'Lake, edited')
    expect(await hasSecret(other)).toBe(false)
    await other.reload()
    await expect.poll(() => title(other)).toBe('Lake, edited')
    await openMore(other)
    expect(await other.getByText(SECRET).count()).toBe(0)
    await other.close()
    expect(await hasSecret(page)).toBe(false)
    expect(await snapshots(page)).toBe(1)
    expect(uncaught).toEqual([])
    await context.close()
  })

  journey(
    'everything is in no storage any more, in two open tabs, and the app starts anew',
    async ({ browser, site }) => {
      const { page, context, uncaught } = await visit(browser, site)
      await fill(page)
      await page.evaluate(async secret => {
        await (await caches.open('pack-reckoner-received')).put('./received/0', new Response(secret))
      }, SECRET)
      const other = (await visit(browser, site, { context })).page
      await expect.poll(() => title(other)).toBe(SECRET)
      await go(other, 'Trip')
      await openMore(page)
      await page.getByRole('button', { name: 'Erase everything on this device' }).click()
      await page.getByRole('button', { name: 'Erase everything now' }).click()
      await page.getByText('Nothing is erased yet: type the word').waitFor()
      expect(await hasSecret(page)).toBe(true)
      await page.getByLabel('Type “erase” to confirm').fill('Erase')
      await rename(other, `${SECRET}, typed at the same time`)
      await page.getByRole('button', { name: 'Erase everything now' }).click()
      for (const each of [page, other]) {
        await each.getByRole('button', { name: 'Look at a demo trip' }).waitFor()
        await each.getByText('Everything that Pack Reckoner kept on this device is erased').waitFor()
        expect(await hasSecret(each)).toBe(false)
      }
      await other.close()
      await page.reload()
      await page.getByRole('button', { name: 'Look at a demo trip' }).waitFor()
      expect(await page.evaluate(readAll)).not.toMatch(/Zwischbergen|Lake/)
      await lookAtDemo(page)
      await saved(page)
      await page.reload()
      await page.getByRole('heading', { name: 'Heaviest load' }).waitFor()
      expect(uncaught).toEqual([])
      await context.close()
    },
  )
})
