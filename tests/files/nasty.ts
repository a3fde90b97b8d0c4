// What is put into real files to break them: pieces of text, values, and ways to change a text or an object with them.

import fc from 'fast-check'

/** Pieces that have broken readers of text: control and steering characters, markup, numbers past all numbers. */
export const NASTY_TEXT = [
  ...['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'],
  ...[
    '\0',
    '\u001b[2J',
    '\ufeff',
    '\u202e',
    '\u2066',
    '\u200b',
    '\u2028',
    '\ud800',
    '\udfff',
    '\ufffe',
    'é',
    'ي',
  ],
  ...[
    '<script>polluted=1</script>',
    '<img src=x onerror=alert(1)>',
    ']]>',
    '<!--',
    '<![CDATA[',
    '<?x?>',
    '&lt;',
    '&#0;',
  ],
  ...[
    '1e309',
    '-1e309',
    '-0',
    '1e-400',
    'NaN',
    'Infinity',
    '0x10',
    '1,5',
    '9'.repeat(40),
    '-',
    '1e5',
    '0.1',
    '90',
    '180',
  ],
  ...[
    '"',
    '\\',
    '\\u0000',
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    'null',
    'true',
    '""',
    '{}',
    '[]',
    '\n',
    '\t',
    ' ',
    "'",
    '/',
  ],
  ...[
    'x'.repeat(201),
    '<a '.repeat(40),
    '('.repeat(40),
    '%00',
    '../../x',
    '=1+1',
    '👩‍👩‍👧‍👦',
    '½',
    '١٢',
    '²',
  ],
]

export const nastyText = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...NASTY_TEXT) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 8 }) },
)

/** The text with pieces cut out, put in, doubled or moved, a few times over. */
export function mutated(texts: readonly string[]): fc.Arbitrary<string> {
  const change = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    from: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.oneof(fc.constant(0), fc.nat(6), fc.nat(60)),
    put: fc.oneof(nastyText, fc.constant('')),
    how: fc.constantFrom('put', 'put', 'cut', 'copy', 'end'),
  })
  return fc
    .tuple(fc.constantFrom(...texts), fc.array(change, { minLength: 1, maxLength: 4 }))
    .map(([text, changes]) =>
      changes.reduce((now, { at, from, length, put, how }) => {
        const i = Math.floor(at * now.length)
        if (how === 'end') return now.slice(0, i)
        const source = Math.floor(from * now.length)
        const piece = how === 'copy' ? now.slice(source, source + length) : put
        return now.slice(0, i) + piece + now.slice(how === 'put' ? i : i + length)
      }, text),
    )
}

const nastyValue = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    false,
    '',
    [],
    {},
    0,
    -0,
    1,
    0.5,
    -1,
    1e308,
    5e-324,
    Number.MAX_SAFE_INTEGER,
  ),
  fc.constantFrom<unknown>(
    Number.NaN,
    Number.POSITIVE_INFINITY,
    2 ** 31,
    1e-9,
    '1',
    '__proto__',
    [[]],
    [null],
    'energy',
  ),
  fc.constantFrom<unknown>(
    'daily',
    'nightly',
    'spread',
    'worn',
    'none',
    'from-heat',
    'kind',
    'frameless',
    500,
    20,
    60,
    10,
  ),
  fc.double(),
  fc.nat(1000),
  nastyText,
)

type Branch = Record<string, unknown>

const isBranch = (value: unknown): value is Branch => typeof value === 'object' && value !== null

/** Every place of an object, deepest last. */
function placesIn(value: unknown): { parent: Branch; key: string }[] {
  if (!isBranch(value)) return []
  return Object.keys(value).flatMap(key => [{ parent: value, key }, ...placesIn(value[key])])
}

/** The object with some of its values replaced, removed or doubled, and fields added that it should not have. */
export function mutatedObject(objects: readonly object[]): fc.Arbitrary<unknown> {
  const change = fc.record({
    at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
    value: nastyValue,
    how: fc.constantFrom('set', 'set', 'set', 'remove', 'double', 'add'),
    field: fc.oneof(nastyText, fc.constantFrom('inside', 'holdsLitres', 'fuel', 'litresRange', 'leg', 'id')),
  })
  return fc
    .tuple(fc.constantFrom(...objects), fc.array(change, { minLength: 1, maxLength: 5 }))
    .map(([object, changes]) => {
      const copy: unknown = structuredClone(object)
      for (const { at, value, how, field } of changes) {
        const places = placesIn(copy)
        const place = places[Math.floor(at * places.length)]
        if (!place) continue
        const { parent, key } = place
        if (how === 'remove') delete parent[key]
        else if (how === 'double' && Array.isArray(parent)) parent.push(structuredClone(parent[Number(key)]))
        // Defined, not set: "__proto__" becomes a field as it does where JSON is read.
        else
          Object.defineProperty(parent, how === 'add' && !Array.isArray(parent) ? field : key, {
            ...{ value: structuredClone(value), enumerable: true, configurable: true, writable: true },
          })
      }
      return copy
    })
}
