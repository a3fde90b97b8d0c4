// Every regular expression of a source file, read with the parser that also builds the app, and what in a pattern can
// take a long time: a repetition over something that itself repeats as often as it likes, such as (a+)+ or (?:a*b?)*.
// A reader of our own for the inside of patterns: no parser for them is among the packages that the app asks for.
import { readFileSync } from 'node:fs'
import { parseSync } from 'vite'

interface Pattern {
  line: number
  /** Null where the file makes it of something that is not written in it. */
  source: string | null
}

interface Node {
  type: string
  start: number
  [part: string]: unknown
}

/** The patterns of a file: those between strokes, and those that are made with RegExp of texts in the same file. */
export function patternsIn(file: string, text = readFileSync(file, 'utf8')): Pattern[] {
  const { program, errors } = parseSync(file, text)
  if (errors.length > 0) throw new Error(`${file} does not parse: ${errors[0]?.message}`)
  const nodes = below(program)
  const constants = new Map<string, Node>()
  for (const { type, id, init } of nodes)
    if (type === 'VariableDeclarator' && init) constants.set(String((id as Node).name), init as Node)
  const lineOf = ({ start }: Node) => text.slice(0, start).split('\n').length
  return nodes.flatMap(node => {
    const { regex } = node as { regex?: { pattern: string } }
    if (regex) return [{ line: lineOf(node), source: regex.pattern }]
    const isMade = ['NewExpression', 'CallExpression'].includes(node.type)
    if (!isMade || (node.callee as Node).name !== 'RegExp') return []
    const [first] = node.arguments as Node[]
    return [{ line: lineOf(node), source: first ? textOf(first, constants) : '' }]
  })
}

/** The text that an expression stands for, as far as the file itself says it. */
function textOf(node: Node, constants: Map<string, Node>): string | null {
  if (typeof node.value === 'string') return node.value
  if (node.type === 'Identifier') {
    const value = constants.get(String(node.name))
    return value ? textOf(value, constants) : null
  }
  if (node.type === 'ConditionalExpression') return textOf(node.consequent as Node, constants)
  const isRaw = node.type === 'TaggedTemplateExpression'
  const template = (isRaw ? node.quasi : node) as Node
  if (template.type !== 'TemplateLiteral') return null
  const parts = template.quasis as { value: { raw: string; cooked: string } }[]
  const between = (template.expressions as Node[]).map(each => textOf(each, constants))
  if (between.includes(null)) return null
  return parts.map(({ value }, i) => (isRaw ? value.raw : value.cooked) + (between[i] ?? '')).join('')
}

function below(node: unknown): Node[] {
  if (Array.isArray(node)) return node.flatMap(below)
  if (typeof node !== 'object' || node === null) return []
  const inside = Object.values(node).flatMap(below)
  return typeof (node as Node).type === 'string' ? [node as Node, ...inside] : inside
}

/** One thing of a pattern: a character, a class, an escape or a group, and how often it may come. */
interface Piece {
  from: number
  to: number
  least: number
  most: number
  inside: Piece[]
}

/** The repetitions over something that repeats as often as it likes, as they are written. */
export function nestedRepetitions(source: string): string[] {
  const { pieces, end } = read(source, 0)
  if (end < source.length) throw new SyntaxError(`"${source}": the bracket at ${end} closes nothing`)
  const found: string[] = []
  const look = ({ from, to, most, inside }: Piece) => {
    if (most > 1 && inside.some(varies)) found.push(source.slice(from, to))
    inside.forEach(look)
  }
  pieces.forEach(look)
  return found
}

const varies = ({ least, most, inside }: Piece): boolean => least !== most || inside.some(varies)

/** The pieces from `at` to the end of their group; alternatives count as one after the other. */
function read(source: string, at: number): { pieces: Piece[]; end: number } {
  const pieces: Piece[] = []
  let from = at
  while (from < source.length && source[from] !== ')') {
    const { end, inside } = readOne(source, from)
    const { to, least, most } = readCount(source, end)
    pieces.push({ from, to, least, most, inside })
    from = to
  }
  return { pieces, end: from }
}

function readOne(source: string, at: number): { end: number; inside: Piece[] } {
  const c = source[at]
  if (c === '(') {
    const head = /^\((?:\?(?:[:=!]|<[=!]|<[^>]+>))?/.exec(source.slice(at))![0]
    const { pieces, end } = read(source, at + head.length)
    if (source[end] !== ')') throw new SyntaxError(`"${source}": the bracket at ${at} is not closed`)
    return { end: end + 1, inside: pieces }
  }
  if (c === '[') return { end: endOfClass(source, at), inside: [] }
  if (c !== '\\') return { end: at + 1, inside: [] }
  const escaped = /^\\(?:[pPu]\{[^}]*\}|k<[^>]+>|u[\da-fA-F]{4}|x[\da-fA-F]{2}|[\s\S])/.exec(source.slice(at))
  return { end: at + (escaped?.[0].length ?? 1), inside: [] }
}

function endOfClass(source: string, at: number): number {
  for (let end = at + 1; end < source.length; end++) {
    if (source[end] === '\\') end++
    else if (source[end] === ']') return end + 1
  }
  throw new SyntaxError(`"${source}": the class at ${at} is not closed`)
}

/** How often the piece that ends at `at` may come. */
function readCount(source: string, at: number): { to: number; least: number; most: number } {
  const count = /^(?:([*+?])|\{(\d+)(,?)(\d*)\})\??/.exec(source.slice(at))
  if (!count) return { to: at, least: 1, most: 1 }
  const [all, mark, low, comma, high] = count
  const to = at + all.length
  if (mark === '?') return { to, least: 0, most: 1 }
  if (mark) return { to, least: mark === '+' ? 1 : 0, most: Number.POSITIVE_INFINITY }
  const most = high ? Number(high) : comma ? Number.POSITIVE_INFINITY : Number(low)
  return { to, least: Number(low), most }
}
