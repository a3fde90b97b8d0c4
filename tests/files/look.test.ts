import { describe, expect, test } from 'vitest'
import { backupText, lookAt } from '../../src/files/backup'
import { empty, readTrip } from './backups'

const backup = backupText(empty(), '2026-01-02')

describe('what a file is', () => {
  const look = (contents: BlobPart, name = 'some file') => lookAt(new File([contents], name), readTrip)
  const problem = async (contents: BlobPart, name?: string) => {
    const looked = await look(contents, name)
    return looked.kind === 'unread' ? looked.problems.join(' ') : looked.kind
  }

  test('is told by what is in it, not by its name', async () => {
    expect(await look(backup, 'holiday.txt')).toMatchObject({
      kind: 'backup',
      backup: { savedOn: '2026-01-02' },
    })
    expect((await look('\uFEFF<?xml version="1.0"?>\n<gpx version="1.1">', 'x.json')).kind).toBe('unread')
    expect((await look('<?xml version="1.0"?>\n<gpx version="1.1">', 'x')).kind).toBe('track')
    expect((await look(new Uint8Array([0xff, 0xfe, ...utf16('<gpx >')]), 'x')).kind).toBe('track')
    expect((await look('torn', 'track.gpx')).kind).toBe('track')
    expect((await look('name,weight\nTent,1200\n', 'x')).kind).toBe('table')
    expect((await look('anything', 'gear.csv')).kind).toBe('table')
    expect(await look('See https://packs.example/#plan=1.AbC-_ please')).toEqual({
      kind: 'link',
      fragment: '#plan=1.AbC-_',
    })
  })

  test('is said plainly where the app cannot open it', async () => {
    expect(await problem('')).toMatch(/is empty/)
    expect(await problem(new Uint8Array([0x50, 0x4b, 3, 4, 0]), 'a.zip')).toMatch(/zip archive: unpack it/)
    expect(await problem(new Uint8Array([0x1f, 0x8b, 8]))).toMatch(/gzip/)
    expect(await problem('%PDF-1.7')).toMatch(/is a PDF/)
    expect(await problem('<!doctype html><p>')).toMatch(/web page/)
    expect(await problem('hello')).toMatch(/does not know/)
    expect(await problem('hello', 'plan.json')).toMatch(/cut short/)
    expect(await problem('{"a":1}')).toMatch(/neither a plan nor a backup/)
    expect(await problem('{"format":"pack-reckoner/plan","version":1}')).toMatch(/Hiker: it cannot be read/)
    expect(await problem('{"format":"pack-reckoner/plan","version":3}')).toMatch(
      /newer than this program reads/,
    )
  })

  test('of 60 MB is refused by its size alone', async () => {
    const file = new File(['{', new Uint8Array(60_000_000)], 'huge.json')
    Object.assign(file, { text: () => Promise.reject(new Error('it was read')) })
    const looked = await lookAt(file, readTrip)
    expect(looked).toEqual({
      kind: 'unread',
      problems: ['The file is 60 MB large; a backup is read up to 30 MB, a plan up to 5.0 MB.'],
    })
  })

  test('of more entries than anything has is refused by them', async () => {
    expect(await problem(`[${'[],'.repeat(200_000)}0]`)).toMatch(/more entries than any plan or backup has/)
  })

  test('that cannot be read any more says so', async () => {
    const file = new File(['{}'], 'gone.json')
    Object.assign(file, { text: () => Promise.reject(new DOMException('', 'NotReadableError')) })
    expect(await lookAt(file, readTrip)).toMatchObject({
      problems: [expect.stringMatching(/NotReadableError/)],
    })
  })

  test('of a plan file has its words cleaned, as those of a link are', async () => {
    const stops = [{ name: '\u202eA\u200b' }, { name: 'B', leg: { km: 1 } }]
    const plan = { format: 'pack-reckoner/plan', version: 1, carrier: { massKg: 70 }, trip: { stops } }
    expect(await look(JSON.stringify(plan))).toMatchObject({
      kind: 'plan',
      document: { trip: { stops: [{ name: 'A' }, { name: 'B' }] } },
    })
    expect(await problem(JSON.stringify({ ...plan, '\u202eevil': 1 }))).toBe(
      '“evil”: no plan has such a part: remove it',
    )
  })
})

const utf16 = (text: string) => [...text].flatMap(char => [char.charCodeAt(0), 0])
