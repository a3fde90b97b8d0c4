// Every text of a source file that people may read: what stands in strings, templates and JSX, read with the parser that
// also builds the app. Names of files, classes, keys and the like are no texts: they hold no space and no capital.
import { readFileSync } from 'node:fs'
import { parseSync } from 'vite'

interface Node {
  type: string
  start: number
  [part: string]: unknown
}

export interface Text {
  line: number
  text: string
}

/** Parts of the syntax whose strings nobody reads. */
const UNREAD = ['ImportDeclaration', 'ImportExpression', 'TSLiteralType']
const UNREAD_ATTRIBUTES = ['class', 'd', 'id', 'key']

/** The texts of a file in their order, each with its line. */
export function textsIn(file: string, source = readFileSync(file, 'utf8')): Text[] {
  const { program, errors } = parseSync(file, source)
  if (errors.length > 0) throw new Error(`${file} does not parse: ${errors[0]?.message}`)
  const found: Text[] = []
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) for (const each of node) walk(each)
    if (Array.isArray(node) || typeof node !== 'object' || node === null) return
    const at = node as Node
    if (UNREAD.includes(at.type) || isUnreadAttribute(at)) return
    const text = textOf(at)
    if (text !== null && isRead(text))
      found.push({
        line: source.slice(0, at.start).split('\n').length,
        text: text.replace(/\s+/g, ' ').trim(),
      })
    for (const part of Object.values(at)) walk(part)
  }
  walk(program)
  return found
}

const isUnreadAttribute = ({ type, name }: Node): boolean =>
  type === 'JSXAttribute' && UNREAD_ATTRIBUTES.includes(String((name as Node | undefined)?.name))

function textOf(node: Node): string | null {
  if (node.type === 'JSXText') return String(node.value)
  if (node.type === 'TemplateElement') return (node.value as { cooked: string | null }).cooked
  return node.type === 'Literal' && typeof node.value === 'string' ? node.value : null
}

/** A single small word is a key, not a text. */
const isRead = (text: string): boolean =>
  /[A-Za-z]{2}/.test(text) && /\s|^[A-Z][a-z]|^[a-z]+[:;.,?!…]/.test(text.trim())
