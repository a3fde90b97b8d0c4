// No text, however it is made, keeps a regular expression of ours busy for longer than its length warrants by nesting.
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { nestedRepetitions, patternsIn } from './tools/patterns'

const src = join(import.meta.dirname, '..', 'src')
const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter(file => /\.tsx?$/.test(file))

describe('the regular expressions of the app', () => {
  const all = files.flatMap(file =>
    patternsIn(join(src, file)).map(({ line, source }) => ({ at: `src/${file}:${line}`, source })),
  )

  test('are all found, also the ones that are put together', () => {
    expect(all.length).toBeGreaterThan(80)
    expect(all.filter(({ source }) => source === null)).toEqual([])
    expect(all.some(({ source }) => source?.includes('kilograms?'))).toBe(true)
  })

  test('hold no repetition of something that itself repeats as often as it likes', () => {
    const found = all.flatMap(({ at, source }) =>
      nestedRepetitions(source ?? '').map(part => `${at} ${part}`),
    )
    expect(found).toEqual([])
  })
})

describe('the check', () => {
  test.each([
    ['(a+)+', ['(a+)+']],
    ['^(?:\\d+,?)*$', ['(?:\\d+,?)*']],
    ['x(?<name>[a-z]*|b){2,}?', ['(?<name>[a-z]*|b){2,}?']],
    ['((?:a{1,3}b)c)*d', ['((?:a{1,3}b)c)*']],
    ['(?:(?:a?b)+c)+', ['(?:(?:a?b)+c)+', '(?:a?b)+']],
    ['(?<!\\)x*)(?=(y+)*)', ['(y+)*']],
  ])('finds %s', (source, parts) => {
    expect(nestedRepetitions(source)).toEqual(parts)
  })

  test.each([
    'a+b*c?',
    '(?:ab{2})+',
    '[(+*]+',
    '\\(a+\\)+',
    '(a+)?(b*)',
    '(?:\\p{L}|\\u{1f600}|\\x41)*',
    '[)\\]]*',
    '(?:\\[\\*]){2}',
  ])('lets %s be', source => {
    expect(nestedRepetitions(source)).toEqual([])
  })

  test('does not pass over a pattern that it cannot read', () => {
    for (const source of ['(a', 'a)', '[a']) expect(() => nestedRepetitions(source)).toThrow(SyntaxError)
  })

  test('reads patterns between strokes, made ones with their parts, and says which it cannot read', () => {
    const text = [
      'const part = String.raw`\\d+`',
      `const made = new RegExp(\`(?:${'$'}{part})*\`, 'g')`,
      'const plain = /a(b+)+/u.test(x)',
      'const unread = new RegExp(given)',
    ]
    expect(patternsIn('made.ts', text.join('\n')).map(({ line, source }) => [line, source])).toEqual([
      [2, '(?:\\d+)*'],
      [3, 'a(b+)+'],
      [4, null],
    ])
  })
})
