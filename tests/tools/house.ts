// The rules of the house as data: which folder of src may import which, and what the engine must not name.
// The reason next to each rule is what a breach prints. Checked by tests/boundaries.test.ts.
import type { Edge, Graph } from './imports'

interface FolderRule {
  /** Folders whose index may be imported. */
  may: string[]
  /** Folders of which only the types may be imported. */
  typesOf?: string[]
  because: string
}

const folders: Record<string, FolderRule> = {
  units: { may: [], because: 'quantities stand on nothing' },
  equations: { may: ['units'], because: 'a published formula knows nothing of plans' },
  reckon: {
    may: ['units', 'equations'],
    typesOf: ['plan'],
    because: 'the engine is free of schema and storage',
  },
  plan: { may: ['units'], because: 'the document is below everything that reads it' },
  report: {
    may: ['plan', 'reckon', 'units', 'equations'],
    because: 'words are the same on screen, paper and terminal',
  },
  files: {
    may: ['plan', 'reckon', 'report', 'units', 'equations'],
    because: 'formats serve the app and the command line alike',
  },
  cli: {
    may: ['plan', 'reckon', 'report', 'files', 'units', 'equations'],
    because: 'the command line runs without a screen',
  },
  store: { may: ['plan', 'reckon', 'report', 'files', 'units'], because: 'what persists knows no interface' },
  components: {
    may: ['store', 'plan', 'report', 'units', 'components'],
    typesOf: ['reckon'],
    because: 'interface computes nothing: it reads what the store has reckoned',
  },
  screens: {
    may: ['components', 'store', 'files', 'plan', 'report', 'units'],
    typesOf: ['reckon'],
    because: 'interface computes nothing: it reads what the store has reckoned',
  },
}

const engine = ['units', 'equations', 'reckon']

const notInEngine = [
  { names: ['Date', 'performance'], because: 'the same plan gives the same Reckoning whenever it is asked' },
  {
    names: ['Math.random', 'crypto'],
    because: 'the same plan gives the same Reckoning however often it is asked',
  },
  { names: ['fetch', 'XMLHttpRequest', 'WebSocket'], because: 'the engine has no network' },
  { names: ['console'], because: 'the engine returns what it has to say' },
  { names: ['document', 'window', 'navigator', 'globalThis', 'process'], because: 'it runs anywhere' },
  { names: ['localStorage', 'sessionStorage', 'indexedDB', 'caches'], because: 'it keeps nothing' },
  { names: ['setTimeout', 'setInterval', 'queueMicrotask'], because: 'it answers at once' },
]

/** The engine may name the plan's types by their file: the folder's index brings the schema library along. */
const typesOfThePlan = 'src/plan/types.ts'

/** Every import that breaks a rule, as a sentence each. */
export function breaches(graph: Graph): string[] {
  return [...graph.edges.flatMap(edge => breachesOf(edge)), ...cyclesIn(graph)]
}

function breachesOf(edge: Edge): string[] {
  const { from, to, kind, typesOnly } = edge
  const folder = folderOf(from)
  const says = (what: string) => `${from} imports ${to}: ${what}`
  if (kind === 'lost') return [says('there is no such file')]
  if (kind === 'node') return folder === 'cli' ? [] : [says('only the command line runs in Node')]
  if (kind === 'package') return engine.includes(folder) ? [says('the engine needs no package')] : []
  if (isShippedTable(to)) return []
  if (!to.startsWith('src/')) return [says('the app is made of src and the tables in data')]

  const found: string[] = []
  const target = folderOf(to)
  const rule = folders[folder]
  if (folder === '') return isPastIndex(from, to) ? [says('a folder is entered through its index')] : []
  if (!rule) return [says(`src/${folder} has no rule yet; write one in tests/tools/house.ts`)]
  const allowed =
    target === folder || rule.may.includes(target) || (typesOnly && rule.typesOf?.includes(target))
  if (!allowed) {
    const types = rule.typesOf?.includes(target) ? ' more than types of' : ''
    found.push(says(`${folder} must not import${types} ${target || 'the shell'}, since ${rule.because}`))
  }
  const byFile = to === typesOfThePlan && typesOnly && engine.includes(folder)
  if (isPastIndex(from, to) && !byFile) found.push(says('a folder is entered through its index'))
  return found
}

/** The first folder below src; '' for the files of the shell itself. */
function folderOf(file: string): string {
  return file.split('/').slice(1, -1)[0] ?? ''
}

function isShippedTable(file: string): boolean {
  return /^data\/.+\.json$/.test(file)
}

/** The shell brings in style sheets by file, in the order of their layers; a folder may use what encloses it. */
function isPastIndex(from: string, to: string): boolean {
  const [here = '', there = ''] = [from, to].map(file => file.slice(0, file.lastIndexOf('/') + 1))
  if (folderOf(from) === '' && to.endsWith('.css')) return false
  return !here.startsWith(there) && !/\/index\.tsx?$/.test(to)
}

function cyclesIn({ files, edges }: Graph): string[] {
  const next = new Map(
    files.map(file => [file, edges.filter(edge => edge.from === file).map(edge => edge.to)]),
  )
  const done = new Set<string>()
  const found: string[] = []
  const walk = (file: string, path: string[]): void => {
    const at = path.indexOf(file)
    if (at >= 0) found.push(`imports in a circle: ${[...path.slice(at), file].join(' → ')}`)
    if (at >= 0 || done.has(file)) return
    for (const to of next.get(file) ?? []) walk(to, [...path, file])
    done.add(file)
  }
  for (const file of files) walk(file, [])
  return found
}

/** Names in an engine file that reach for the clock, chance, the network, a screen or storage, as a sentence each. */
export function engineBreaches(file: string, names: Set<string>): string[] {
  if (!engine.includes(folderOf(file))) return []
  return notInEngine.flatMap(rule =>
    rule.names.filter(name => names.has(name)).map(name => `${file} names ${name}: ${rule.because}`),
  )
}

// The folders at a machine's root that hold somebody's files, as the Filesystem Hierarchy Standard and its likes name
// them (from memory). What every system of a sort has in one place, as under etc and usr, is no such place.
const ROOTS = 'builds?|home|media|mnt|opt|private|root|srv|tmp|Users|var|Volumes|work|workspace'
const ABSOLUTE = new RegExp(
  String.raw`(?<![\w.~}\])*-])/(?:${ROOTS})/[\w.-]+|(?<![\w\\])[A-Za-z]:\\+[\w.-]+\\`,
  'g',
)

/** Every absolute path to somebody's files that a text names, as a sentence. */
export const placesOutside = (file: string, text: string): string[] =>
  [...text.matchAll(ABSOLUTE)].map(([place]) => `${file} names ${place}: the repository holds on any machine`)
