// Every version of every record that was ever written is read by this version. Records of the database: older.test.ts;
// here the note of saved files and the second copy, as their first versions wrote them.

import { set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { HISTORY, LIBRARY, readRecord, TRIP, UNSAVED } from '../../src/store/record-kinds'

import { readManifest } from '../../src/store/second-copy/manifest'
import { createStorageStatus } from '../../src/store/storage-status'
import { copiedTab, newCopied, raw, vaultOf } from './copied'
import records from './fixtures/before-journal.json'
import copy from './fixtures/copy-1.json'
import notes from './fixtures/files-1.json'
import { names } from './tab'

const KINDS = { trip: TRIP, library: LIBRARY, history: HISTORY, parting: UNSAVED }

describe('records of first versions', () => {
  test.each(Object.entries(records))('%s is read', (key, record) => {
    const kind = KINDS[key.split('/')[0] as keyof typeof KINDS]
    expect(record.version).toBe(1)
    expect(readRecord<unknown>(kind, record)).toMatchObject({ ok: true })
  })

  test('the second copy of version 1 gives back its trips to an empty database', async () => {
    const device = newCopied()
    for (const [name, text] of Object.entries(copy)) device.files.set(name, text)
    const manifest = await readManifest(vaultOf(device))
    expect(manifest).toMatchObject({ kind: 'read', rebuilt: false, at: 1_000_050 })
    expect(names(await copiedTab(device)).sort()).toEqual(['Sea', 'Valley'])
  })

  test('the note of saved files of version 1 is known', async () => {
    const device = newCopied()
    for (const [key, record] of Object.entries(records)) await set(key, record, raw(device))
    await set('files', notes, raw(device))
    const storageStatus = createStorageStatus(await copiedTab(device))
    expect(await storageStatus.lastFile('id2')).toEqual(notes.files.id2)
    expect(await storageStatus.lastFile('id3')).toBeNull()
  })
})
