// Storage that fails, in a real browser: every failure is said in words, nothing that is open is lost, the trip can be
// saved as a file, and nothing that could not be read is overwritten.
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectWorks, notice, title, untilCopied, visit } from './faults'
import { journey, lookAtDemo, rename, saved, untilDrawn } from './harness'
import type { Site } from './server'

/** Runs in the page: its transactions fail when told to. */
function breakTransactions() {
  const original = IDBDatabase.prototype.transaction
  let [left, error] = [0, '']
  Object.assign(globalThis, {
    fail: (times: number, name: string) => {
      left = times
      error = name
    },
  })
  IDBDatabase.prototype.transaction = function (...args) {
    if (left-- > 0) throw new DOMException('from the test', error)
    return original.apply(this, args)
  }
}

/** To be evaluated in such a page. */
const fail = (name: string, times: number) => `globalThis.fail(${times}, ${JSON.stringify(name)})`

describe('a save that fails', () => {
  journey('once, for a lost connection: nobody needs to know', async ({ browser, site }) => {
    const { context, page, uncaught } = await visit(browser, site, { fault: breakTransactions })
    await lookAtDemo(page)
    await saved(page)
    for (const name of ['InvalidStateError', 'UnknownError']) {
      await page.evaluate(fail(name, 1))
      await rename(page, name)
      await saved(page)
      await page.reload()
      await untilDrawn(page)
      await expect.poll(() => title(page)).toBe(name)
    }
    await expect.poll(() => page.locator('.app-notices').textContent()).toBe('')
    expect(uncaught).toEqual([])
    await context.close()
  })

  journey('for good: it is said, all works on, and a tap saves once it can', async ({ browser, site }) => {
    const { context, page, uncaught } = await visit(browser, site, { fault: breakTransactions })
    await lookAtDemo(page)
    await saved(page)
    await page.evaluate(fail('UnknownError', Number.POSITIVE_INFINITY))
    await rename(page, 'Unsaved')
    await notice(page, 'could not be saved (UnknownError)')
    await expectWorks(page, 'Still here')
    // Both at once: left alone, the next save would do without the tap.
    await page.getByRole('button', { name: 'Try again' }).waitFor()
    const tap = "[...document.querySelectorAll('button')].find(b => b.textContent === 'Try again').click()"
    await page.evaluate(`${fail('', 0)}; ${tap}`)
    await saved(page)
    await page.reload()
    await untilDrawn(page)
    await expect.poll(() => title(page)).toBe('Still here')
    expect(uncaught).toEqual([])
    await context.close()
  })

  journey('by never ending: it is said while it hangs', async ({ browser, site }) => {
    const { context, page, uncaught } = await visit(browser, site, {
      // What is written never says that it has been.
      fault: () => {
        const prototype = IDBTransaction.prototype
        const { addEventListener } = prototype
        prototype.addEventListener = function (this: IDBTransaction, type: string, ...rest: [never]) {
          if (type !== 'complete' || this.mode !== 'readwrite') addEventListener.call(this, type, ...rest)
        }
        const { set } = Object.getOwnPropertyDescriptor(prototype, 'oncomplete')!
        Object.defineProperty(prototype, 'oncomplete', {
          set(this: IDBTransaction, heard) {
            if (this.mode !== 'readwrite') set!.call(this, heard)
          },
        })
      },
    })
    await lookAtDemo(page)
    await notice(page, 'storage of this browser does not answer')
    await expectWorks(page, 'Waiting')
    expect(uncaught).toEqual([])
    await context.close()
  })

  journey('for want of room from the very start', async ({ browser, site }) => {
    const { context, page, uncaught } = await visit(browser, site, {
      before: async page => {
        const session = await page.context().newCDPSession(page)
        await session.send('Storage.overrideQuotaForOrigin', {
          origin: new URL(site.url).origin,
          quotaSize: 5000,
        })
      },
    })
    await lookAtDemo(page)
    await notice(page, /no room left|could not be read \(QuotaExceededError\)/)
    await expectWorks(page, 'No room')
    expect(uncaught).toEqual([])
    await context.close()
  })
})

describe('a database that does not open', () => {
  const faults: Record<string, { fault: () => void; says: string }> = {
    'never answers': {
      fault: () => {
        IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest
      },
      says: 'does not answer',
    },
    'is not there': {
      fault: () => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }),
      says: 'lets the app keep nothing',
    },
    'may not be mentioned': {
      fault: () =>
        Object.defineProperty(globalThis, 'indexedDB', {
          get: () => {
            throw new DOMException('from the test', 'SecurityError')
          },
        }),
      says: 'lets the app keep nothing',
    },
    'cannot be read': {
      fault: () => {
        IDBDatabase.prototype.transaction = () => {
          throw new DOMException('from the test', 'UnknownError')
        }
      },
      says: 'could not be read (UnknownError)',
    },
  }

  journey('whatever the reason: the copied trips are shown, and all works', async ({ browser, site }) => {
    const { context, page } = await visit(browser, site)
    await lookAtDemo(page)
    await rename(page, 'Years of work')
    await saved(page)
    await untilCopied(page, 'Years of work')
    await page.close()
    for (const [what, { fault, says }] of Object.entries(faults)) {
      const broken = await visit(browser, site, { context, fault })
      await notice(broken.page, says)
      await notice(broken.page, 'from the second copy')
      await expect.poll(() => title(broken.page), { message: what }).toBe('Years of work')
      await expectWorks(broken.page, 'Edited in memory')
      expect(broken.uncaught, what).toEqual([])
      await broken.page.close()
    }
    const healed = await visit(browser, site, { context })
    await expect.poll(() => title(healed.page)).toBe('Years of work')
    await context.close()
  })

  journey('because a newer version made it: nothing in it is touched', async ({ browser, site }) => {
    const { context, page, uncaught } = await visit(browser, site, {
      before: async page => {
        await page.goto(site.blankUrl)
        await page.evaluate(
          () =>
            new Promise<void>((resolve, reject) => {
              const request = indexedDB.open('pack-reckoner', 2)
              request.onupgradeneeded = () =>
                request.result.createObjectStore('documents').put({ of: 'tomorrow' }, 'trip/x')
              request.onsuccess = () => {
                request.result.close()
                resolve()
              }
              request.onerror = () => reject(request.error)
            }),
        )
      },
    })
    await notice(page, 'newer version of Pack Reckoner')
    await lookAtDemo(page)
    await expectWorks(page, 'Today')
    const kept = await page.evaluate(
      () =>
        new Promise(resolve => {
          const request = indexedDB.open('pack-reckoner')
          request.onsuccess = () => {
            const all = request.result.transaction('documents').objectStore('documents').getAll()
            all.onsuccess = () => resolve([request.result.version, all.result])
          }
        }),
    )
    expect(kept).toEqual([2, [{ of: 'tomorrow' }]])
    expect(uncaught).toEqual([])
    await context.close()
  })
})

describe('a database that is emptied', () => {
  journey('under the open app: everything is saved again', async ({ browser, site }) => {
    const { context, page, uncaught } = await visit(browser, site)
    await lookAtDemo(page)
    await rename(page, 'Cleared')
    await saved(page)
    await clear(site, page)
    await notice(page, 'has emptied the storage')
    await saved(page)
    await expectWorks(page, 'After it')
    await saved(page)
    await page.reload()
    await untilDrawn(page)
    await expect.poll(() => title(page)).toBe('After it')
    expect(uncaught).toEqual([])
    await context.close()
  })

  journey(
    'while the app is closed: everything comes back from the second copy',
    async ({ browser, site }) => {
      const { context, page } = await visit(browser, site)
      await lookAtDemo(page)
      await rename(page, 'Years of work')
      await saved(page)
      await untilCopied(page, 'Years of work')
      await page.goto('about:blank')
      await clear(site, page)
      const again = await visit(browser, site, { context })
      await notice(again.page, 'back from the second copy')
      await expect.poll(() => title(again.page)).toBe('Years of work')
      await saved(again.page)
      expect(again.uncaught).toEqual([])
      await context.close()
    },
  )
})

async function clear(site: Site, page: Page) {
  const session = await page.context().newCDPSession(page)
  await session.send('Storage.clearDataForOrigin', {
    origin: new URL(site.url).origin,
    storageTypes: 'indexeddb',
  })
}
