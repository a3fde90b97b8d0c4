// The words on screens, on paper and in the terminal: one word for one thing, and none of those that were hard to read.
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { textsIn } from './tools/words'

/** Words that may not appear, each with what is said instead. */
const INSTEAD: [RegExp, string][] = [
  [/\bthings?\b/i, 'item'],
  [/\breckon(?!er\b)/i, 'calculate; reckon only in the name'],
  [/(?<!\p{L})I(?!\p{L})/u, 'nobody speaks here'],
  [/\bdoubts?\b/i, 'uncertainty'],
  [/\bBeware\b/, 'Safety notes'],
  [/\b(?:leaving|reaching)\b/, 'when you leave X'],
  [/\bat the heaviest\b(?! load)/, 'the heaviest load'],
  [/\bit fits in about\b|\bof 10 cases that\b/, 'about 1 chance in 10 that it fits'],
  [/\b(?:packs?|set-ups|those|any) (?:that|which) do(?:es)?\b/, 'suitable packs'],
  [/\b(?:would make it|packs?) do\b|\bdoes? for\b/, 'suitable; does and does not are answers'],
  [/\bbears?\b(?! and other animals)/, 'can carry'],
  [/\bbesides itself\b/, 'without its own mass'],
  [/\bdeform/, 'bulges the pack’s back panel'],
  [/\bMore space than support\b/, 'Full, it would be overloaded'],
  [/\bDrunk while\b/, 'Water per hour of walking'],
  [/\blast supper\b/, 'Dinner on the last day'],
  [/\bas far as you like\b/, 'Add daily food to see how many days this pack can carry'],
  [/\bMore pack than needed\b/, 'too big'],
  [/\bMost without a frame\b/, 'My limit without a frame'],
  [/\bfood does not settle\b|\brations never settle\b/, 'The food has too little energy for its mass'],
  [/\bL is likely\b|\bis likely\.$/, 'expected'],
  [/\bholds the formula\b|\bother draws\b|\bof seed\b/, 'simulates, run again'],
  [/\bRests on\b/, 'Based on'],
  [/\bWithdr[ae]w\b/, 'Remove'],
  [/\bForget this\b/, 'Remove this elevation profile'],
  [/\bWhere (?:it rides|they ride)\b|\bRides inside\b/, 'Where you carry it'],
  [/\bgives? way\?/, 'Soft or rigid?'],
  [/\bTake (?:its litres|over from|back)\b/, 'use, update from, use again'],
  [/\b(?:a|the|this|new) bases?\b(?! (?:good|weight))/i, 'kit'],
  [/\blie in this browser\b|\boutlives?\b/, 'stored in this browser'],
  [/\bPromise of\b/, 'Protected storage'],
  [/\bopens nothing\b/, 'cannot be opened'],
  [/\bparted by\b|\bStroke\b|\bto be mended\b/, 'separator, vertical bar, corrected'],
  [/\bNot needed\b/, 'Optional by your limit'],
  [/\b(?:your|the) containers (?:do not )?hold\b|\bwater without a container\b/i, 'bottles'],
  [/\bdoubtful sources?\b|\bnext source\b|\bevery source\b/, 'water source'],
  [/\bgive or take\b/i, 'plus or minus'],
]

/** What is typed by people or to machines, and not read on a screen. */
const UNREAD = ['files/list/headings.ts', 'reckon/remedies-purpose.ts']
const COMMANDS = /npm run --silent reckon/

const src = join(import.meta.dirname, '..', 'src')
const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .map(file => file.replaceAll('\\', '/'))
  .filter(file => /\.tsx?$/.test(file) && !UNREAD.includes(file))

const unwanted = (text: string) => INSTEAD.filter(([word]) => word.test(text)).map(([, instead]) => instead)

describe('the words that people read', () => {
  const all = files.flatMap(file =>
    textsIn(join(src, file)).map(({ line, text }) => ({ at: `${file}:${line}`, text })),
  )

  test('are found in screens and reports alike', () => {
    expect(all.length).toBeGreaterThan(2000)
    for (const text of ['Heaviest load', 'Safety notes', 'Where you carry it'])
      expect(all.some(each => each.text === text)).toBe(true)
  })

  test('are none of those that have a plainer one', () => {
    const found = all
      .filter(({ text }) => !COMMANDS.test(text))
      .flatMap(({ at, text }) => unwanted(text).map(instead => `${at} “${text}”: say ${instead}`))
    expect(found).toEqual([])
  })
})

describe('the list', () => {
  test.each([
    ['1 thing without litres', 'item'],
    ['Beware', 'Safety notes'],
    ['it fits in about 1 of 10 cases', 'about 1 chance in 10 that it fits'],
    ['14.1 kg leaving Larch Spring', 'when you leave X'],
    ['The fewest packs that do', 'suitable packs'],
    ['I packed this list', 'nobody speaks here'],
  ])('finds %s', (text, instead) => {
    expect(unwanted(text)).toContain(instead)
  })

  test.each(['Something is too wide', 'Pack Reckoner', 'doubtful water', 'Does not', 'Leaving Larch Spring'])(
    'lets %s be',
    text => {
      expect(unwanted(text)).toEqual([])
    },
  )
})
