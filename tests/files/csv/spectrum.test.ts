// CSV as others define it: the examples of RFC 4180, the corpus csv-spectrum, and encodings.

import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import about from 'csv-spectrum/package.json'
import { describe, expect, test } from 'vitest'
import { decodeTable, readGrid } from '../../../src/files/csv'

const rowsOf = (text: string) => {
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  return grid.rows
}

// RFC 4180, section 2, rules 1 to 7 (from memory: the document was not at hand).
describe('the examples of RFC 4180', () => {
  const abc = ['aaa', 'bbb', 'ccc']
  const xyz = ['zzz', 'yyy', 'xxx']
  test.each([
    ['1: each record on a line of its own', 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n', [abc, xyz]],
    ['2: the last line may lack its line break', 'aaa,bbb,ccc\r\nzzz,yyy,xxx', [abc, xyz]],
    [
      '3: a header line has the same format',
      'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [['field_name', 'field_name', 'field_name'], abc, xyz],
    ],
    ['4: commas part the fields', 'aaa,bbb,ccc', [abc]],
    ['5: fields may be quoted', '"aaa","bbb","ccc"\r\nzzz,yyy,xxx', [abc, xyz]],
    [
      '6: quoted fields may hold line breaks',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [['aaa', 'b\r\nbb', 'ccc'], xyz],
    ],
    ['7: a quote inside is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%s', (_, text, rows) => expect(rowsOf(text)).toEqual(rows))
})

// csv-spectrum 2.0.0 (third-party corpus): every CSV against its JSON.
describe('the corpus csv-spectrum', () => {
  const folder = dirname(createRequire(import.meta.url).resolve('csv-spectrum/package.json'))
  const names = readdirSync(join(folder, 'csvs')).map(file => file.replace(/\.csv$/, ''))
  const bytesOf = (name: string) => readFileSync(join(folder, 'csvs', `${name}.csv`))
  const objectsOf = (name: string) => {
    const [header = [], ...rows] = rowsOf(decodeTable(bytesOf(name)).text)
    return rows.map(row => Object.fromEntries(header.map((key, i) => [key, row[i]])))
  }
  const jsonOf = (name: string) => JSON.parse(readFileSync(join(folder, 'json', `${name}.json`), 'utf8'))

  test('is the whole of version 2.0.0', () => expect([about.version, names.length]).toEqual(['2.0.0', 12]))

  // Its JSON has another telephone number than its CSV, and no list around the object: told apart below.
  test.each(names.filter(name => name !== 'location_coordinates'))('%s', name =>
    expect(objectsOf(name)).toEqual(jsonOf(name)),
  )

  test('location_coordinates, but for the telephone number, in which its two files differ', () => {
    const { 'Contact Phone Number': inCsv, ...others } = objectsOf('location_coordinates')[0]!
    const { 'Contact Phone Number': inJson, ...expected } = jsonOf('location_coordinates')
    expect(others).toEqual(expected)
    expect([inCsv, inJson]).toEqual(['2095257564', '1234567890'])
    expect(bytesOf('location_coordinates').toString()).toContain('2095257564')
  })
})

describe('encodings', () => {
  // The euro sign of Windows-1252 is tried in the browser's journey: some versions of Node take it for Latin-1.
  const TEXT = 'Name;Masse\nBüchse für 3 £;1,5 kg'
  const utf16 = (little: boolean, mark = true) => {
    const bytes = Buffer.from((mark ? '\uFEFF' : '') + TEXT, 'utf16le')
    return new Uint8Array(little ? bytes : bytes.swap16())
  }
  const windows = Uint8Array.from([...TEXT].map(c => c.charCodeAt(0)))

  test.each([
    ['UTF-8', 'utf-8', new TextEncoder().encode(TEXT)],
    ['UTF-8 with a mark', 'utf-8', new TextEncoder().encode(`\uFEFF${TEXT}`)],
    ['UTF-16, little end first', 'utf-16le', utf16(true)],
    ['UTF-16, big end first', 'utf-16be', utf16(false)],
    ['Windows-1252, since it is no UTF-8', 'windows-1252', windows],
  ])('%s', (_, encoding, bytes) => expect(decodeTable(bytes)).toEqual({ text: TEXT, encoding }))

  test('may be chosen against the guess', () => {
    expect(decodeTable(utf16(true, false), 'utf-16le').text).toBe(TEXT)
    expect(decodeTable(new TextEncoder().encode('é'), 'windows-1252').text).toBe('Ã©')
  })

  test('UTF-16 without its mark is refused with what to choose', () => {
    const grid = readGrid(decodeTable(utf16(true, false)).text)
    expect(grid).toMatchObject({ ok: false, message: expect.stringMatching(/UTF-16.*Choose the encoding/) })
  })
})
