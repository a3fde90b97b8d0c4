// What the journeys about backups share: the file that is saved, and files that come in.
import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'

/** Saves a backup under More and returns its name and text. */
export async function savedBackup(page: Page): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save everything as a file' }).click(),
  ])
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') }
}

export const openFile = (page: Page, contents: string | Buffer, name = 'backup.json') =>
  page
    .getByLabel('Open a saved file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(contents) })

export const preview = (page: Page) => page.getByRole('heading', { name: /^(Backup|Snapshot) of / }).waitFor()

export const goOn = (page: Page) => page.getByRole('button', { name: 'Go on', exact: true }).click()

/** Drops a file onto the page, as from a folder on the desk. */
export const drop = (page: Page, name: string, text: string) =>
  page.evaluate(
    file => {
      const dataTransfer = new DataTransfer()
      dataTransfer.items.add(new File([file.text], file.name))
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }))
    },
    { name, text },
  )

/** Pastes a text with the focus in no field. */
export const paste = (page: Page, text: string) =>
  page.evaluate(pasted => {
    const clipboardData = new DataTransfer()
    clipboardData.setData('text/plain', pasted)
    document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true }))
  }, text)

/** From More: opens a backup that differs from what is here, with something new and something damaged in it. */
export async function openDiffering(page: Page): Promise<void> {
  const backup = JSON.parse((await savedBackup(page)).text)
  const [trip] = backup.trips
  backup.trips.push({ ...structuredClone(trip), id: 'new', draft: { ...trip.draft, name: 'Coast' } })
  backup.trips.push({ id: 'torn', draft: { name: 'Torn' } })
  backup.shelf.things.push({ id: 'tent', item: { name: 'Tent', massKg: 1.4 }, changed: {} })
  backup.settings.system = 'us'
  trip.draft.gear.pop()
  await openFile(page, JSON.stringify(backup))
  await preview(page)
}
