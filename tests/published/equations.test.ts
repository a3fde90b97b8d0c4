// Holds the equations to values printed or computed elsewhere (the .values.json files beside this one).

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { cases, deviation, leftOut } from './cases'
import { driverPrefix, drivers } from './drivers'

const sources = JSON.parse(readFileSync(new URL('../../data/sources.json', import.meta.url), 'utf8'))

describe('published values', () => {
  it.each(cases.map(case_ => [case_.id, case_] as const))('%s is reproduced', (id, case_) => {
    const prefix = driverPrefix(id)
    expect(prefix, 'no equation answers this value').toBeDefined()
    // The slack is for rounding in the last bit, where a table is to be met exactly.
    expect(deviation(case_, drivers[prefix!]!.run)).toBeLessThanOrEqual(case_.tolerance + 1e-12)
  })

  it('are all here, and every driver answers at least one', () => {
    expect(cases.length).toBe(167)
    expect(new Set(cases.map(case_ => case_.id)).size).toBe(cases.length)
    const used = new Set(cases.map(case_ => driverPrefix(case_.id)))
    expect([...used].sort()).toEqual(Object.keys(drivers).sort())
  })

  it('left out are named, with a reason, and are not among those driven', () => {
    const driven = new Set(cases.map(case_ => case_.id))
    for (const { reason, ids } of leftOut) {
      expect(reason).not.toBe('')
      expect(ids.length).toBeGreaterThan(0)
      expect(ids.filter(id => driven.has(id))).toEqual([])
    }
  })

  it('have drivers whose sources are registered', () => {
    for (const { source } of Object.values(drivers)) expect(sources).toHaveProperty(source)
  })

  it('name their source and kind each', () => {
    for (const { source, kind } of cases) {
      expect(source).not.toBe('')
      expect(['published', 'computed', 'memory']).toContain(kind)
    }
  })
})
