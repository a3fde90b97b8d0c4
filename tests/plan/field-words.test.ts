// What people are told of a field: every field of the schema has a word, and no sentence speaks of one as a file does.

import { describe, expect, test } from 'vitest'
import {
  checkDraft,
  type Draft,
  describeField,
  fieldWord,
  parsePlan,
  problemInWords,
  settle,
} from '../../src/plan'
import { planSchema } from '../../src/plan/schema'
import { wholeDraft } from './drafts'

interface Schema {
  _zod: { def: { shape?: Record<string, Schema>; innerType?: Schema; element?: Schema } }
}

/** The path of every field of a plan, list entries as 0. */
function pathsOf({ _zod: { def } }: Schema, path: (string | number)[] = []): (string | number)[][] {
  if (def.innerType) return pathsOf(def.innerType, path)
  if (def.element) return [path, ...pathsOf(def.element, [...path, 0])]
  if (!def.shape) return [path]
  const inside = Object.entries(def.shape).flatMap(([name, child]) => pathsOf(child, [...path, name]))
  return path.length && typeof path.at(-1) !== 'number' ? [path, ...inside] : inside
}

const paths = pathsOf(planSchema as unknown as Schema)
const names = [...new Set(paths.map(path => path.at(-1)).filter(name => typeof name === 'string'))]

/** How a file writes things and people do not: names in one word, quoted values, places by brackets. */
const AS_IN_A_FILE =
  /[a-z][A-Z]|"|[[\]{}]|\b(?:ration|stow|wet|true|false|null|outside-pocket|strapped-on|white-gas)\b/

/** The document with a value put where it does not belong; null where there is no such place in it. */
function withValue(path: (string | number)[], value: unknown) {
  const document = structuredClone(full())
  const parent = path.slice(0, -1).reduce<unknown>((at, part) => (at as never)?.[part], document)
  if (typeof parent !== 'object' || parent === null) return null
  ;(parent as Record<string | number, unknown>)[path.at(-1)!] = value
  return document
}

/** A whole plan in which each part that may be left out is there. */
function full() {
  const { trip, gear, packs, ...rest } = wholeDraft()
  const leg = { km: 5 }
  return {
    format: 'pack-reckoner/plan',
    version: 1,
    ...rest,
    trip: {
      ...trip,
      pace: {},
      water: {},
      meals: {},
      stops: trip.stops.map((stop, i) => ({ ...stop, ...(i && { leg }) })),
    },
    gear: gear.map(item => ({
      ...item,
      use: 'nightly',
      fuel: { kind: 'gas' },
      litresRange: { low: 1, typical: 2, high: 3 },
    })),
    packs,
    settings: {},
  }
}

const NONSENSE = ['nonsense', -1e9, 1e12, true, {}, [], null]

describe('what people read of a field', () => {
  test('is in words for each field there is', () => {
    expect(names.length).toBeGreaterThan(90)
    for (const name of names) {
      expect(fieldWord(name), name).not.toMatch(AS_IN_A_FILE)
      expect(fieldWord(name), name).not.toMatch(/^“/)
    }
  })

  test('is quoted and short where no plan has such a field', () => {
    expect(fieldWord('constructor')).toBe('“constructor”')
    expect(fieldWord('x'.repeat(500)).length).toBeLessThan(70)
  })

  test.each(paths.map(path => [path.join('.'), path] as const))(
    'is in words in the trip, the preview and the file that hold nonsense at %s',
    (_, path) => {
      const sentences = NONSENSE.flatMap(value => {
        const document = withValue(path, value)
        if (!document) return []
        const draft = document as unknown as Draft
        const settled = settle(draft).leftOut.map(({ message }) => message)
        const parsed = parsePlan(document)
        const file = parsed.ok ? [] : parsed.problems.map(problemInWords)
        return [...settled, ...file]
      })
      for (const sentence of sentences) expect(sentence).not.toMatch(AS_IN_A_FILE)
    },
  )

  test('is in words in the preview of a backup', () => {
    const { gear, trip, ...rest } = wholeDraft()
    const bad = {
      ...rest,
      trip: { ...trip, wet: 'very' },
      gear: gear.map(item => ({ ...item, stow: 'roof', x: 1 })),
    }
    const checked = checkDraft(bad as unknown as Draft)
    if (!checked.ok) throw new Error(checked.message)
    expect(checked.leftOut).toContain('Rain')
    expect(checked.leftOut).toContain('Item 1, place in the pack')
    expect(checked.leftOut).toContain('Item 1, “x”')
    for (const place of checked.leftOut) expect(place).not.toMatch(AS_IN_A_FILE)
  })

  test('is in words in the step that undo names', () => {
    expect(describeField(wholeDraft(), 'trip/meals/ration')).toBe('Meals, way to count rations')
    for (const name of names)
      for (const at of ['trip/', 'carrier/', 'gear/food/'])
        expect(describeField(wholeDraft(), at + name)).not.toMatch(AS_IN_A_FILE)
  })

  test('names the stop of what is noted there, and never its mark', () => {
    const draft = wholeDraft()
    const [, stop] = draft.trip.stops
    const named = {
      ...draft,
      trip: { ...draft.trip, stops: [draft.trip.stops[0]!, { ...stop!, name: 'Tarn' }] },
    }
    expect(
      ['log/reached/', 'log/setOff/', 'log/left/'].map(at =>
        describeField(named, `${at}${stop!.id}${at === 'log/left/' ? '/waterLitres' : ''}`),
      ),
    ).toEqual(['Tarn, time of arrival', 'Tarn, time you left', 'Tarn, water left'])
  })

  test('tells rations by energy how to go on without the words of a file', () => {
    const { trip, gear, ...rest } = wholeDraft()
    const meals = { ...trip.meals, ration: 'energy' as const }
    const bare = gear.map(({ kcalPerKg: _, ...item }) => item)
    const { leftOut } = settle({ ...rest, trip: { ...trip, meals }, gear: bare })
    expect(leftOut.map(({ message }) => message)).toContain(
      'Meals: way to count rations – no food says its energy: give it, or eat the same each day; until then the usual value is used.',
    )
  })
})
