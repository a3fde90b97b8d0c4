// The register of sources: complete, honest about what was read, and covering every key the equations name.

import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as equations from '../../src/equations'
import type { Source } from '../../src/report/why'

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const sources: Record<string, Source> = JSON.parse(read('data/sources.json'))

const standings = [
  'abstract read',
  'abstract read, formula by third-party copy',
  'official text read in part',
  'third-party copy',
  'from memory',
  'judgement of ours',
  'common practice, no source',
]

/** Every `source` in the exported data, at any depth. */
function sourceKeys(data: unknown): string[] {
  if (typeof data !== 'object' || data === null) return []
  return Object.entries(data).flatMap(([key, part]) =>
    key === 'source' && typeof part === 'string' ? [part] : sourceKeys(part),
  )
}

/** Keys in doc comments: from `Source:` to the first colon or full stop after it. */
function docKeys(text: string): string[] {
  return [...text.matchAll(/ \* Source: ([^.:]+)/g)].flatMap(
    ([, line]) => line!.match(/[a-z]+(?:-[a-z0-9]+)+/g) ?? [],
  )
}

describe('the register of sources', () => {
  it('says of each entry what it is, where it is and how much of it was read', () => {
    for (const [key, { title, where, standing, note }] of Object.entries(sources)) {
      expect([title, where, note].every(Boolean), key).toBe(true)
      expect(standings, key).toContain(standing)
    }
  })

  it('holds every source named by a range or a table', () => {
    const keys = new Set(sourceKeys(equations))
    expect(keys.size).toBeGreaterThan(5)
    expect([...keys].filter(key => !(key in sources))).toEqual([])
  })

  it('holds every source named in a doc comment, and every public function names one', () => {
    const files = readdirSync(new URL('../../src/equations', import.meta.url))
    const text = files.map(file => read(`src/equations/${file}`)).join('\n')
    const keys = docKeys(text)
    const functions = Object.values(equations).filter(exported => typeof exported === 'function')
    expect(keys.length).toBeGreaterThanOrEqual(functions.length)
    expect(keys.filter(key => !(key in sources))).toEqual([])
  })

  it('has ranges that run from a lesser to a greater finite number, with a unit', () => {
    let seen = 0
    const visit = (data: unknown) => {
      if (typeof data !== 'object' || data === null) return
      if ('min' in data && 'max' in data && 'unit' in data) {
        seen += 1
        expect(Number.isFinite(data.min) && Number.isFinite(data.max)).toBe(true)
        expect(data.min as number).toBeLessThan(data.max as number)
        expect(data.unit).not.toBe('')
      }
      Object.values(data).forEach(visit)
    }
    visit(equations)
    expect(seen).toBeGreaterThan(30)
  })
})
