// Tables in and out, on a small phone: a file from an older spreadsheet, rows that are pasted, what is there already, one
// undo, and the way out to a file and back; and the panels held to the rules of every screen.

import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { expectAccessible } from './axe'
import { go, journey } from './harness'
import { expectKeepsRules, tooWideAtSmallest } from './sizes'

const TABLE = `Gear list;;;;;;
Category;Item;Qty;Weight (g);Packed (L);Worn;Price
Shelter;"Tent, red";1;1.500;5,2;;420 €
Shelter;Tent peg;8;14,6;;;2 €
Sleep;Inflatable sleeping pad;1;heavy;;;120 €
Clothing;Rain jacket;1;300;;yes;150 €
Kitchen;=Spoon;1;1 lb 3 oz;250 ml;;3 €
;Total;;3300;;;
`

/** As older spreadsheets write: one byte a character, the euro sign among the control characters of Latin-1. */
const windows1252 = (text: string) =>
  Buffer.from([...text].map(char => (char === '€' ? 0x80 : char.charCodeAt(0))))

const file = (text: string) => ({ name: 'my gear.csv', mimeType: 'text/csv', buffer: windows1252(text) })

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' })
const picker = (page: Page) => page.locator('.table-import input[type=file]')

async function atTheDoor(page: Page) {
  await button(page, 'Plan a trip').click()
  await page.getByLabel('Days', { exact: true }).fill('3')
  await button(page, 'Make the stops').click()
  await go(page, 'Gear')
  await button(page, 'Import a table').click()
}

describe('a table', () => {
  journey('from an older spreadsheet comes in with one tap, and goes with one', async ({ open }) => {
    const page = await open()
    await atTheDoor(page)
    await picker(page).setInputFiles(file(TABLE))
    await page
      .getByText('Read as Windows-1252 (Western), separated by semicolons, columns named in row 2')
      .waitFor()
    await page.getByText('1 row left out, to be corrected in the table').waitFor()
    expect(await page.locator('.table-import .left-out li').textContent()).toMatch(
      /^Row 5, Weight \(g\), .?heavy.?: Cannot read "heavy"/,
    )
    await page.locator('summary', { hasText: 'Columns used' }).click()
    expect(await page.getByLabel(/^Price/).inputValue()).toBe('')
    expect(await page.locator('.column', { hasText: 'Price' }).textContent()).toContain('420 €')
    await button(page, 'Add 4 items').click()
    await page.getByText('4 items added to the gear.').waitFor()
    const facts = await page.locator('.row .facts-line').allTextContents()
    expect(facts.slice(0, 2)).toEqual(['1.50\u00a0kg, 5.2\u00a0L', '15\u00a0g each, no litres'])
    await page.locator('.table-import').getByRole('button', { name: 'Undo' }).click()
    await button(page, 'Add 4 items').waitFor()
    await page.getByText('List what you take').waitFor()
  })

  journey('that is saved as a file comes back as what is there already', async ({ open }) => {
    const page = await open()
    await atTheDoor(page)
    await page
      .getByLabel('Or paste rows from a spreadsheet')
      .fill('Item\tWeight (g)\tVolume (L)\n=Spoon\t18\t0.1\nBag\t850\t7\n')
    await button(page, 'Add 2 items').click()
    await button(page, 'Save as a table').click()
    const download = page.waitForEvent('download')
    await button(page, 'Save the gear').click()
    const saved = await readFile(await (await download).path())
    expect((await download).suggestedFilename()).toBe('gear.csv')
    expect(saved.toString()).toMatch(/^\uFEFFName,Group,.*\r\n"'=Spoon",,,18,0\.1,.*\r\nBag,,,850,7,/)
    await button(page, 'Import a table').click()
    await picker(page).setInputFiles({ name: 'gear.csv', mimeType: 'text/csv', buffer: saved })
    await page.getByText('2 rows like what is there').waitFor()
    expect(await button(page, 'Add 0 items').isDisabled()).toBe(true)
    await page.getByLabel('Add them too').check()
    await button(page, 'Add 2 items').waitFor()
    await page.getByLabel('The shelf', { exact: true }).check()
    await button(page, 'Add 2 items').click()
    await page.getByText('2 items added to the shelf.').waitFor()
  })

  journey('that is dropped anywhere is shown before anything of it is kept', async ({ open }) => {
    const page = await open()
    await page.evaluate(() => {
      const dataTransfer = new DataTransfer()
      dataTransfer.items.add(
        new File(['Item,Weight (g)\nBag,850\nMug,60\n'], 'gear.csv', { type: 'text/csv' }),
      )
      dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }))
    })
    await page.getByRole('heading', { name: 'A table', exact: true }).waitFor()
    await page.getByText('2 items to add to the shelf').waitFor()
    await expectAccessible(page)
    await button(page, 'Make a new trip for it').click()
    await button(page, 'Add 2 items').click()
    await button(page, 'Go on to the app').click()
    await go(page, 'Gear')
    await page.getByText(/^2 items\./).waitFor()
  })

  journey('that is none is refused in words, and nothing changes', async ({ open }) => {
    const page = await open()
    await atTheDoor(page)
    await picker(page).setInputFiles({ ...file(''), buffer: Buffer.from('PK\x03\x04\0\0') })
    await page.getByText('another sort of file').waitFor()
    await page.getByText('Nothing here has changed.').waitFor()
    await expectAccessible(page)
  })
})

describe('the panels of tables', () => {
  journey('keep the rules', async ({ open }) => {
    const page = await open()
    await atTheDoor(page)
    await button(page, 'Save as a table').click()
    await page.getByText('There is nothing to save yet').waitFor()
    expect(await tooWideAtSmallest(page)).toBeLessThanOrEqual(0)
    await button(page, 'Import a table').click()
    await picker(page).setInputFiles(file(TABLE))
    await button(page, 'Add 4 items').waitFor()
    for (const summary of await page.locator('.table-import summary').all()) await summary.click()
    await expectKeepsRules(page, { state: 'in' })
    await button(page, 'Add 4 items').click()
    await button(page, 'Save as a table').click()
    await button(page, 'Save the gear').waitFor()
    await expectKeepsRules(page, { state: 'out' })
  })
})

describe('a table of sixty packs', () => {
  journey('comes in with one tap, and is a page of rows that the counts filter', async ({ openDemo }) => {
    const page = await openDemo()
    await go(page, 'Packs')
    await button(page, 'Import a table').click()
    await picker(page).setInputFiles('data/invented-packs.csv')
    await page.getByText('60 new packs.').waitFor()
    await page.getByText('Left out, as it follows from the rest: Weight per litre.').waitFor()
    await expectKeepsRules(page, { state: 'packs to come in' })
    await button(page, 'Add 60 packs').click()
    await page.getByText('60 packs added to the packs.').waitFor()
    await picker(page).setInputFiles('data/invented-packs.csv')
    await page.getByText('0 new packs. 60 here already, the same.').waitFor()
    await button(page, 'Import a table').click()
    const height = () => page.evaluate(() => document.documentElement.scrollHeight)
    await expect.poll(height).toBeLessThanOrEqual(5000 + 3 * 65)
    await expectKeepsRules(page, { state: 'packs in rows' })
    await page.getByRole('button', { name: /with care$/ }).click()
    await page.getByText(/of 63 packs shown/).waitFor()
    const answers = await page
      .locator('.pack-row')
      .evaluateAll(rows => rows.map(row => (row as HTMLElement).dataset.answer))
    expect(new Set(answers)).toEqual(new Set(['with-care']))
    await page.locator('.row > .summary').first().click()
    await page.locator('.verdict').first().waitFor()
  })
})
