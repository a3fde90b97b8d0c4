// Several tabs at once, and tabs that go away in the middle of it: no edit is lost, whoever saves last.
//   EDITS=1000 ROUNDS=10 npx vitest run --project faults tests/browser/faults-tabs.test.ts     the long version
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { storedRecords } from './database'
import { notice, title, visit } from './faults'
import { go, journey, lookAtDemo, openMore, rename, saved, untilDrawn } from './harness'

const EDITS = Number(process.env.EDITS ?? 25)
const ROUNDS = Number(process.env.ROUNDS ?? 4)

/** Runs in the page: adds named items with the app's own button and fields, with a rest between them. */
async function addItems({ names, restMs }: { names: string[]; restMs: number }) {
  const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!
  const find = (text: string, kind: string) =>
    [...document.querySelectorAll<HTMLElement>(kind)].find(({ textContent }) => textContent?.trim() === text)
  const until = async <T>(look: () => T | undefined) => {
    for (;;) {
      const found = look()
      if (found) return found
      await new Promise(resolve => setTimeout(resolve, 2))
    }
  }
  for (const name of names) {
    const add = await until(() => find('Add an item', 'button'))
    add.click()
    const input = await until(() => {
      const label = find('Name', 'label') as HTMLLabelElement | undefined
      const field = label && (document.getElementById(label.htmlFor) as HTMLInputElement)
      return field?.value === '' ? field : undefined
    })
    set!.call(input, name)
    input.dispatchEvent(new Event('input', { bubbles: true }))
    await new Promise(resolve => setTimeout(resolve, restMs * Math.random()))
  }
}

/** The names of all items of all trips as stored. */
async function storedItems(page: Page): Promise<string[]> {
  const trips = (await storedRecords(page, 'trip/')) as [string, { draft: { gear: { name?: string }[] } }][]
  return trips.flatMap(([, { draft }]) => draft.gear.map(({ name }) => name ?? ''))
}

const numbered = (tab: string, count: number) => Array.from({ length: count }, (_, i) => `${tab} ${i + 1}`)

describe('tabs', () => {
  journey(
    'two that change the same trip, neither knowing of the other, keep both versions',
    async ({ browser, site }) => {
      const a = await visit(browser, site)
      await lookAtDemo(a.page)
      await saved(a.page)
      // It hears nothing of the other, as when both write before either has heard.
      const deaf = () => {
        Reflect.deleteProperty(globalThis, 'BroadcastChannel')
      }
      const b = await visit(browser, site, { context: a.context, fault: deaf })
      await go(a.page, 'Trip')
      await go(b.page, 'Trip')
      await rename(a.page, 'Mine')
      await saved(a.page)
      await rename(b.page, 'Yours')
      await saved(b.page)
      const fresh = await visit(browser, site, { context: a.context })
      await openMore(fresh.page)
      const names = await fresh.page.locator('.trips .name').allTextContents()
      expect(names).toEqual(['Yours', 'Mine (other tab)'])
      expect([...a.uncaught, ...b.uncaught]).toEqual([])
      await a.context.close()
    },
  )

  journey(
    `three, each on a trip of its own, ${EDITS} items each: none is lost`,
    async ({ browser, site }) => {
      const first = await visit(browser, site)
      await first.page.getByRole('button', { name: 'Plan a trip' }).click()
      const tabs = [first]
      for (const _ of ['b', 'c']) {
        await saved(tabs.at(-1)!.page)
        const tab = await visit(browser, site, { context: first.context })
        await openMore(tab.page)
        await tab.page.getByRole('button', { name: 'New trip' }).click()
        tabs.push(tab)
      }
      for (const { page } of tabs) {
        await go(page, 'Gear')
        await saved(page)
      }
      const wanted = tabs.map((_, i) => numbered('abc'[i]!, EDITS))
      await Promise.all(tabs.map(({ page }, i) => page.evaluate(addItems, { names: wanted[i]!, restMs: 10 })))
      for (const { page } of tabs) await saved(page)
      const names = await storedItems(first.page)
      expect(names.filter(Boolean).sort()).toEqual(wanted.flat().sort())
      expect(tabs.flatMap(({ uncaught }) => uncaught)).toEqual([])
      await first.context.close()
    },
    60_000 + 300 * EDITS,
  )

  journey(
    'four on the same trip at once: it stays one trip, with every item of each',
    async ({ browser, site }) => {
      const first = await visit(browser, site)
      await first.page.getByRole('button', { name: 'Plan a trip' }).click()
      await go(first.page, 'Gear')
      await saved(first.page)
      const tabs = [first]
      for (const _ of ['b', 'c', 'd']) tabs.push(await visit(browser, site, { context: first.context }))
      const wanted = tabs.map((_, i) => numbered('abcd'[i]!, 8))
      await Promise.all(
        tabs.map(({ page }, i) => page.evaluate(addItems, { names: wanted[i]!, restMs: 300 })),
      )
      for (const { page } of tabs) await saved(page)
      expect((await storedItems(first.page)).sort()).toEqual(wanted.flat().sort())
      expect(await storedRecords(first.page, 'trip/')).toHaveLength(1)
      await first.context.close()
    },
  )
})

describe('a tab that goes away right after an edit', () => {
  journey(`loses nothing, ${ROUNDS} times`, async ({ browser, site }) => {
    const { context, page } = await visit(browser, site)
    await lookAtDemo(page)
    await rename(page, 'start')
    await saved(page)
    let open = page
    for (let round = 1; round <= ROUNDS; round++) {
      await rename(open, `round ${round}`)
      if (round % 2) await open.close({ runBeforeUnload: true })
      else await open.goto('about:blank')
      const next = await visit(browser, site, { context })
      await expect.poll(() => title(next.page)).toBe(`round ${round}`)
      if (!open.isClosed()) await open.close()
      open = next.page
    }
    await context.close()
  })
})

describe('storage that is cleared under two tabs', () => {
  journey('is filled again by either', async ({ browser, site }) => {
    const a = await visit(browser, site)
    await lookAtDemo(a.page)
    await saved(a.page)
    const b = await visit(browser, site, { context: a.context })
    const session = await a.context.newCDPSession(a.page)
    await session.send('Storage.clearDataForOrigin', {
      origin: new URL(site.url).origin,
      storageTypes: 'indexeddb',
    })
    await Promise.race([notice(a.page, 'has emptied'), notice(b.page, 'has emptied')])
    await rename(b.page, 'Filled again')
    await saved(b.page)
    await a.page.reload()
    await untilDrawn(a.page)
    await expect.poll(() => title(a.page)).toBe('Filled again')
    await a.context.close()
  })
})
