// One way back for all: over the screens, over a reload, with the keys; and the shelf in three tabs at once.
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { storedRecords } from './database'
import { title, visit } from './faults'
import { at1280, go, journey, lookAtDemo, openMore, rename, saved, untilDrawn } from './harness'

const redo = (page: Page) => page.getByRole('button', { name: /^Redo: / })

/** The names of the things of the shelf as stored. */
async function storedThings(page: Page): Promise<string[]> {
  const [[, shelf] = []] = await storedRecords(page, 'shelf')
  const { things = [] } = (shelf ?? {}) as { things?: { item: { name?: string } }[] }
  return things.map(({ item }) => item.name ?? '')
}

describe('undo', () => {
  journey('goes back over screens and trips, latest first, also after a reload', async ({ openDemo }) => {
    const page = await openDemo()
    await rename(page, 'Ridge')
    await openMore(page)
    await page.getByRole('button', { name: 'New trip' }).click()
    await rename(page, 'Lake')
    await openMore(page)
    await page.getByRole('button', { name: 'Delete trip Ridge' }).click()
    await page.getByText('Deleted trip “Ridge”').waitFor()
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    await saved(page)
    await page.reload()
    await untilDrawn(page)

    await page.getByRole('button', { name: 'Undo: Delete trip “Ridge”' }).click()
    await expect.poll(() => title(page)).toBe('Lake')
    await page.getByRole('button', { name: 'Undo: Trip, name' }).click()
    await page.getByRole('button', { name: 'Undo: Add trip' }).click()
    // What was open before is open again, and what is undone next belongs to it.
    await expect.poll(() => title(page)).toBe('Ridge')
    await page.getByRole('button', { name: 'Undo: Trip, name' }).click()
    await expect.poll(() => title(page)).toMatch(/^Salt Ridge/)
    await page.getByText('Undone: Trip, name').waitFor()
    await redo(page).click()
    await expect.poll(() => title(page)).toBe('Ridge')
  })

  journey('by keys, but not in a text field, where they are the browser’s', async ({ openDemo }) => {
    const page = await openDemo(at1280())
    await rename(page, 'Ridge')
    // The browser takes the text back; that is typing, and nothing is there to redo.
    await page.keyboard.press('Control+z')
    await expect.poll(() => title(page)).toMatch(/^Salt Ridge/)
    expect(await redo(page).count()).toBe(0)
    await rename(page, 'Ridge')
    await page.locator('.head-title').click()
    await page.keyboard.press('Control+z')
    await expect.poll(() => title(page)).toMatch(/^Salt Ridge/)
    await page.keyboard.press('Control+Shift+z')
    await expect.poll(() => title(page)).toBe('Ridge')
  })

  journey('a deleted trip can be brought back from the list of them after a reload', async ({ openDemo }) => {
    const page = await openDemo()
    await openMore(page)
    await page.getByRole('button', { name: /^Delete trip Salt Ridge/ }).click()
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    // With no trip left, the way back is on the first page too.
    await page.getByText(/^Deleted trip “Salt Ridge/).waitFor()
    await page.getByRole('button', { name: 'Plan a trip' }).click()
    await saved(page)
    await page.reload()
    await untilDrawn(page)
    await openMore(page)
    await page.getByText('1 deleted trip can be brought back').click()
    await page.getByRole('button', { name: /^Bring back trip Salt Ridge/ }).click()
    await page
      .locator('.trips')
      .getByRole('button', { name: /^Salt Ridge/ })
      .first()
      .click()
    await expect.poll(() => title(page)).toMatch(/^Salt Ridge/)
  })
})

describe('three tabs on one shelf', () => {
  journey('that add things at the same time lose none, and show all', async ({ browser, site }) => {
    const { context, page } = await visit(browser, site)
    await lookAtDemo(page)
    await saved(page)
    const tabs = [
      page,
      (await visit(browser, site, { context })).page,
      (await visit(browser, site, { context })).page,
    ]
    for (const tab of tabs) {
      await go(tab, 'Gear')
      await tab.getByRole('button', { name: /shelf/i }).first().click()
      await tab.getByRole('button', { name: 'Add an item' }).waitFor()
    }
    const wanted = tabs.flatMap((_, i) => [1, 2, 3].map(n => `Tab ${i} thing ${n}`))
    await Promise.all(
      tabs.map(async (tab, i) => {
        for (const n of [1, 2, 3]) {
          // What the others add moves the button about.
          await tab.getByRole('button', { name: 'Add an item' }).dispatchEvent('click')
          await tab.getByLabel('Name', { exact: true }).last().fill(`Tab ${i} thing ${n}`)
        }
      }),
    )
    await expect.poll(async () => (await storedThings(page)).sort()).toEqual(wanted)
    for (const tab of tabs) await expect.poll(() => tab.locator('.app-notices').textContent()).toBe('')
    await context.close()
  })
})
