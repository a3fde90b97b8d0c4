// The command line: what it prints where, and how it ends. One run is a process of its own, as a shell starts it.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { parsePlan } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { differences } from '../engine/agree'
import workedPlan from '../engine/fixtures/worked-plan.json'
import { run } from './run-here'

const root = join(import.meta.dirname, '..', '..')
const folder = mkdtempSync(join(tmpdir(), 'reckon-'))
afterAll(() => rmSync(folder, { recursive: true }))

function file(name: string, content: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
  return path
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

describe('packs of a table', () => {
  const table = file(
    'packs.csv',
    [
      'Pack,Frame,Weight (g),Weight frame out (g),Body (L),Pockets (L),Max load (kg),Price',
      'Heavy,yes,2000,,60,10,20,200',
      'Light,no,500,,50,,,100',
      'Both,removable,1200,900,45,5,14,',
      'Slip,yes,much,,40,,,',
      'Open,,800,,40,,,',
    ].join('\n'),
  )

  it('are read with their figures, and what is left out is said by row and column', () => {
    const { status, stdout, errors } = run(['--packs', table, '--json'])
    expect(status).toBe(0)
    const entries = JSON.parse(stdout)
    expect(entries.map((entry: { name: string; setup: string }) => `${entry.name}, ${entry.setup}`)).toEqual([
      'Heavy, as sold',
      'Light, as sold',
      'Both, frame in',
      'Both, frame out',
    ])
    expect(entries[0]).toEqual({
      ...{ name: 'Heavy', setup: 'as sold', frame: 'framed', massKg: 2, bodyLitres: 60, totalLitres: 70 },
      ...{ ratedKg: 20, price: 200, gramsPerLitre: 2000 / 60, gramsPerTotalLitre: 2000 / 70 },
      ...{ gramsPerRatedKg: 100, pricePerLitre: 200 / 60, pricePerRatedKg: 10 },
      ...{ brimLoadKg: 60 * 0.22 + 2, brimLimitKg: 20, outgrows: false, measure: null },
    })
    expect(entries[1]).toMatchObject({ brimLimitKg: 9.07, outgrows: true, totalLitres: null, ratedKg: null })
    expect(entries[3]).toMatchObject({ frame: 'frameless', massKg: 0.9, ratedKg: null })
    expect(errors).toHaveLength(2)
    expect(errors[0]).toMatch(/^row 5, Weight \(g\): "much": /)
    expect(errors[1]).toBe('row 6: "Open", as sold: left out, it needs "Frame"')
  })

  it('end with 2 where a row is left out and that is not let pass', () => {
    expect(run(['--packs', table, '--strict', '--json']).status).toBe(2)
    const whole = file('whole.csv', 'Pack,Frame,Weight (g),Body (L)\nA,yes,900,40')
    expect(run(['--packs', whole, '--strict', '--json']).status).toBe(0)
  })

  it('stand in the order of a figure, what is not known last either way', () => {
    const order = (...args: string[]) =>
      [...run(['--packs', table, ...args]).plain.matchAll(/^(Heavy|Light|Both), (\S+ \S+)/gm)].map(
        ([all]) => all,
      )
    expect(order('--by', 'massKg')).toEqual([
      'Light, as sold',
      'Both, frame out',
      'Both, frame in',
      'Heavy, as sold',
    ])
    expect(order('--by', 'massKg', '--down')[0]).toBe('Heavy, as sold')
    for (const down of [[], ['--down']])
      expect(order('--by', 'price', ...down).slice(2)).toEqual(order().slice(2))
    // Mass times price for each litre: 500 × 100 / 50 before 2000 × 200 / 60.
    expect(order('--measure', 'massG=1,price=1,bodyLitres=-1').slice(0, 2)).toEqual([
      'Light, as sold',
      'Heavy, as sold',
    ])
  })

  it('say what was decided in reading, and ask for headings where there are none', () => {
    const plain = file('plain.csv', 'Pack,Frame,Weight (g),Volume (L)\nA,yes,900,60')
    expect(run(['--packs', plain, '--json', '--strict'])).toMatchObject({
      status: 0,
      errors: [
        '"Volume (L)" is taken as the total with pockets: call it "Main body" if it is that alone.',
        'Row 2: the main body is taken as 85 % of the total, our estimate.',
      ],
    })
    const bare = run(['--packs', file('bare.csv', 'A,900,45\nB,800,40'), '--json'])
    expect(bare).toMatchObject({ status: 2, stdout: '' })
    expect(bare.errors).toEqual([expect.stringMatching(/^no row names the columns/)])
  })

  it('are told of a plan without gear only what they are when full', () => {
    const bare = file('bare.json', { ...workedPlan, gear: [] })
    const entries = JSON.parse(run(['--packs', table, bare, '--json']).stdout)
    expect(entries[0]).toMatchObject({
      answer: 'cannot-tell',
      fitChance: null,
      bodyMarginLitres: null,
      outgrows: false,
    })
    expect(entries[1].outgrows).toBe(true)
    expect(run(['--packs', table, bare]).plain).toMatch(/Filled to the brim[\s\S]*The plan has no gear/)
  })

  it('are read in the letters of older spreadsheets', () => {
    const path = file('old.csv', '')
    writeFileSync(path, Buffer.from('Pack,Frame,Weight (g),Body (L),Price\nA,yes,900,45,200 \x80', 'latin1'))
    expect(JSON.parse(run(['--packs', path, '--json', '--strict']).stdout)[0].price).toBe(200)
  })

  it('are judged by a plan as its own packs are', () => {
    const sizes = ['innerHeightCm', 'innerWidthCm', 'innerDepthCm']
    const rows = (workedPlan.packs as Record<string, unknown>[]).flatMap(pack =>
      (pack.setups as Record<string, unknown>[]).map(setup =>
        [
          ...[
            pack.name,
            setup.name,
            pack.bodyLitres,
            pack.outsideLitres,
            pack.sealed,
            pack.collarLitres,
            pack.bodyFrom,
          ],
          ...[...sizes.map(key => pack[key]), setup.massKg, setup.frame, setup.ratedKg, setup.ratingCovers],
        ].join(';'),
      ),
    )
    const heads =
      'Pack;Set-up;Body (L);Pockets (L);Sealed;Collar;The litres are;Inner height;Inner width;Inner depth;Mass (kg);Frame;Rated load (kg);The rating covers'
    const own = file('own.csv', [heads, ...rows].join('\n'))
    const judged = JSON.parse(run(['--packs', own, worked, '--json']).stdout)
    const expected = JSON.parse(run(['--json', worked]).stdout).packs
    const figures =
      'name setup answer verdicts fitChance carriedKg bodyMarginLitres ratedMarginKg reachDays'.split(' ')
    const of = (entry: Record<string, unknown>) => Object.fromEntries(figures.map(key => [key, entry[key]]))
    for (const [i, entry] of judged.entries()) {
      const { verdicts } = expected[i]
      expect(of(entry)).toEqual(of(expected[i]))
      expect(entry.outgrows).toBe(verdicts.includes('outgrows-its-support'))
    }
    expect(judged).toHaveLength(expected.length)
    expect(run(['--packs', own, worked]).plain).toMatch(/^Answer +Pack/)
  })

  it.each([
    [['--packs', 'none.csv'], 2, /^table: cannot be read/],
    [['--packs', '-'], 2, /./],
    [['--packs', '-', '-'], 64, /standard input is the table or the plan/],
    [['--packs', 'a', 'b', 'c'], 64, /takes one plan/],
    [['--packs', 'a', '--by', 'beauty'], 64, /"beauty" is no figure: use massKg/],
    [['--packs', 'a', '--by', 'measure'], 64, /needs --measure/],
    [['--packs', 'a', '--measure', 'mass=1'], 64, /"mass" is no part of it: use massG/],
    [['--packs', 'a', '--measure', 'massG=1=2'], 64, /power of massG is "1=2"/],
    [['--packs', 'a', '--measure', 'massG=0x1'], 64, /power of massG/],
    [['--packs', 'a', '--by', 'carriedKg'], 64, /--by carriedKg needs a plan/],
    [['--packs', 'a', '--measure', 'massG=3'], 64, /power of massG is "3"/],
    [['--packs', 'a', '--measure', 'massG='], 64, /power of massG is ""/],
    [['--packs', 'a', '--measure', 'massG=1,massG=1'], 64, /stands in it twice/],
    [['--by', 'price', 'plan.json'], 64, /--by goes with --packs/],
    [['--packs'], 64, /./],
  ])('%j is refused', (args, code, words) => {
    const { status, stdout, stderr } = run(args as string[])
    expect(status).toBe(code)
    expect(stdout).toBe('')
    expect(stderr).toMatch(words)
  })
})
