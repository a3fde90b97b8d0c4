// What must hold of any bytes that come in as a table. Exported as a property, so that it can be run for as long as one
// likes; table-fuzz.test.ts runs some thousands.

import fc from 'fast-check'
import {
  addTable,
  decodeTable,
  type Encoding,
  gearCsv,
  guessLayout,
  looksSame,
  readGrid,
  readRows,
  type Separator,
  type Target,
} from '../../../src/files/csv'
import { type Draft, emptyDraft, parsePlan, toPlanDocument } from '../../../src/plan'

/** What cells and tables of gear are made of, and what breaks readers. */
const piece = fc.oneof(
  fc.constantFrom(
    ...[
      'Name',
      'Item',
      'Weight (g)',
      'oz',
      'Volume',
      'Qty',
      'Group',
      'Worn',
      'kcal/100 g',
      'Inside',
      'Holds things',
    ],
    ...[
      'Tent',
      '1.5 kg',
      '1,5',
      '1 lb 3 oz',
      '250 ml',
      '1.234,5',
      '8',
      'x',
      'yes',
      'daily',
      'worn',
      'Total',
      '-',
      '?',
    ],
    ...[',', ',', ';', '\t', '|', '\n', '\n', '\r\n', '\r', '"', '""', "'", ' ', '\u00a0', '='],
    ...[
      '__proto__',
      'constructor',
      'NaN',
      'Infinity',
      '1e309',
      '-1',
      '=1+1',
      '@x',
      '<b>',
      '#REF!',
      'row 2',
      'sep=;\n',
    ],
    ...['\0', '\u202e', '\u200b', '\ud800', '\ufeff', '\ufffd', '👩‍🚀'],
  ),
  fc.string({ maxLength: 6 }),
  fc.string({ unit: 'binary', maxLength: 4 }),
)
const scraps = fc.array(piece, { maxLength: 40 }).map(pieces => pieces.join(''))

/** Tables as they should be, with cells of anything. */
const tables = fc
  .tuple(
    fc.constantFrom(',', ';', '\t', '|'),
    fc.constantFrom('\n', '\r\n', '\r'),
    fc.array(fc.array(piece, { maxLength: 6 }), { maxLength: 8 }),
  )
  .map(([separator, end, rows]) => rows.map(row => row.join(separator)).join(end))

const bytes = fc.oneof(
  { weight: 4, arbitrary: fc.oneof(scraps, tables).map(text => new TextEncoder().encode(text)) },
  { weight: 1, arbitrary: fc.oneof(scraps, tables).map(utf16) },
  { weight: 1, arbitrary: fc.uint8Array({ maxLength: 60 }) },
)

/** Little end first, with its mark. */
function utf16(text: string): Uint8Array {
  const units = Uint16Array.from([
    0xfeff,
    ...Array.from({ length: text.length }, (_, i) => text.charCodeAt(i)),
  ])
  return new Uint8Array(units.buffer)
}

interface Settings {
  encoding: Encoding | undefined
  separator: Separator | undefined
  target: Target
  headings: boolean
}

const settings: fc.Arbitrary<Settings> = fc.record({
  encoding: fc.option(fc.constantFrom<Encoding[]>('utf-8', 'utf-16le', 'utf-16be', 'windows-1252'), {
    nil: undefined,
    freq: 2,
  }),
  separator: fc.option(fc.constantFrom<Separator[]>(',', ';', '\t', '|'), { nil: undefined, freq: 2 }),
  target: fc.constantFrom<Target[]>('trip', 'shelf'),
  headings: fc.boolean(),
})

const SCOLDS = /\b(?:please|sorry|valid|invalid|oops|forbidden|required)\b/i
const STEERS = /[\p{Cc}\p{Cs}\u061c\u200b\u200e\u200f\u2028-\u202e\u2060\u2066-\u2069\ufeff]/u

/** Any bytes are refused in plain words or become rows, each an item that a plan may hold or a problem that can be mended. */
export const property: fc.IPropertyWithHooks<[Uint8Array, Settings]> = fc.property(
  bytes,
  settings,
  (input, asked) => {
    const { text } = decodeTable(input, asked.encoding)
    const grid = readGrid(text, asked.separator)
    if (!grid.ok) return said(grid.message)
    const layout = { ...guessLayout(grid, { target: asked.target, system: 'metric' }) }
    const read = readRows(grid, { ...layout, headings: asked.headings })
    for (const { row, text, why } of read.problems) {
      said(why)
      if (row < 1 || row > grid.rows.length) throw new Error(`there is no row ${row}`)
      if (STEERS.test(text)) throw new Error(`a problem shows ${JSON.stringify(text)}`)
    }
    let n = 0
    const draft = addTable(emptyDraft(), { rows: read.items }, () => `i${n++}`)
    if (draft.gear.length !== read.items.length) throw new Error('rows were lost on the way into the gear')
    checkPlan(draft)
    if (STEERS.test(JSON.stringify(draft.gear))) throw new Error('a name steers the line that it stands in')
    if (
      looksSame(read.items, draft.gear).size <
      read.items.filter(({ item }) => /[\p{L}\p{N}]/u.test(item.name!)).length
    )
      throw new Error('a row does not look like itself')
    checkAgain(draft)
    if (({} as Record<string, unknown>).polluted !== undefined) throw new Error('a prototype was written to')
  },
)

function said(message: string): void {
  if (!/^[A-Z"“]/.test(message) || !message.endsWith('.') || SCOLDS.test(message) || message.length > 400)
    throw new Error(`not a plain sentence: ${message}`)
}

/** Every item stands in a plan as it is, but for the figures that only a person can give. */
function checkPlan({ gear }: Draft): void {
  const whole = gear.map(item => ({ massKg: 0, ...(item.litresRange ? {} : { litres: 0 }), ...item }))
  const stop = { name: 'A', water: 'sure' as const }
  const plan = toPlanDocument({
    ...emptyDraft(),
    carrier: { massKg: 70 },
    trip: {
      stops: [
        { ...stop, id: 'a' },
        { ...stop, id: 'b', leg: { km: 1 } },
      ],
    },
    gear: whole,
  })
  const { packs: _packs, ...rest } = plan
  const parsed = parsePlan(rest)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems.slice(0, 3)))
}

/** What was read is written and read again as the same number of items with the same names. */
function checkAgain({ gear }: Draft): void {
  if (gear.length === 0) return
  const grid = readGrid(gearCsv(gear, { system: 'metric' }))
  if (!grid.ok) throw new Error(`our own table is refused: ${grid.message}`)
  const read = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
  const names = read.items.map(({ item }) => item.name)
  if (JSON.stringify(names) !== JSON.stringify(gear.map(({ name }) => name)))
    throw new Error(`names changed: ${JSON.stringify([gear, names, read.problems])}`)
}
