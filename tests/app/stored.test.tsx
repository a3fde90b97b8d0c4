// What is taken in is said to be here only when the browser has stored it.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { IDBDatabase as FakeDatabase, IDBFactory } from 'fake-indexeddb'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { Restore } from '../../src/screens/backup/Restore'
import { ImportTable } from '../../src/screens/csv'
import { PasteList } from '../../src/screens/gear/PasteList'
import { actions, flush, saveState, startStore } from '../../src/store'
import { opened } from '../files/backups'

/** What holds up the end of each writing, or makes it fail. */
const disk = { end: Promise.resolve(), isFull: false }

const factory = new IDBFactory()
const hereIsTheDatabase = () => vi.stubGlobal('indexedDB', factory)

beforeAll(async () => {
  hereIsTheDatabase()
  const original = FakeDatabase.prototype.transaction
  vi.spyOn(FakeDatabase.prototype, 'transaction').mockImplementation(function (
    this: InstanceType<typeof FakeDatabase>,
    ...args: Parameters<typeof original>
  ) {
    if (args[1] !== 'readwrite') return original.apply(this, args)
    if (disk.isFull) throw new DOMException('from the test', 'QuotaExceededError')
    const transaction = original.apply(this, args)
    const listen = transaction.addEventListener.bind(transaction)
    transaction.addEventListener = (type: string, heard: EventListener) =>
      listen(type, event => void disk.end.then(() => heard(event)))
    return transaction
  })
  await startStore(() => import('../../src/store/lazy'))
})
beforeEach(async () => {
  hereIsTheDatabase()
  disk.end = Promise.resolve()
  disk.isFull = false
  actions.createTrip(emptyDraft())
  await flush()
})
afterEach(cleanup)

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))
const there = (text: string | RegExp) => screen.findByText(text, {}, { timeout: 5000 })
const isThere = (text: string | RegExp) => screen.queryAllByText(text).length > 0

/** Holds up the end of writing until it is called. */
function holdUp() {
  let release = () => {}
  disk.end = new Promise(resolve => {
    release = resolve
  })
  return release
}

function pasteTwo() {
  render(<PasteList />)
  fireEvent.input(screen.getByLabelText(/One item a line/), { target: { value: 'Mug 90 g\nSpoon 10 g' } })
}

async function offerBackup() {
  const { draft, typed } = { draft: { ...emptyDraft(), name: 'Ridge' }, typed: {} }
  const trip = {
    format: 'pack-reckoner/trip',
    version: 1,
    id: 'ridge',
    demo: false,
    changedAt: 5,
    draft,
    typed,
  }
  const shelf = { format: 'pack-reckoner/shelf', version: 1, things: [], bases: [], packings: [], typed }
  const file = { format: 'pack-reckoner/backup', version: 1, savedOn: '2026-01-01', trips: [trip], shelf }
  const text = JSON.stringify({ ...file, settings: { system: 'metric', theme: 'auto' } })
  render(<Restore backup={opened(text)} from="a file" isSnapshot={false} onDone={() => {}} />)
  await screen.findByRole('button', { name: 'Merge it' })
}

test('a pasted list is being added until it is stored', async () => {
  pasteTwo()
  const release = holdUp()
  press('Add 2 items')
  await there('Adding 2 items to the gear…')
  expect(isThere(/2 items added/)).toBe(false)
  release()
  await there('2 items added to the gear.')
  actions.edit('Something else', draft => ({ ...draft, name: 'Other' }))
  expect(saveState.value.kind).toBe('saving')
  expect(isThere('2 items added to the gear.')).toBe(true)
})

test('a table, too', async () => {
  render(<ImportTable />)
  fireEvent.input(screen.getByLabelText(/paste/i), { target: { value: 'Name,Mass (g)\nMug,90\nSpoon,10\n' } })
  const release = holdUp()
  press('Add 2 items')
  await there('Adding 2 items to the gear…')
  release()
  await there('2 items added to the gear.')
})

test('a list that cannot be stored is said not to be saved', async () => {
  pasteTwo()
  disk.isFull = true
  press('Add 2 items')
  await there('2 items added to the gear, but not saved.')
})

test('a backup is being taken in until it is stored, and being put back until that is', async () => {
  await offerBackup()
  const release = holdUp()
  press('Merge it')
  await there('Taking in…')
  await screen.findByRole('heading', { name: 'Taking in…' })
  expect(isThere('Taken in') || isThere(/Now here/)).toBe(false)
  release()
  await there(/Now here: 1?\d trips/)
  expect(screen.getByRole('heading', { name: 'Taken in' })).toBeTruthy()
  const releaseAgain = holdUp()
  press('Put back as it was')
  await there('Putting back…')
  expect(isThere(/as it was: /)).toBe(false)
  releaseAgain()
  await there(/Everything is as it was: \d+ trip/)
})

test('a backup that cannot be stored is said not to be saved', async () => {
  await offerBackup()
  disk.isFull = true
  press('Merge it')
  await there(/Now here, but not saved: \d+ trip/)
  expect(screen.getByRole('heading', { name: 'Taken in, but not saved' })).toBeTruthy()
})

test('a long table is read in portions, and comes in whole', async () => {
  render(<ImportTable />)
  const value = `Name,Mass (g)\n${Array.from({ length: 1500 }, (_, i) => `Item ${i},90`).join('\n')}\n`
  fireEvent.input(screen.getByLabelText(/paste/i), { target: { value } })
  expect(isThere(/Reading 1,50\d rows…/)).toBe(true)
  fireEvent.click(await screen.findByRole('button', { name: 'Add 1,500 items' }, { timeout: 5000 }))
  await there('1,500 items added to the gear.')
})
