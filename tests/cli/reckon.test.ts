// The command line: what it prints where, and how it ends. One run is a process of its own, as a shell starts it.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { run as runHere } from '../../src/cli/run'
import { parsePlan } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { differences } from '../engine/agree'
import workedPlan from '../engine/fixtures/worked-plan.json'

const root = join(import.meta.dirname, '..', '..')
const folder = mkdtempSync(join(tmpdir(), 'reckon-'))
afterAll(() => rmSync(folder, { recursive: true }))

function file(name: string, content: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
  return path
}

/** Runs it here, on the lines of a shell. */
function run(args: string[], input = '') {
  const printed = { 1: '', 2: '' }
  const status = runHere(args, {
    input: () => input,
    print: (descriptor, text) => {
      printed[descriptor] += text
    },
  })
  const [stdout, stderr] = [printed[1], printed[2]]
  const plain = stdout.replace(/[\u00a0\u202f]/g, ' ')
  return { status, stdout, plain, stderr, errors: stderr.split('\n').filter(Boolean) }
}

/** Runs it as a shell does. */
function spawned(args: string[], input: string) {
  const program = [
    join(root, 'node_modules', 'tsx', 'dist', 'cli.mjs'),
    join(root, 'src', 'cli', 'main.ts'),
    ...args,
  ]
  const { status, stdout, stderr } = spawnSync(process.execPath, program, {
    cwd: root,
    input,
    encoding: 'utf8',
  })
  return { status, stdout, stderr }
}

const worked = file('worked.json', workedPlan)
const other = file('other.json', { ...workedPlan, name: 'Other', packs: [] })
const broken = file('broken.json', {
  ...workedPlan,
  carrier: { massKg: -1, weight: 3 },
  gear: [{ id: 'a', massKg: 1, litres: 1, inside: 'b' }],
})

const expected = (plan: unknown) => {
  const parsed = parsePlan(plan)
  if (!parsed.ok) throw new Error('refused')
  const reckoned = reckon(parsed.plan)
  if (!reckoned.ok) throw new Error('refused')
  return JSON.parse(JSON.stringify(reckoned.reckoning))
}

describe('the command line', () => {
  it('does as a process what it does here, on both outputs and in how it ends', () => {
    const args = ['--json', '-', broken, other]
    const input = JSON.stringify(workedPlan)
    const { status, stdout, stderr } = run(args, input)
    expect(spawned(args, input)).toEqual({ status, stdout, stderr })
    expect([status, stdout.length > 10_000, stderr]).toEqual([
      2,
      true,
      expect.stringContaining('carrier.massKg: '),
    ])
  })

  it('prints the reckoning of one plan as JSON alone, from standard input too, and ends with 0', () => {
    const { status, stdout, stderr } = run(['--json', '-'], JSON.stringify(workedPlan))
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    expect(differences(JSON.parse(stdout), expected(workedPlan), { relative: 0 })).toEqual([])
  })

  it('prints several plans one line each in order, the refused ones with their problems, and ends with 2', () => {
    const { status, stdout, errors } = run(['--json', worked, broken, other])
    expect(status).toBe(2)
    const lines = stdout.trimEnd().split('\n')
    expect(lines).toHaveLength(3)
    expect(differences(JSON.parse(lines[0]!), expected(workedPlan), { relative: 0 })).toEqual([])
    expect(JSON.parse(lines[1]!)).toEqual({ refused: errors })
    expect(JSON.parse(lines[2]!).packs).toEqual([])
  })

  it('says every problem of a refused plan on a line of its own, and nothing on standard output', () => {
    const { status, stdout, errors } = run(['--json', broken])
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(errors.map(line => line.split(': ')[0]).sort()).toEqual(['carrier.massKg', 'carrier.weight'])
    for (const line of errors) expect(line).toMatch(/^[a-z]+(\[\d+\])?(\.\w+)*: \S/)
  })

  it('prints a report that can be read: need, peak, days, verdicts, cautions', () => {
    const { status, plain, stderr } = run([worked])
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    for (const words of ['Main body  49 L', 'Load       16.7', 'Day 1  ', 'Day 6  ', 'WARNING: ', 'NOTICE: '])
      expect(plain).toContain(words)
    expect(plain).toMatch(/^[●◐○×] .*: (DOES|DOES NOT|DOES, WITH CARE|CAN’T TELL YET)$/m)
    expect(plain).toMatch(/Too small by|Overloaded by|Tight leaving/)
  })

  it('reports in pounds and quarts when asked', () => {
    const { status, plain } = run(['--us', worked])
    expect(status).toBe(0)
    expect(plain).toContain(' lb')
    expect(plain).not.toMatch(/\d kg/)
  })

  it('refuses a file that is not there, by the name it was given', () => {
    const { status, stdout, errors } = run([join(folder, 'nowhere.json')])
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(errors).toEqual([expect.stringMatching(/^plan: cannot be read .*nowhere\.json/)])
  })

  it('ends with 64 and its usage when used wrongly, on standard error alone', () => {
    for (const args of [[], ['--jsn', worked]]) {
      const { status, stdout, stderr } = run(args)
      expect({ status, stdout }).toEqual({ status: 64, stdout: '' })
      expect(stderr).toContain('usage: ')
    }
  })
})
