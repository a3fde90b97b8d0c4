// What is refused of a plan, at which field and in which words; and that what is left out means its default.

import { describe, expect, it } from 'vitest'
import { CAPS, type Parsed, parsePlan, parsePlanText, pathText } from '../../src/plan'
import { refused, unknownFields } from './parse.cases'

type Loose = Record<string, unknown>

/** A document that uses every part of the format. */
function whole(): Loose {
  return {
    format: 'pack-reckoner/plan',
    version: 1,
    name: 'Three days',
    carrier: { massKg: 70, heightCm: 172, ageYears: 34, sex: 'female', loadShareLimit: 0.2 },
    trip: {
      stops: [
        { name: 'Start', water: 'sure' },
        { name: 'Camp', water: 'doubtful', nights: 1, leg: { km: 12, ascentM: 600, airC: 20 } },
        { name: 'End', leg: { km: 9, hours: 3 } },
      ],
      pace: { flatKmh: 4 },
      water: { litresPerHour: 0.5 },
      meals: { breakfast: 0.25, trail: 0.4, supper: 0.35 },
      wet: true,
    },
    gear: [
      { id: 'box', massKg: 1, litres: 12, holdsLitres: 10 },
      { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300, inside: 'box' },
      { id: 'gas', massKg: 0.03, litres: 0, use: 'nightly', fuel: { kind: 'gas', boilLitres: 1.5 } },
    ],
    packs: [
      {
        name: 'Pack',
        bodyLitres: 45,
        setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ratedKg: 13 }],
      },
    ],
    settings: { rigidPacking: 0.75, personalFactorSpread: 0.05 },
  }
}

/** The whole document with the value at a path like `gear[0].massKg` replaced; undefined removes it. */
function withValue(path: string, value: unknown): Loose {
  const document = whole()
  const parts = path.split(/[.[\]]+/).filter(Boolean)
  const last = parts.pop()!
  let at: Loose = document
  for (const part of parts) {
    if (at[part] === undefined) at[part] = {}
    at = at[part] as Loose
  }
  if (value === undefined) delete at[last]
  else at[last] = value
  return document
}

const problemsOf = (parsed: Parsed): string[] =>
  parsed.ok ? [] : parsed.problems.map(({ path, message }) => `${pathText(path)}: ${message}`)

const refusals = (path: string, value: unknown): string[] => problemsOf(parsePlan(withValue(path, value)))

/** Messages of everything this file refuses, for the lint of words below. */
const everyMessage = () => [
  ...refused.flatMap(([path, value]) => refusals(path, value)),
  ...unknownFields.flatMap(path => refusals(path, 1)),
  ...['', 'x', '{', '{"a":NaN}', '[]', 'null', 'x'.repeat(CAPS.fileBytes + 1), '['.repeat(500)].flatMap(
    text => problemsOf(parsePlanText(text)),
  ),
  ...problemsOf(parsePlan(nested(CAPS.depth + 5))),
]

function nested(depth: number): unknown {
  let value: unknown = 1
  for (let i = 0; i < depth; i++) value = { format: value }
  return value
}

describe('a plan', () => {
  it('that uses every part of the format is read, with its document and its defaults', () => {
    const parsed = parsePlanText(JSON.stringify(whole()))
    if (!parsed.ok) throw new Error(problemsOf(parsed).join('\n'))
    expect(parsed.document).toEqual(whole())
    expect(parsed.plan.gear[1]).toMatchObject({ resupplied: true, leaves: 0.05, count: 1, build: 'soft' })
    expect(parsed.plan.gear[0]).toMatchObject({ build: 'rigid', leaves: 0, resupplied: false })
    expect(parsed.plan.gear[2]!.fuel).toEqual({
      ...{ kind: 'gas', boilLitres: 1.5, startC: 10, meltLitres: 0, altitudeM: 0, efficiency: null },
    })
  })

  it('with nothing but what is needed means the defaults of the format', () => {
    const stops = [{ name: 'A' }, { name: 'B', leg: { km: 1 } }]
    const parsed = parsePlan({
      format: 'pack-reckoner/plan',
      version: 1,
      carrier: { massKg: 70 },
      trip: { stops },
    })
    if (!parsed.ok) throw new Error(problemsOf(parsed).join('\n'))
    expect(parsed.plan).toMatchObject({
      carrier: { loadShareLimit: 0.2, heightCm: null, ageYears: null, sex: null },
      trip: {
        stops: [
          { water: 'sure', nights: 0, leg: null },
          { leg: { airC: null, humidity: null, sun: null, ground: 'trail' } },
        ],
        pace: { flatKmh: 4, climbMPerH: 300, descendMPerH: 500 },
        meals: {
          breakfast: 0.25,
          trail: 0.4,
          supper: 0.35,
          supperAfterEnd: true,
          ration: 'fixed',
          deficit: 0,
        },
        water: { trustDoubtful: false },
      },
      gear: [],
      packs: [],
      packings: [],
      settings: {
        ...{ rigidPacking: 0.75, softPacking: 0.95, fillEfficiency: 0.5, habitCorrelation: 0.5 },
        ...{ personalFactor: 1, personalFactorSpread: null, handSpread: 0.08, readingSpread: 0.03 },
        ...{ linerKg: 0.05, framelessCeilingKg: 9.07 },
        ...{ roomyRatio: 1.35, packKgForEnergy: 1, brimKgPerLitre: 0.22 },
      },
    })
  })

  it('takes null for "not known", the same as leaving the field out', () => {
    for (const path of ['carrier.heightCm', 'trip.stops[1].leg.airC', 'packs[0].price', 'settings', 'gear'])
      expect(refusals(path, null), path).toEqual([])
    const parsed = parsePlan(withValue('settings.personalFactorSpread', null))
    expect(parsed.ok && parsed.plan.settings.personalFactorSpread).toBe(null)
  })

  it('does not take null for what is needed', () => {
    expect(refusals('carrier.massKg', null)[0]).toContain('carrier.massKg: ')
    expect(refusals('trip.stops[1]', null)[0]).toContain('trip.stops[1]')
  })

  it('holds a carrier under 18 to 15 % of body mass, unless told otherwise', () => {
    const limit = (carrier: Loose) => {
      const parsed = parsePlan(withValue('carrier', { massKg: 50, ...carrier }))
      return parsed.ok ? parsed.plan.carrier.loadShareLimit : problemsOf(parsed)
    }
    expect([limit({ ageYears: 17 }), limit({ ageYears: 18 }), limit({})]).toEqual([0.15, 0.2, 0.2])
    expect(limit({ ageYears: 17, loadShareLimit: 0.1 })).toBe(0.1)
  })

  it('starts at a sure source whatever is written', () => {
    const parsed = parsePlan(withValue('trip.stops[0].water', 'none'))
    expect(parsed.ok && parsed.plan.trip.stops[0]!.water).toBe('sure')
  })
})

describe('a plan is refused', () => {
  it.each(refused)('at %s when it is %j, with "%s"', (path, value, word) => {
    const problems = refusals(path, value)
    expect(problems, problems.join('\n')).toHaveLength(1)
    expect(problems[0]!.startsWith(`${path}: `), problems[0]).toBe(true)
    expect(problems[0]).toContain(word)
  })

  it.each(unknownFields)('at the unknown field %s, by its name', path => {
    expect(refusals(path, 1)).toEqual([expect.stringMatching(/: is not a field of a plan/)])
    expect(refusals(path, 1)[0]!.startsWith(`${path}: `)).toBe(true)
  })

  it('at every field that is wrong, not at the first alone', () => {
    const document = whole()
    document.carrier = { massKg: -1, weight: 2 }
    document.gear = [{ id: 'a', massKg: -1 }]
    const paths = problemsOf(parsePlan(document)).map(line => line.split(':')[0])
    expect(paths.sort()).toEqual(['carrier.massKg', 'carrier.weight', 'gear[0].litres', 'gear[0].massKg'])
  })

  it('at __proto__ in a file, by its name, wherever it is, and nothing is inherited from it', () => {
    const text = JSON.stringify(whole())
    for (const [mark, path] of [
      ['{"format"', '__proto__'],
      ['{"massKg":70', 'carrier.__proto__'],
      ['{"id":"box"', 'gear[0].__proto__'],
    ] as const) {
      const evil = text.replace(mark, `{"__proto__":{"polluted":1},${mark.slice(1)}`)
      expect(problemsOf(parsePlanText(evil))).toEqual([
        `${path}: is not a field of a plan: remove it or check its spelling`,
      ])
    }
    expect(({} as Loose).polluted).toBeUndefined()
  })

  it('at trip.meals when the meals do not make a day', () => {
    const meals = { breakfast: 0.5, trail: 0.4, supper: 0.35 }
    expect(refusals('trip.meals', meals)).toEqual([expect.stringMatching(/^trip\.meals: .*1\.25.*make 1$/)])
    expect(refusals('trip.meals', { breakfast: 0.333, trail: 0.333, supper: 0.333 })).toEqual([])
  })

  it('at trip.meals.ration when the ration follows energy and no food has any', () => {
    const document = withValue('trip.meals.ration', 'energy')
    expect(problemsOf(parsePlan(document))).toEqual([])
    document.gear = []
    expect(problemsOf(parsePlan(document))).toEqual([
      expect.stringMatching(/^trip\.meals\.ration: .*kcalPerKg/),
    ])
  })

  it('at each container that rides in a container, in a circle or in a chain', () => {
    const box = (id: string, inside: string) => ({ id, massKg: 1, litres: 5, holdsLitres: 4, inside })
    const circle = withValue('gear', [box('a', 'b'), box('b', 'a')])
    expect(problemsOf(parsePlan(circle)).map(line => line.split(':')[0])).toEqual([
      'gear[0].inside',
      'gear[1].inside',
    ])
    const chain = withValue('gear', [
      { id: 'a', massKg: 1, litres: 5, holdsLitres: 4 },
      box('b', 'a'),
      { id: 'c', massKg: 1, litres: 1, inside: 'b' },
    ])
    expect(problemsOf(parsePlan(chain)).map(line => line.split(':')[0])).toEqual([
      'gear[1].inside',
      'gear[2].inside',
    ])
  })

  it('when it is nested too deep, however deep, without running out of stack', () => {
    expect(problemsOf(parsePlan(nested(CAPS.depth + 1)))).toEqual([
      expect.stringMatching(/^plan: is nested deeper/),
    ])
    const text = `{"a":${'['.repeat(20_000)}${']'.repeat(20_000)}}`
    expect(problemsOf(parsePlanText(text))).toEqual([expect.stringMatching(/^plan: is nested deeper/)])
  })

  it('when it is too large a file, without being read', () => {
    const padded = `${JSON.stringify(whole())}${' '.repeat(CAPS.fileBytes)}`
    expect(problemsOf(parsePlanText(padded))).toEqual([expect.stringMatching(/^plan: is larger than 5 MB/)])
  })

  it('when it holds more than it may', () => {
    const stops = Array.from({ length: CAPS.stops + 1 }, (_, i) => ({
      name: `${i}`,
      ...(i ? { leg: { km: 1 } } : {}),
    }))
    expect(refusals('trip.stops', stops)).toEqual([expect.stringContaining(`${CAPS.stops} at most`)])
  })

  it('when it is not JSON or no plan at all, and says so in one line', () => {
    for (const text of [
      '',
      'hello',
      '{"a":',
      '{"massKg":NaN}',
      '{"a":1,}',
      '[]',
      '"plan"',
      'null',
      '7',
      '{}',
    ]) {
      const problems = problemsOf(parsePlanText(text))
      expect(problems, text).toHaveLength(1)
      expect(problems[0]).not.toContain('\n')
    }
  })

  it('at a number too large for a computer, written 1e999', () => {
    const text = JSON.stringify(whole()).replace('"massKg":70', '"massKg":1e999')
    expect(problemsOf(parsePlanText(text))).toEqual([
      expect.stringMatching(/^carrier\.massKg: .*10 to 300 kg/),
    ])
  })
})

describe('a plan file', () => {
  it('with the byte order mark that some editors write is read all the same', () => {
    expect(problemsOf(parsePlanText(`\uFEFF${JSON.stringify(whole())}`))).toEqual([])
  })
})

describe('the message of every refusal', () => {
  it('says what to do', () => {
    const messages = everyMessage()
    expect(messages.length).toBeGreaterThan(110)
    const verbs =
      /\b(write|give|remove|check|change|name|shorten|flatten|take|set|split|mend|export|update|add|make)\b/
    for (const message of messages) expect(message).toMatch(verbs)
  })

  it('has none of the words that blame or plead', () => {
    const banned = /\b(please|sorry|valid|invalid|oops|forbidden|required|error|illegal|must)\b/i
    for (const message of everyMessage()) expect(message).not.toMatch(banned)
  })
})
