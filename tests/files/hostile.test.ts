// Plans, links and lists that somebody made to do harm, or that came broken, one a line: taken, or answered in these
// words. Small files lie in tests/hostile; large ones are made here. Track files: corpus.test.ts.

import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { readList } from '../../src/files/list'
import { readLink } from '../../src/files/share'
import { type Parsed, parsePlanText, pathText } from '../../src/plan'
import { expectPlanOrProblems, expectReckons, expectWellSaid } from '../tools/doors'

const folder = (kind: string) => new URL(`../hostile/${kind}/`, import.meta.url)
const bytes = (kind: string, name: string) => readFileSync(new URL(`${name}.txt`, folder(kind)))
/** As the app reads a chosen file. */
const textOf = (kind: string, name: string) => new Blob([bytes(kind, name)]).text()
const namesIn = (kind: string) => readdirSync(folder(kind)).map(name => name.replace(/\.txt$/, ''))

const NOT_JSON = /^plan: is not JSON .*mend it or export it anew$/
const NO_FIELD = (place: string) => new RegExp(`^${place}: is not a field of a plan`)
const UTF8 = /is not UTF-8 text: save it as UTF-8/

/** Taken: the name of the second stop. Refused: the first of what is said. */
const plans: Record<string, string | RegExp> = {
  'proto-at-top': NO_FIELD('__proto__'),
  'proto-escaped': NO_FIELD('__proto__'),
  'proto-in-carrier': NO_FIELD('carrier.__proto__'),
  'proto-in-item': NO_FIELD('gear\\[0\\].__proto__'),
  'proto-in-leg': NO_FIELD('trip.stops\\[1\\].leg.__proto__'),
  'proto-in-setup': NO_FIELD('packs\\[0\\].setups\\[0\\].__proto__'),
  'proto-in-list': /packs\[0\]\.name: write text in quotes/,
  'constructor-prototype': NO_FIELD('constructor'),
  'prototype-in-settings': NO_FIELD('settings.prototype'),
  'to-string': NO_FIELD('carrier.toString'),
  'proto-as-ids': 'Camp',
  'duplicate-keys': 'Camp',
  'number-1e309': /^carrier\.massKg: write a number from 10 to 300 kg$/,
  'number-minus-1e309': /^gear\[0\]\.litres: write a number from 0 to 500 L$/,
  'number-minus-zero': 'Camp',
  'number-of-64-digits': /^gear\[0\]\.massKg: write a number from 0 to 200 kg$/,
  'number-tiny-fraction': /^trip\.stops\[1\]\.nights: write a whole number from 0 to 60 nights$/,
  'number-as-text': /10 to 300 kg/,
  'number-nan-as-text': /10 to 300 kg/,
  'nan-bare': NOT_JSON,
  hexadecimal: NOT_JSON,
  'leading-zero': NOT_JSON,
  'lone-surrogate': 'Camp',
  'nul-in-name': 'Camp',
  'nul-bare': UTF8,
  'control-bare': NOT_JSON,
  'bidi-override': 'gk 1 Camp',
  'bidi-isolates': 'Camp',
  'zero-width': 'Camp',
  'line-separator': 'Camp',
  'unseen-name': /^trip\.stops\[1\]\.name: is empty: give it a name$/,
  'unseen-field': /^\(a name that cannot be seen\): is not a field/,
  'steering-field': /^massKg\[2J: is not a field/,
  'markup-in-names': '<svg onload=polluted=1>',
  'markup-in-fields': NO_FIELD('<img src=x onerror=polluted=1>'),
  'name-of-201': /^trip\.stops\[1\]\.name: shorten it to 200 characters or fewer$/,
  'name-of-200-emoji': '🏔'.repeat(100),
  'combining-marks': `C${'\u0301'.repeat(190)}`,
  'field-of-5000': /^k{60}…: is not a field/,
  'right-to-left': 'מחנה 2',
  joiners: 'می‌خواهم 👩‍🚀',
  mark: 'Camp',
  'two-marks': 'Camp',
  utf16le: UTF8,
  utf16be: UTF8,
  latin1: 'H\ufffdtte',
  gzipped: UTF8,
  truncated: NOT_JSON,
  'truncated-by-one': NOT_JSON,
  trailing: NOT_JSON,
  'two-plans': NOT_JSON,
  empty: /is empty: export it anew/,
  space: /is empty: export it anew/,
  comments: NOT_JSON,
  'trailing-comma': NOT_JSON,
  'single-quotes': NOT_JSON,
  list: /^plan: is not a plan: write an object in braces$/,
  null: /write an object in braces/,
  text: /write an object in braces/,
  number: /write an object in braces/,
  'web-page': NOT_JSON,
  'inside-a-circle': /^gear\[1\]\.inside: a container cannot go into a container/,
  'inside-itself': /^gear\[1\]\.inside: an item cannot be inside itself/,
  'same-id-twice': /^gear\[2\]\.id: "food" is used twice/,
  'ids-same-once-cleaned': /^gear\[2\]\.id: "food" is used twice/,
  'version-99': /^version: 99 is newer/,
  'version-1e309': /^version: write 1$/,
  'version-as-text': /^version: write 1$/,
  'other-format': /^format: this is not a Pack Reckoner plan/,
  'format-is-list': /^format: this is not a Pack Reckoner plan/,
  'stops-are-object': /^trip\.stops: write a list of stops in square brackets$/,
  'one-stop': /^trip\.stops: give 2 or more stops$/,
  nulls: 'Camp',
  'null-in-list': /^gear\[3\]: write an object in braces$/,
}

const DAMAGED = /cut short or changed/
const OTHER = /holds something other than a plan/
const links: Record<string, string | RegExp> = {
  whole: 'Camp',
  'without-hash': 'Camp',
  mark: 'Camp',
  bidi: 'gk 1Z',
  'markup-in-names': '<svg onload=polluted=1>',
  bomb: /unpacks to more than 256 KiB/,
  'bomb-with-plan-first': /unpacks to more than 256 KiB/,
  'bomb-wrong-sum': /unpacks to more than 256 KiB/,
  'version-2': /newer Pack Reckoner/,
  'too-long': /8,007 characters long and at most 8,000/,
  proto: /cannot be used\. .*__proto__.*: no plan has such a part/,
  constructor: /cannot be used\. .*constructor.*: no plan has such a part/,
  'number-1e309': /mass: write a number from 10 to 300 kg/,
  deep: /deeper than 20 levels/,
  'deep-lists': /write an object in braces/,
  'many-items': /[Gg]ear: holds 80003 entries, and no plan needs more than 20000/,
  'many-fields': /holds 1507 fields, and no plan needs more than 100/,
  'unseen-name': /name: is empty/,
  null: /write an object in braces/,
  other: /carries no plan/,
  script: /carries no plan/,
  ...Object.fromEntries(
    ['empty-inside', 'no-json', 'not-utf8', 'overlong-utf8', 'utf16'].map(name => [name, OTHER]),
  ),
  ...Object.fromEntries(
    [
      ...['cut', 'gzip', 'look-alike', 'markup', 'not-packed', 'nothing', 'only-a-sum', 'padded', 'percent'],
      ...['plus-and-stroke', 'spaces', 'sum-of-the-packed', 'version-0', 'version-huge', 'version-minus'],
      ...['wrong-sum', 'zlib-header'],
    ].map(name => [name, DAMAGED]),
  ),
}

/** What becomes of each line: its name and kilograms, or words of the reason. */
const lists: Record<string, (string | RegExp)[]> = {
  formulas: [/no name/i, 'SUM(A1) 0.02', '+Tent 1', 'HYPERLINK("//evil.example") 0.005', '2 Peg 0.014'],
  markup: [
    '<img src=x onerror=polluted=1> 0.3',
    '<script>polluted=1</script> 0.02',
    '"><svg onload=polluted=1> 0.005',
  ],
  bidi: ['Tent 0.3', 'Bag 0.02', 'Rope 1'],
  'zero-width': ['Tent 0.3', 'Bag 0.02', /no name/i],
  nul: ['Tent 0.3', 'Bag 0.02', 'Pot[2J 0.005'],
  'lone-surrogate': ['Te\ufffd\ufffd\ufffdnt 0.3'],
  proto: ['__proto__ 0.3', 'constructor 0.02', 'prototype 0.005'],
  numbers: [
    ...[
      'A 1e309 g -',
      'B 0.005',
      'C NaN g -',
      'D Infinity kg -',
      /402 characters; the field reads up to 200/,
    ],
    ...['F 0.01', 'G 1e 0.4', 'H 0', 'I 0', /1\.2\.3\.4,5 g/, 'K 1 0.005', 'L 5 0.005'],
  ],
  digits: ['Tent ١٫٥ kg -', 'Bag ３００ g -', 'Pot ² kg -', 'Rope 0.5', 'Peg ९ g -'],
  'right-to-left': ['خيمة ١٥٠٠ غ -', 'אוהל 0.3'],
  mark: ['Tent 1.5'],
  'line-ends': ['Tent 1', 'Bag 2', 'Pot 0.003', 'Mug 0.06', 'Cup 0.005'],
  quotes: ['"Tent 0.3', 'Ba"g, " 0.02', /no name/i, 'Pot 5" 0.13'],
  separators: [],
  'same-columns': ['Tent 0.3'],
  'line-of-1001': [/1001 characters; up to 1000/, 'Tent 1'],
  'name-of-201': [/201 characters: shorten it to 200/],
  'mass-past-limits': [/"201 kg" is outside/, /"1001" is outside/, /"501 L" is outside/],
  repetition: [/899 characters/, /190 masses/, 'Tent 0.005', /955 characters/, 'a b 0.005', /902/, /944/],
  empty: [],
  spaces: [],
  json: [/622 characters: shorten it/],
}

const isClean = () => Object.keys(Object.prototype).length === 0 && !('polluted' in {})
const firstOf = ({ problems: [{ path, message }] }: Extract<Parsed, { ok: false }>) =>
  `${pathText(path)}: ${message}`

describe('a plan file', () => {
  test.each(Object.entries(plans))('%s', async (name, expected) => {
    const text = await textOf('plan', name)
    const parsed = parsePlanText(text)
    const said = parsed.ok ? parsed.document.trip.stops[1]?.name : firstOf(parsed)
    expect(said).toEqual(typeof expected === 'string' ? expected : expect.stringMatching(expected))
    expect(parsed.ok).toBe(typeof expected === 'string')
    expectPlanOrProblems(parsed, text)
    expect(isClean()).toBe(true)
  })

  const large: [string, () => string, RegExp][] = [
    ['5 MB of brackets', () => '['.repeat(4_900_000), NOT_JSON],
    [
      '2.4 million lists in each other',
      () => '['.repeat(2_400_000) + ']'.repeat(2_400_000),
      /object in braces/,
    ],
    [
      '700,000 objects in each other',
      () => '{"a":'.repeat(7e5) + '1'.padEnd(7e5 + 1, '}'),
      /deeper than 20 levels/,
    ],
    [
      '1.6 million items',
      () => withText('gear', `[${'{},'.repeat(1_600_000)}{}]`),
      /gear: holds 1600001 entries/,
    ],
    [
      '20,001 stops',
      () => withText('trip', `{"stops":[${'0,'.repeat(20_000)}0]}`),
      /trip\.stops: holds 20001/,
    ],
    ['400,000 fields', () => `{"k":0,${manyFields(400_000)}}`, /holds 400001 fields/],
    ['a name of 4.9 MB', () => withText('name', `"${'x'.repeat(4_900_000)}"`), /^name: shorten it to 200/],
    [
      'a field of 4.9 MB',
      () => `{"${'x'.repeat(4_900_000)}":1,${planText().slice(1)}`,
      /^x{60}…: is not a field/,
    ],
    ['5 MB and more', () => ' '.repeat(5_000_001), /larger than 5 MB: split the plan/],
  ]
  test.each(large)('of %s is refused for it', (_, make, words) => {
    const parsed = parsePlanText(make())
    if (parsed.ok) throw new Error('it was taken')
    expect(firstOf(parsed)).toMatch(words)
    expectPlanOrProblems(parsed, '')
  })

  test('of one field 450,000 times over is a plan in which the last one counts', () => {
    const parsed = parsePlanText(`{${'"gear":[],'.repeat(450_000)}${planText().slice(1)}`)
    expect(parsed.ok && parsed.document.gear).toHaveLength(demo.gear.length)
  })

  test('with many thousands of problems tells the first hundred and counts the rest', () => {
    const gear = Array.from({ length: 20_000 }, (_, i) => ({ id: `${i}`, a: 1 }))
    const parsed = parsePlanText(JSON.stringify({ ...demo, gear }))
    expect(parsed).toMatchObject({ ok: false, problems: { length: 101 } })
    expect(!parsed.ok && parsed.problems.at(-1)?.message).toBe(
      'has 59900 problems more: mend these 100 first',
    )
  })
})

const planText = () => JSON.stringify(demo)
const withText = (field: string, text: string) =>
  JSON.stringify({ ...demo, [field]: 'HERE' }).replace('"HERE"', () => text)
const manyFields = (count: number) => Array.from({ length: count }, (_, i) => `"k${i}":0`).join(',')

describe('a link', () => {
  test.each(Object.entries(links))('%s', async (name, expected) => {
    const read = await readLink(bytes('link', name).toString('utf8'))
    const said = read.ok ? read.document.trip.stops[1]?.name : read.message
    expect(said).toEqual(typeof expected === 'string' ? expected : expect.stringMatching(expected))
    expect(read.ok).toBe(typeof expected === 'string')
    if (read.ok) expectReckons(read.document)
    else expectWellSaid(read.message, '')
    expect(isClean()).toBe(true)
  })
})

describe('a pasted list', () => {
  test.each(Object.entries(lists))('%s', async (name, expected) => {
    const read = readList(bytes('list', name).toString('utf8'), { system: 'metric' })
    if (!read.ok) throw new Error(read.message)
    const said = read.rows.map(row => (row.ok ? `${row.name} ${row.massKg ?? '-'}` : row.why))
    expect(said).toEqual(
      expected.map(each => (typeof each === 'string' ? each : expect.stringMatching(each))),
    )
    expect(isClean()).toBe(true)
  })
})

test('every file of the corpus is tried', () => {
  for (const [kind, table] of Object.entries({ plan: plans, link: links, list: lists }))
    expect(namesIn(kind).sort()).toEqual(Object.keys(table).sort())
})
