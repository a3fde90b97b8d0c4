// The style sheets: sizes of type, spaces and colours are tokens of one block, and every rule uses them.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'

const src = join(import.meta.dirname, '..', 'src')
const sheets = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter(file => file.endsWith('.css'))

/** Declarations outside of the tokens: each property with its value. */
const declarationsIn = (css: string) =>
  [...css.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/([\w-]+)\s*:\s*([^;{}]+);/g)].map(
    ([, property = '', value = '']) => ({ property, value: value.trim() }),
  )

const TYPE = /^(?:font|font-size)$/
const RAW_SIZE = /(?<![\w.-])\d*\.?\d+(?:rem|em|px|pt|%)/
const COLOUR = /#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch|lab)a?\(|\b(?:black|white|gray|grey|red|blue|green)\b/i
const SPACE = /^(?:(?:row|column)-)?gap$|^(?:padding|margin)(?:-[a-z]+)*$/

/** The classes that a sheet lays out wherever they stand: rules of its layer whose selector is one class alone. */
function classesOf(css: string): string[] {
  const plain = css.replace(/\/\*[\s\S]*?\*\//g, '')
  let depth = 0
  return plain.split(/(?<=[{}])/).flatMap(part => {
    const at = depth
    depth += part.endsWith('{') ? 1 : -1
    if (at !== 1 || !part.endsWith('{')) return []
    const selectors = part
      .slice(part.lastIndexOf(';') + 1, -1)
      .replace(/\([^)]*\)/g, '()')
      .split(',')
    return selectors.map(selector => selector.trim()).filter(selector => /^\.[\w-]+$/.test(selector))
  })
}

/** What breaks the rule, as a sentence each. */
function breaches(file: string, css: string): string[] {
  return declarationsIn(css).flatMap(({ property, value }) => {
    if (property.startsWith('--') && file === 'style.css') return []
    const says = (what: string) => [`${file}: ${property}: ${value} is ${what}`]
    // The least size that a drawing keeps is no size of its own.
    if (TYPE.test(property) && RAW_SIZE.test(value.replace(/max\(var\([\w-]+\), 12px\)/, '')))
      return says('no size of type of ours')
    if (COLOUR.test(value)) return says('no colour of ours')
    if (SPACE.test(property) && /\d(?:rem)\b/.test(value) && Math.abs(Number.parseFloat(value)) <= 2.5)
      return says('no space of ours')
    return []
  })
}

describe('every style sheet', () => {
  test('takes its sizes of type, its spaces and its colours from the tokens', () => {
    expect(sheets.length).toBeGreaterThan(15)
    expect(sheets.flatMap(file => breaches(file, readFileSync(join(src, file), 'utf8')))).toEqual([])
  })

  // All sheets are on every page in the end: a name that two of them use is laid out by the later one.
  test('lays out no class that another one does', () => {
    const sheetsOf = new Map<string, string[]>()
    for (const file of sheets)
      for (const name of new Set(classesOf(readFileSync(join(src, file), 'utf8'))))
        sheetsOf.set(name, [...(sheetsOf.get(name) ?? []), file])
    expect(sheetsOf.size).toBeGreaterThan(150)
    expect([...sheetsOf].filter(([, files]) => files.length > 1)).toEqual([])
  })

  test('finds six sizes of type and six spaces among them', () => {
    const tokens = declarationsIn(readFileSync(join(src, 'style.css'), 'utf8')).map(
      ({ property }) => property,
    )
    const count = (name: RegExp) => new Set(tokens.filter(token => name.test(token))).size
    expect(count(/^--type-\d$/)).toBe(6)
    expect(count(/^--space-\d$/)).toBe(6)
  })
})

describe('the check', () => {
  test.each([
    ['.a { font-size: 0.9rem; }', 'no size of type'],
    ['.a { font: 400 15px/1.2 serif; }', 'no size of type'],
    ['.a { color: #333; }', 'no colour'],
    ['.a { background: rgb(0 0 0 / 0.5); }', 'no colour'],
    ['.a { gap: 0.4rem; }', 'no space'],
  ])('refuses %s', (css, what) => {
    expect(breaches('a.css', css).join()).toContain(what)
  })

  test.each([
    '.a { font-size: var(--type-2); }',
    '.a { gap: var(--space-2) 0; }',
    '.a { color: var(--ink); }',
  ])('takes %s', css => {
    expect(breaches('a.css', css)).toEqual([])
  })
})

describe('text', () => {
  const sheet = readFileSync(join(src, 'style.css'), 'utf8')
  const BRIGHT_SUN = /:root\[data-sun\] \{[^}]*\}/
  const tokensIn = (css: string) =>
    new Map(declarationsIn(css).map(({ property, value }) => [property, value]))
  const OF_THE_SYSTEM = /@media \(forced-colors: active\) \{[\s\S]*?\n {2}\}/
  const values = tokensIn(sheet.replace(BRIGHT_SUN, '').replace(OF_THE_SYSTEM, ''))
  /** The two colours of a token, by day and in the dark. */
  const colours = (token: string) =>
    /light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/.exec(values.get(token) ?? '')!.slice(1)
  const whole = (hex: string) => (hex.length === 4 ? hex.replace(/[0-9a-f]/g, '$&$&') : hex)
  const luminance = (hex: string) => {
    const [r = 0, g = 0, b = 0] = [1, 3, 5].map(at => {
      const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
    })
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  const contrast = (a: string, b: string) => {
    const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
    return (high + 0.05) / (low + 0.05)
  }

  test.each(['--ink', '--pencil', '--accent'])(
    'in %s stands out 7 to 1 on every ground, by day and in the dark',
    ink => {
      for (const ground of ['--paper', '--sheet', '--wash'])
        colours(ink).forEach((colour, light) => {
          expect(contrast(colour, colours(ground)[light]!), `${ink} on ${ground}`).toBeGreaterThanOrEqual(7)
        })
    },
  )

  test.each(['--ink', '--pencil', '--line', '--accent'])('in %s stands out 12 to 1 in bright sun', ink => {
    const bright = tokensIn(BRIGHT_SUN.exec(sheet)![0])
    for (const ground of ['--paper', '--sheet'])
      expect(contrast(whole(bright.get(ink)!), whole(bright.get(ground)!)), ground).toBeGreaterThanOrEqual(12)
  })

  test('edges stand out 3 to 1', () => {
    for (const ground of ['--paper', '--sheet'])
      colours('--line').forEach((colour, light) => {
        expect(contrast(colour, colours(ground)[light]!), ground).toBeGreaterThanOrEqual(3)
      })
  })
})

test('moves nothing for who wants no motion', () => {
  for (const file of sheets) {
    const css = readFileSync(join(src, file), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '')
    // What takes no time is no motion.
    const moving = [...css.matchAll(/(?:transition|animation):[^;]*;/g)].filter(
      ([rule]) => !/ 0s /.test(rule),
    )
    for (const { index } of moving) {
      const before = css.slice(0, index)
      const wish = before.lastIndexOf('@media (prefers-reduced-motion: no-preference)')
      const within = before.slice(wish)
      const depth = within.split('{').length - within.split('}').length
      expect(wish >= 0 && depth > 0, file).toBe(true)
    }
  }
})
