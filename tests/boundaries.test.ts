// The shape of the repository, over its real import graph and its real files.
// Each checker is first shown a house that breaks the rules, so that it cannot pass by seeing nothing.
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, relative, sep } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { breaches, engineBreaches, placesOutside } from './tools/house'
import { type Graph, importGraph, namesUsed } from './tools/imports'

const root = join(import.meta.dirname, '..')
const MOST_LINES = 300
const topLevel = [
  ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json'],
  ...['vite.config.ts', 'src', 'tests', 'public', 'data'],
]
const notOurs = ['node_modules', '.git', '.dist', '.cache']

describe('the import graph', () => {
  let graph: Graph
  beforeAll(() => {
    graph = importGraph(root, 'src')
  })

  test('is really seen: more than twenty files and their imports', () => {
    expect(graph.files.length).toBeGreaterThan(20)
    expect(graph.edges.length).toBeGreaterThan(graph.files.length)
    expect(graph.edges.some(edge => edge.typesOnly)).toBe(true)
  })

  test('keeps every folder to what it may import, through the index, without circles', () => {
    expect(breaches(graph)).toEqual([])
  })

  test('has an engine without clock, chance, network, screen or storage', () => {
    expect(graph.files.flatMap(file => engineBreaches(file, namesUsed(root, file)))).toEqual([])
  })
})

describe('a house that breaks the rules', () => {
  const bad = {
    'src/units/index.ts':
      "import type { Plan } from '../plan'\nexport const at = (p: Plan) => [p, Date.now()]",
    'src/plan/index.ts': "export type { Plan } from './types'\nexport { made } from './made'",
    'src/plan/types.ts': 'export interface Plan { window: number }',
    'src/plan/made.ts': "import { made as other } from './index'\nexport const made = other",
    'src/reckon/index.ts':
      "import type { Plan } from '../plan/types'\nimport { made } from '../plan'\nexport type P = Plan\nexport const m = [made, Math.random()]",
    'src/reckon/room.ts': '// window, document\nexport const room = { console: 1, text: "fetch" }',
    'src/reckon/node.ts': "import { readFileSync } from 'node:fs'\nexport const read = [readFileSync, fetch]",
    'src/components/index.ts': "export { m } from '../reckon'",
    'src/screens/trip/index.ts':
      "import { room } from '../../reckon/room'\nimport './gone'\nexport const r = room",
    'src/files/index.ts': "export { r } from '../screens/trip'",
    'src/extra/index.ts': "export { r } from '../files'",
  }
  let house: string
  beforeAll(() => {
    house = mkdtempSync(join(tmpdir(), 'house-'))
    for (const [file, text] of Object.entries(bad)) {
      mkdirSync(join(house, dirname(file)), { recursive: true })
      writeFileSync(join(house, file), text)
    }
    return () => rmSync(house, { recursive: true })
  })

  test('is caught at each of its wrong imports, and only there', () => {
    const found = breaches(importGraph(house, 'src')).map(line => line.split(/, since|;/)[0])
    expect(found.sort()).toEqual([
      'imports in a circle: src/plan/index.ts → src/plan/made.ts → src/plan/index.ts',
      'src/components/index.ts imports src/reckon/index.ts: components must not import more than types of reckon',
      'src/extra/index.ts imports src/files/index.ts: src/extra has no rule yet',
      'src/files/index.ts imports src/screens/trip/index.ts: files must not import screens',
      'src/reckon/index.ts imports src/plan/index.ts: reckon must not import more than types of plan',
      'src/reckon/node.ts imports node:fs: only the command line runs in Node',
      'src/screens/trip/index.ts imports ./gone: there is no such file',
      'src/screens/trip/index.ts imports src/reckon/room.ts: a folder is entered through its index',
      'src/screens/trip/index.ts imports src/reckon/room.ts: screens must not import more than types of reckon',
      'src/units/index.ts imports src/plan/index.ts: units must not import plan',
    ])
  })

  test('is caught naming the clock, chance and the network, but not in comments, texts or keys', () => {
    const found = Object.keys(bad).flatMap(file => engineBreaches(file, namesUsed(house, file)))
    expect(found.map(line => line.split(':')[0])).toEqual([
      'src/units/index.ts names Date',
      'src/reckon/index.ts names Math.random',
      'src/reckon/node.ts names fetch',
    ])
  })
})

describe('the files', () => {
  const files = filesOf(root)
  const texts = files.filter(file => !/\.(png|ico)$/.test(file))
  const read = (file: string) => readFileSync(join(root, file), 'utf8')

  test('lie in few places, so that a newcomer finds any of them', () => {
    const entries = readdirSync(root).filter(name => !name.startsWith('.') && name !== 'node_modules')
    expect(entries.filter(name => !topLevel.includes(name))).toEqual([])
    expect(files.length).toBeGreaterThan(50)
  })

  test(`are not longer than ${MOST_LINES} lines of source without saying why at their head`, () => {
    const source = texts.filter(file => /^(src|tests)\/.*\.(tsx?|m?js|css)$/.test(file))
    const long = source.filter(file => {
      const lines = read(file).trimEnd().split('\n')
      return lines.length > MOST_LINES && !lines.slice(0, 5).join(' ').includes('Long because')
    })
    expect(source.length).toBeGreaterThan(50)
    expect(long).toEqual([])
  })

  test('name no place outside the repository', () => {
    const found = texts.flatMap(file => placesOutside(file, read(file)))
    expect(found).toEqual([])
  })

  test('would be caught naming one, whatever the machine, but not a path of their own', () => {
    const path = (...parts: string[]) => parts.join('/')
    const named = [
      `read('${path('', 'home', 'ann', 'plan.json')}')`,
      `see ${path('', 'tmp', 'notes', 'plan.md')}`,
      `"${path('', 'Users', 'ann', 'plan.json')}"`,
      `file://${path('', 'srv', 'plan')}`,
      ['C:', 'plans', 'mine'].join('\\'),
    ]
    for (const text of named) expect(placesOutside('a.ts', text), text).toHaveLength(1)
    const own = [
      `import '../../src/plan'`,
      `'/index.html'`,
      `\`\${at}/data/plan\``,
      'https://host/data/plan',
      'km/h',
    ]
    for (const text of own) expect(placesOutside('a.ts', text), text).toEqual([])
  })

  test('lock the packages by content, not by the address they once came from', () => {
    const lock = JSON.parse(read('package-lock.json')) as {
      packages: Record<string, Record<string, unknown>>
    }
    const packages = Object.entries(lock.packages).filter(([path]) => path !== '')
    expect(packages.length).toBeGreaterThan(100)
    expect(packages.filter(([, entry]) => 'resolved' in entry).map(([path]) => path)).toEqual([])
    expect(packages.filter(([, entry]) => !('integrity' in entry)).map(([path]) => path)).toEqual([])
  })
})

function filesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap(entry => {
    const path = join(folder, entry.name)
    if (folder === root && notOurs.includes(entry.name)) return []
    return entry.isDirectory() ? filesOf(path) : [relative(root, path).split(sep).join('/')]
  })
}
