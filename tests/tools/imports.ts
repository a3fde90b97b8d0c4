// The import graph of a source folder as its files really state it, read with the parser that also builds the app.
// (Graph tools were tried: without the old TypeScript compiler they cannot read a .tsx file.)
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { posix } from 'node:path'
import { parseSync } from 'vite'

/** One import: who, what it reaches, and whether only types cross. Paths are relative to the root, with slashes. */
export interface Edge {
  from: string
  to: string
  kind: 'ours' | 'package' | 'node' | 'lost'
  typesOnly: boolean
}

export interface Graph {
  files: string[]
  edges: Edge[]
}

/** Reads every TypeScript file under `folder` of `root`; a file that does not parse is an error. */
export function importGraph(root: string, folder: string): Graph {
  const files = readdirSync(posix.join(root, folder), { recursive: true, encoding: 'utf8' })
    .map(name => posix.join(folder, name.replaceAll('\\', '/')))
    .filter(file => /\.tsx?$/.test(file))
    .sort()
  return { files, edges: files.flatMap(file => edgesOf(root, file)) }
}

function edgesOf(root: string, from: string): Edge[] {
  const typesOnly = new Map<string, boolean>()
  for (const node of nodesOf(root, from)) {
    const name = importedBy(node)
    if (name !== null) typesOnly.set(name, isTypesOnly(node) && (typesOnly.get(name) ?? true))
  }
  return [...typesOnly].map(([name, only]) => ({ from, ...reached(root, from, name), typesOnly: only }))
}

/** Import and export statements, import() and import types all hold a source; workers are named by a URL. */
function importedBy(node: Syntax): string | null {
  const named = node.source?.value
  if (named !== undefined) return named
  const isUrl = node.type === 'NewExpression' && (node.callee as Syntax).name === 'URL'
  const first = isUrl ? (node.arguments as Syntax[])[0]?.value : undefined
  return typeof first === 'string' && first.startsWith('.') ? first : null
}

function isTypesOnly({ type, importKind, exportKind, specifiers = [] }: Syntax): boolean {
  if (type === 'TSImportType' || importKind === 'type' || exportKind === 'type') return true
  return specifiers.length > 0 && specifiers.every(each => (each.importKind ?? each.exportKind) === 'type')
}

function reached(root: string, from: string, name: string): Pick<Edge, 'to' | 'kind'> {
  if (isBuiltin(name)) return { to: name, kind: 'node' }
  if (!name.startsWith('.')) return { to: name, kind: 'package' }
  const path = posix.join(posix.dirname(from), name.replace(/\?.*$/, ''))
  const to = ['', '.ts', '.tsx', '/index.ts', '/index.tsx'].map(end => path + end).find(isFile)
  return to ? { to, kind: 'ours' } : { to: name, kind: 'lost' }

  function isFile(candidate: string): boolean {
    const whole = posix.join(root, candidate)
    return existsSync(whole) && statSync(whole).isFile()
  }
}

/** The names a file uses as variables, and its `object.member` pairs; comments, texts and keys do not count. */
export function namesUsed(root: string, file: string): Set<string> {
  const names = new Set<string>()
  for (const node of nodesOf(root, file)) {
    const { type, name, object, property, computed } = node
    if (type === 'Identifier') names.add(String(name))
    if (type === 'MemberExpression' && !computed) names.add(`${object?.name}.${property?.name}`)
  }
  return names
}

interface Syntax {
  type: string
  name?: string
  value?: unknown
  computed?: boolean
  object?: Syntax
  property?: Syntax
  source?: { value: string } | null
  importKind?: string
  exportKind?: string
  specifiers?: Syntax[]
  [part: string]: unknown
}

/** Every node of a file's syntax tree, without the names of members and keys. */
function nodesOf(root: string, file: string): Syntax[] {
  const { program, errors } = parseSync(file, readFileSync(posix.join(root, file), 'utf8'))
  if (errors.length > 0) throw new Error(`${file} does not parse: ${errors[0]?.message}`)
  return below(program as unknown as Syntax)
}

function below(node: unknown): Syntax[] {
  if (Array.isArray(node)) return node.flatMap(below)
  if (typeof node !== 'object' || node === null) return []
  const { key, property, ...rest } = node as Syntax
  const names = (node as Syntax).computed ? [key, property] : []
  const parts = [...Object.values(rest), ...names].flatMap(below)
  return typeof rest.type === 'string' ? [node as Syntax, ...parts] : parts
}
