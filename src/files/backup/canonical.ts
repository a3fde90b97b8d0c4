// Text that depends on the contents alone.

/** JSON with the keys of every object in order: the same contents give the same text. */
export const canonical = (value: unknown, space?: number): string =>
  JSON.stringify(value, (_, child) => sorted(child), space)

const sorted = (value: unknown): unknown =>
  isObject(value) && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null

/** What lies deeper is one piece: an item of a trip, a thing of the shelf. */
const DEEPEST = 5

/** What is written for a value in a field of this name; of an object or a list, for what is in it. */
type Prepare = (value: unknown, field: string) => unknown

/** The text of `canonical(prepare(value), 1)`, piece after piece, none of them long unless an entry is. */
export function* canonicalPieces(value: unknown, prepare: Prepare = as => as): Generator<string> {
  yield* piecesOf(value, { prepare, field: '', level: 0 })
}

interface Place {
  prepare: Prepare
  field: string
  level: number
}

function* piecesOf(value: unknown, { prepare, field, level }: Place): Generator<string> {
  const children = isObject(value) && level < DEEPEST ? childrenOf(value) : []
  const margin = `\n${' '.repeat(level)}`
  if (children.length === 0) {
    // No text in JSON has a line break of its own.
    yield canonical(prepare(value, field), 1).replaceAll('\n', margin)
    return
  }
  const [open, close] = Array.isArray(value) ? '[]' : '{}'
  let before = open
  for (const [name, child] of children) {
    yield `${before}${margin} ${name === null ? '' : `${JSON.stringify(name)}: `}`
    yield* piecesOf(child, { prepare, field: name ?? '', level: level + 1 })
    before = ','
  }
  yield `${margin}${close}`
}

/** What JSON keeps of it, with its names; those of a list have none. */
const childrenOf = (value: object): [string | null, unknown][] =>
  Array.isArray(value)
    ? value.map(child => [null, child ?? null])
    : Object.entries(sorted(value) as object).filter(([, child]) => child !== undefined)
