// The table of access (ACCESS.md) names evidence that exists, and leaves no criterion out.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'

const root = join(import.meta.dirname, '..')
const page = readFileSync(join(import.meta.dirname, 'ACCESS.md'), 'utf8')

/** WCAG 2.2: how many criteria of each guideline are of level A or AA, by number. */
const A_AND_AA =
  '1.1.1 1.2.1 1.2.2 1.2.3 1.2.4 1.2.5 1.3.1 1.3.2 1.3.3 1.3.4 1.3.5 1.4.1 1.4.2 1.4.3 1.4.4 1.4.5 1.4.10 1.4.11 1.4.12 1.4.13 2.1.1 2.1.2 2.1.4 2.2.1 2.2.2 2.3.1 2.4.1 2.4.2 2.4.3 2.4.4 2.4.5 2.4.6 2.4.7 2.4.11 2.5.1 2.5.2 2.5.3 2.5.4 2.5.7 2.5.8 3.1.1 3.1.2 3.2.1 3.2.2 3.2.3 3.2.4 3.2.6 3.3.1 3.3.2 3.3.3 3.3.4 3.3.7 3.3.8 4.1.2 4.1.3'.split(
    ' ',
  )
const OF_AAA = ['1.4.6', '2.4.12', '2.4.13', '2.5.5']

const rows = page.split('\n').flatMap(line => {
  const cells = line.split(' | ')
  const number = /^\| (\d\.\d\.\d+) /.exec(line)?.[1]
  return number ? [{ number, stands: cells[2] ?? '', evidence: cells[3] ?? '' }] : []
})

test('every criterion of A and AA has its row, and those of AAA that are asked for', () => {
  expect(A_AND_AA).toHaveLength(55)
  expect(rows.map(({ number }) => number).sort()).toEqual([...A_AND_AA, ...OF_AAA].sort())
  for (const { number, stands, evidence } of rows) {
    expect(stands, number).not.toBe('')
    expect(evidence.replace(/ \|$/, ''), number).not.toBe('')
  }
})

test('each file and each title of a test that is named exists', () => {
  const named = [...page.matchAll(/`((?:tests|src)\/[\w./-]+)`((?:,? ?"[^"]+")*)/g)]
  expect(named.length).toBeGreaterThan(30)
  for (const [, file = '', titles = ''] of named) {
    expect(existsSync(join(root, file)), file).toBe(true)
    const text = readFileSync(join(root, file), 'utf8')
    for (const [, title = ''] of titles.matchAll(/"([^"]+)"/g)) expect(text, file).toContain(title)
  }
})

test('each command that is named exists', () => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  const named = [...page.matchAll(/npm run ([\w:]+)/g)].map(([, name]) => name)
  expect(named.length).toBeGreaterThan(0)
  for (const name of named) expect(scripts).toHaveProperty(name!)
})
