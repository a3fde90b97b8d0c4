// Hostile, broken and unusual tables, a file each in tests/hostile/csv and some too large to keep: each is refused in
// plain words, or read with nothing lost and nothing let through.

import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { decodeTable, guessLayout, readGrid, readRows, TABLE_CAPS } from '../../../src/files/csv'

const folder = new URL('../../hostile/csv/', import.meta.url)

const open = (bytes: Uint8Array) => openText(decodeTable(bytes).text)

function openText(text: string) {
  const grid = readGrid(text)
  if (!grid.ok) return { refused: grid.message, names: [], problems: [] }
  const { items, problems } = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
  return { refused: null, names: items.map(({ item }) => item.name), problems }
}

const SCOLDS = /\b(?:please|sorry|valid|invalid|oops|forbidden|required)\b/i

const refused: Record<string, RegExp> = {
  'blank.csv': /nothing in it: choose a table/,
  'document.csv': /another sort of file.*save it as CSV/,
  'empty.csv': /nothing in it/,
  'gzip.csv': /another sort of file/,
  'json.csv': /JSON, not a table/,
  'marks-only.csv': /nothing in it/,
  'null-bytes.csv': /no plain text, or text in UTF-16 without its mark. Choose the encoding/,
  'old-office.csv': /another sort of file/,
  'packed.csv': /another sort of file/,
  'picture.csv': /no plain text/,
  'utf16-without-mark.csv': /UTF-16 without its mark. Choose the encoding/,
  'web-page.csv': /web page or XML/,
}

/** The names of the items that come in, and the rows that are told apart. */
const taken: Record<string, { names: string[]; apart: number[] }> = {
  'broken-utf8.csv': { names: ['Tent ÿþÃ', expect.stringMatching(/^ð/)], apart: [] },
  'containers-in-circles.csv': { names: ['Pan'], apart: [2, 3, 4, 6] },
  'digits-of-other-scripts.csv': { names: ['Tent', 'Bag', 'Mug'], apart: [] },
  'formulas.csv': {
    names: [
      ...[
        "=cmd|'/c calc'!A0",
        '+1+1',
        '-2+3',
        '@SUM(1)',
        '=1',
        '=1',
        '=HYPERLINK("http://x","y")',
        '=1+1',
        '＝1',
      ],
    ],
    apart: [11],
  },
  'huge-numbers.csv': { names: ['I'], apart: [2, 3, 4, 5, 6, 7, 8, 9] },
  'line-separators.csv': { names: ['Tent red', 'Bag'], apart: [4] },
  'lone-quotes.csv': { names: [], apart: [2, 3] },
  'markup-names.csv': {
    names: ['<img src=x onerror=alert(1)>', '<script>alert(1)</script>', 'javascript:alert(1)'],
    apart: [],
  },
  'mixed-line-ends.csv': { names: ['Tent', 'Bag', 'Mug', 'Pot lid'], apart: [] },
  'overlong-utf8.csv': { names: [expect.stringMatching(/^TentÀ/)], apart: [] },
  'prototype-headers.csv': { names: ['__proto__', 'constructor'], apart: [] },
  'ragged.csv': { names: ['Bag', 'Mug', 'Pan'], apart: [5] },
  'same-name-containers.csv': { names: ['Box', 'Box', 'Pan'], apart: [4] },
  'spreadsheet-errors.csv': { names: ['F'], apart: [2, 3, 4, 5, 6] },
  'steering-names.csv': { names: ['Tent txt.exe', 'Bag', 'Mug[31m'], apart: [5] },
  'unclosed-quote.csv': { names: ['Tent'], apart: [3] },
  'utf16-lone-surrogate.csv': { names: ['\ufffdTent'], apart: [] },
  'utf16-odd-length.csv': { names: ['Tent', '\ufffd'], apart: [] },
}

describe('a file that is no table is refused in words', () => {
  test.each(Object.entries(refused))('%s', (name, words) => {
    const read = open(readFileSync(new URL(name, folder)))
    expect(read.refused).toMatch(words)
    expect(read.refused).not.toMatch(SCOLDS)
  })
})

describe('a file that is only unusual is read, row by row', () => {
  test.each(Object.entries(taken))('%s', (name, { names, apart }) => {
    const read = open(readFileSync(new URL(name, folder)))
    expect(read.refused).toBe(null)
    expect(read.names).toEqual(names)
    expect(read.problems.map(({ row }) => row)).toEqual(apart)
    for (const { why } of read.problems) expect(why).not.toMatch(SCOLDS)
    expect('polluted' in {}).toBe(false)
  })
})

test('every file of the corpus is tried', () => {
  const named = [...Object.keys(refused), ...Object.keys(taken)].sort()
  expect(readdirSync(folder).sort()).toEqual(named)
})

// Without the guard of tangled.ts the second of these keeps the reader busy for hours: its end is the test.
describe('tables made to keep the reader busy, or to fill the memory, come to an end', () => {
  const K = 64_000
  const MOST = TABLE_CAPS.bytes
  test.each([
    ['a hundred thousand quotes', '"'.repeat(1e5), /nothing in it/],
    [
      'quotes that close nothing before blanks',
      `"${'q"'.repeat(MOST / 4)}q${' '.repeat(MOST / 4)},1\n2,3`,
      /take the quotes out/,
    ],
    ['the same behind separators', `"${',"b'.repeat(K)}${' '.repeat(K)}\n2,3`, /take the quotes out/],
    ['ten thousand columns', `Item${',x'.repeat(9999)}\n`, /10,000 cells; up to 200 columns/],
    ['nothing but separators', ','.repeat(MOST), /nothing in it/],
    ['nothing but line ends', '\n'.repeat(MOST), /nothing in it/],
    ['a letter a line', 'a\n'.repeat(MOST / 2), /more than 20,000 rows/],
    ['one cell of four million letters', 'a'.repeat(MOST), null],
    ['a quote that is opened on every line', '"a\n'.repeat(MOST / 3), /take the quotes out/],
    ['an odd quote at the end of a long table', `${'"a","b"\n'.repeat(19_000)}"`, null],
    ['line ends of all sorts by turns', 'a,b\r\na,b\ra,b\n'.repeat(6000), null],
    ['blanks to the cap', `a${' '.repeat(MOST - 2)}b`, null],
    ['zeros to the cap', `Item,Weight (g)\nTent,${'0'.repeat(MOST - 30)}`, null],
  ])(
    '%s',
    (_, text, message) => {
      const read = openText(text)
      if (message === null) expect(read.refused).toBe(null)
      else expect(read.refused).toMatch(message)
      for (const { why, text: shown } of read.problems) {
        expect(why).not.toMatch(SCOLDS)
        expect(shown.length).toBeLessThanOrEqual(81)
      }
    },
    120_000,
  )

  test('a hundred thousand and one quotes around a name take no other row with them', () => {
    const { names, problems } = openText(`Item,Weight (g)\nTent,5\n${'"'.repeat(1e5 + 1)}Bag,6`)
    expect([names, problems.map(({ row }) => row)]).toEqual([['Tent'], [3]])
  })
})
