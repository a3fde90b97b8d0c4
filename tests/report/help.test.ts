// The help is made from the engine, the fields and the reports' own words: nothing that they have is left out of it.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import sources from '../../data/sources.json'
import { FIELDS, type FieldRow } from '../../src/plan'
import { SURE_SIGMAS, VERDICTS, type VerdictCode } from '../../src/reckon'
import { formatsIn, GENERAL_CAUTIONS, kindOfVerdict } from '../../src/report'
import {
  cautionExamples,
  defaultsByOrigin,
  exampleOf,
  exampleOfRules,
  rulesIn,
  tenCases,
  verdictExamples,
} from '../../src/report/help'
import { TOLD_CODES } from '../../src/report/verdict-words'
import { explain, withoutPaths } from '../../src/report/why'

const formats = formatsIn('metric')
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
const report = join(import.meta.dirname, '..', '..', 'src', 'report')
const cautionFiles = readdirSync(report).filter(file => /caution|plausible/.test(file))
const sourceOf = (file: string) => readFileSync(join(report, file), 'utf8')

describe('the invented trip', () => {
  it('lacks nothing, and its pack does', () => {
    const { reckoning } = exampleOf()
    expect(reckoning.missing).toEqual([])
    expect(reckoning.notices).toEqual([])
    expect(reckoning.packs.map(({ answer }) => answer)).toEqual(['does'])
  })

  it('fills its gear, food, fuel and water into the load, and peaks on the way', () => {
    const { moments, need } = exampleOf().reckoning
    const first = moments[0]!
    for (const share of ['kept', 'daily', 'nightly', 'water'] as const)
      expect(first.kg[share], share).toBeGreaterThan(0)
    expect(need.peakLoadFullWaterKg).toBeGreaterThan(first.fullWaterKg)
  })
})

describe('the verdicts', () => {
  const examples = verdictExamples(formats)

  it('stand there one and all, each once', () => {
    expect(examples.map(({ code }) => code).sort()).toEqual([...TOLD_CODES].sort())
  })

  it('of the engine are those that it gives the set-up shown', () => {
    const ofEngine = examples.filter(({ code }) => code in VERDICTS)
    expect(ofEngine).toHaveLength(Object.keys(VERDICTS).length)
    for (const { code, of, setup } of ofEngine)
      expect(of.reckoning.packs[setup]!.verdicts).toContain(code as VerdictCode)
  })

  it('come with what fails first, in whole sentences with a reason behind each', () => {
    const weights = examples.map(({ weight }) => weight)
    expect(weights).toEqual([
      ...weights.filter(weight => weight === 'fails'),
      ...weights.filter(weight => weight === 'warns'),
      ...weights.filter(weight => weight === 'leaves-open'),
      ...weights.filter(weight => weight === 'says'),
    ])
    for (const { code, lead, rest, of, about } of examples) {
      expect(lead + rest, code).toMatch(/^[\p{Lu}\d].+\.$/u)
      expect(kindOfVerdict(code).about, code).toBeTruthy()
      expect(explain(about, { ...of, formats }), code).not.toEqual([])
    }
  })
})

describe('the safety notes', () => {
  const texts = cautionExamples(formats).map(({ text }) => plain(text))

  // 1.5 quarts at most come of the table with all that is added: the engine's cap lies above them.
  const NEVER = ['Too hot to drink enough']
  const shorts = cautionFiles.flatMap(file =>
    [...sourceOf(file).matchAll(/^\s*short: (?:'([^']+)'|`([^`]+)`)/gm)].map(found => found[1] ?? found[2]!),
  )

  it('that a trip brings about stand there one and all', () => {
    expect(shorts.length).toBeGreaterThan(20)
    const longest = (short: string) =>
      short
        .replace(/\$\{(?:[^{}]|\{[^}]*\})*\}/g, '|')
        .split('|')
        .sort((a, b) => b.length - a.length)[0]!
    const left = shorts.filter(short => !texts.some(text => text.includes(longest(short).trim())))
    expect(left).toEqual(NEVER)
  })

  it('are told once each, the gravest first', () => {
    const signals = cautionExamples(formats).map(({ signal }) => signal)
    expect(new Set(signals)).toEqual(new Set(['WARNING', 'CAUTION', 'NOTICE']))
    expect(signals.lastIndexOf('WARNING')).toBeLessThan(signals.indexOf('CAUTION'))
    expect(signals.lastIndexOf('CAUTION')).toBeLessThan(signals.indexOf('NOTICE'))
    expect(texts.filter(text => text.startsWith('Load is'))).toHaveLength(1)
  })

  it('that always hold stand in the source once, and are no line of a trip', () => {
    for (const { text, short } of GENERAL_CAUTIONS) {
      expect(short).toBeUndefined()
      expect(cautionFiles.filter(file => sourceOf(file).includes(text))).toEqual(['general-cautions.ts'])
    }
  })
})

describe('the rules', () => {
  it('are those of time, energy, rest, water and food, each with a source and what it leaves out', () => {
    const rules = rulesIn(exampleOfRules(), formats)
    const kinds = rules.map(({ about }) => about.kind)
    expect(kinds).toEqual(['walking-time', 'leg-energy', 'resting-energy', 'leg-water', 'ration'])
    for (const { explanation } of rules) {
      expect(explanation.sourceKeys.length).toBeGreaterThan(0)
      for (const key of explanation.sourceKeys) expect(sources).toHaveProperty([key])
      expect(explanation.ignores).not.toBe('')
    }
  })

  it('lead to no field, at any depth, when they are of another plan', () => {
    const context = { ...exampleOfRules(), formats }
    const abouts = [{ kind: 'body-litres' }, { kind: 'peak-load' }, { kind: 'walking-time', leg: 0 }] as const
    for (const explanation of abouts.flatMap(about => explain(about, context))) {
      expect(JSON.stringify(withoutPaths(explanation))).not.toContain('"path"')
      expect(withoutPaths(explanation).result).toEqual(explanation.result)
    }
    expect(JSON.stringify(explain({ kind: 'body-litres' }, context))).toContain('"path"')
  })
})

describe('what counts until the hiker says', () => {
  it('has every number of a habit or setting that says where it comes from', () => {
    const labels = (['pace', 'water', 'meals', 'settings'] as const).flatMap(part =>
      Object.values<FieldRow>(FIELDS[part])
        .filter(row => row.label && row.origin && typeof row.usual === 'number')
        .map(({ label, origin }) => `${origin}: ${label}`),
    )
    const told = defaultsByOrigin('metric').flatMap(({ origin, rows }) =>
      rows.map(({ label }) => `${origin}: ${label}`),
    )
    expect(labels.length).toBeGreaterThan(10)
    expect(told).toEqual(expect.arrayContaining(labels))
  })
})

describe('ten cases', () => {
  it('are nine that a sure pack holds and one that it does not, half of them under the need', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 120, noNaN: true }),
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        (bodyLitres, sigmaV) => {
          const cases = tenCases({ bodyLitres, sigmaV })
          expect(cases.filter(litres => litres <= bodyLitres + SURE_SIGMAS * sigmaV)).toHaveLength(9)
          expect(cases.filter(litres => litres < bodyLitres)).toHaveLength(5)
        },
      ),
    )
  })
})
