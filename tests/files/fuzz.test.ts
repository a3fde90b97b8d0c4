// Real files, changed in thousands of ways: nothing throws, nothing is without an answer, no figure is without a value.
// The doors of every fuzz.ts are gathered here; node tests/tools/fuzz.mjs tries them for longer.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Door, tryDoor } from '../tools/doors'
import { triesIn } from '../tools/fuzz.mjs'
import { property as table } from './csv/fuzz'
import { doors as own } from './fuzz'

/** As many as take seconds in all. */
const RUNS = triesIn(process.env.FUZZ_RUNS ?? '') ?? 400

const doors: Door[] = [...own, { name: 'the bytes of a table', property: table, cost: 4 }]

describe('whatever comes in by', () => {
  test.each(doors.map(door => [door.name, Math.ceil(RUNS / (door.cost ?? 1)), door] as const))(
    '%s is taken in or answered in words (%i tries)',
    async (_, runs, door) => {
      await tryDoor(door, runs)
    },
  )
})

test('a door that lets something through is caught', () => {
  const leaky = { name: 'leaky', property: fc.property(fc.nat(), n => n < 50) }
  expect(() => tryDoor(leaky, 400)).toThrow(/Counterexample/)
})

test('the command knows a number of tries from what is none', () => {
  expect(['100000', '1', '', '0', '-5', '1.5', 'many', 'Infinity'].map(triesIn)).toEqual([
    ...[100_000, 1],
    ...[null, null, null, null, null, null],
  ])
})
