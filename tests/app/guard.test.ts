// The plain page that stands where the app cannot be drawn, and the file it saves.

import { IDBFactory } from 'fake-indexeddb'
import { setMany } from 'idb-keyval'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { saveStored } from '../../src/guard-save'
import { createDatabase } from '../../src/store/database'
import { emptyLibrary } from '../../src/store/documents'
import { opened } from '../files/backups'
import { wholeDraft } from '../plan/drafts'
import { diskOf } from '../store/disk'

const shown = () => document.body.textContent ?? ''
const appears = (text: string | RegExp) => expect(shown()).toMatch(text)

beforeEach(async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
  document.body.innerHTML = '<p id="opening">Opening…</p><div id="app"></div>'
  vi.resetModules()
  await import('../../src/guard')
})
afterEach(() => {
  // Whatever still listens is told that the app is there.
  dispatchEvent(new Event('app-drawn'))
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

describe('the plain page', () => {
  test('says what stopped the app, and what can be done', () => {
    dispatchEvent(Object.assign(new Event('error'), { error: new TypeError('matchMedia is not there') }))
    appears(/stopped while it was starting \(TypeError: matchMedia is not there\)/)
    appears(/What is stored on this device is left as it is/)
    const buttons = [...document.querySelectorAll('button')].map(({ textContent }) => textContent)
    expect(buttons).toEqual(['Try again', 'Save what is stored as a file'])
    expect(document.getElementById('opening')).toBeNull()
  })

  test('comes for a script that does not arrive, and for a promise that nobody heard of', async () => {
    const script = document.createElement('script')
    document.body.append(script)
    script.dispatchEvent(new Event('error'))
    appears('A part of the app could not be loaded.')
    dispatchEvent(new Event('app-drawn'))
    document.body.innerHTML = '<div id="app"></div>'
    vi.resetModules()
    await import('../../src/guard')
    dispatchEvent(Object.assign(new Event('unhandledrejection'), { reason: 'no more' }))
    appears(/\(no more\)/)
  })

  test('comes where nothing is drawn in 12 seconds', () => {
    vi.advanceTimersByTime(11_999)
    expect(shown()).toBe('Opening…')
    vi.advanceTimersByTime(1)
    appears('has not started in 12 seconds')
  })

  test('never comes once the app is drawn', () => {
    dispatchEvent(new Event('app-drawn'))
    dispatchEvent(Object.assign(new Event('error'), { error: new Error('later') }))
    vi.advanceTimersByTime(20_000)
    expect(shown()).toBe('Opening…')
  })
})

describe('what is stored, saved as a file', () => {
  const saved = async () => {
    let file = new Blob([])
    vi.spyOn(URL, 'createObjectURL').mockImplementation(blob => {
      file = blob as Blob
      return 'blob:there'
    })
    vi.useRealTimers()
    const said = await saveStored()
    return { said, text: await file.text() }
  }
  const tripOf = (id: string, name: string) => ({
    format: 'pack-reckoner/trip',
    version: 1,
    id,
    demo: false,
    changedAt: 5,
    revision: 3,
    draft: { ...wholeDraft(), name },
    typed: {},
  })

  test('is a backup that the app takes in, in the order of the list', async () => {
    const factory = new IDBFactory()
    vi.stubGlobal('indexedDB', factory)
    await setMany(
      [
        ['trip/a', tripOf('a', 'Ridge')],
        ['trip/b', tripOf('b', 'Lake')],
        ['library', { ...emptyLibrary(), order: ['b', 'a'], system: 'us' }],
        ['step/x', {}],
      ],
      createDatabase({ factory }),
    )
    const { said, text } = await saved()
    expect(said).toMatch(/^2 trips are in the file/)
    const backup = opened(text)
    expect(backup.trips.map(({ draft }) => draft.name)).toEqual(['Lake', 'Ridge'])
    expect([backup.settings?.system, backup.leftOut]).toEqual(['us', []])
  })

  test('comes from the second copy where the database cannot be read', async () => {
    vi.stubGlobal('indexedDB', {
      open: () => {
        throw new DOMException('', 'UnknownError')
      },
    })
    const { folders } = diskOf()
    const text = (name: string, revision: number) =>
      new Blob([JSON.stringify({ ...tripOf('a', name), revision })])
    const files = new Map([
      [`trip%2Fa.${'1'.repeat(64)}.json`, text('Older', 1)],
      [`trip%2Fa.${'2'.repeat(64)}.json`, text('Newest', 2)],
      ['manifest.json', new Blob(['{}'])],
    ])
    folders.set('pack-reckoner-copy', files)
    expect(opened((await saved()).text).trips.map(({ draft }) => draft.name)).toEqual(['Newest'])
  })

  test('where there is none, that is said, and no database is made', async () => {
    const factory = new IDBFactory()
    vi.stubGlobal('indexedDB', factory)
    diskOf().folders.set('pack-reckoner-copy', new Map())
    expect((await saved()).said).toBe('Nothing stored was found.')
    expect(await factory.databases()).toEqual([])
  })
})
