// Running the values of measuring.values.json and geometry.values.json: inputs by the names of their source.

import { expect, it } from 'vitest'
import type { Case } from './cases'

export interface Given {
  (name: string): number
  list(name: string): number[]
}

export type Run = (given: Given, id: string) => number | number[]

function givenBy({ id, inputs }: Case): Given {
  const number = (name: string) => {
    const found = inputs[name]
    if (typeof found !== 'number') throw new Error(`${id} has no number ${name}`)
    return found
  }
  const list = (name: string) => {
    const found = inputs[name]
    if (!Array.isArray(found)) throw new Error(`${id} has no list ${name}`)
    return found as number[]
  }
  return Object.assign(number, { list })
}

/** One test a value, by the run whose prefix fits its id longest; and that all runs and values are used. */
export function itReproduces(values: Case[], runs: Record<string, Run>, count: number) {
  const prefixOf = (id: string) =>
    Object.keys(runs)
      .filter(prefix => id.startsWith(prefix))
      .sort((a, b) => b.length - a.length)[0]

  it.each(values.map(value => [value.id, value.kind, value.source, value] as const))(
    '%s is reproduced (%s: %s)',
    (id, _kind, _source, value) => {
      const run = runs[prefixOf(id) ?? '']
      expect(run, 'nothing answers this value').toBeDefined()
      const got = [run!(givenBy(value), id)].flat()
      const expected = [value.expected].flat()
      expect(got).toHaveLength(expected.length)
      for (const [i, number] of expected.entries())
        expect(Math.abs(got[i]! - number)).toBeLessThanOrEqual(value.tolerance + 1e-12)
    },
  )

  it(`are ${count}, each with its source and standing, and every run answers one`, () => {
    expect(values).toHaveLength(count)
    for (const { source, kind } of values) {
      expect(source).not.toBe('')
      expect(['published', 'computed', 'memory']).toContain(kind)
    }
    expect([...new Set(values.map(({ id }) => prefixOf(id)))].sort()).toEqual(Object.keys(runs).sort())
  })
}
