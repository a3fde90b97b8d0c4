// A pack that gives the litres of the whole pack in place of its main body's: in a plan, and in the app, which keeps
// the main body alone.

import { describe, expect, it } from 'vitest'
import { fromPlanDocument, parsePlan, pathText } from '../../src/plan'
import { documentOf } from '../engine/small-plans'
import { counter } from './drafts'

const setup = { name: 'as sold', massKg: 1, frame: 'framed' }
const parsed = (pack: object) =>
  parsePlan({ ...documentOf({}), packs: [{ name: 'Pack', setups: [setup], ...pack }] })

function bodyOf(pack: object) {
  const found = parsed(pack)
  if (!found.ok) throw new Error(found.problems[0].message)
  const { bodyLitres, bodyFrom } = found.plan.packs[0]!
  return { bodyLitres, bodyFrom }
}

const refusalOf = (pack: object) => {
  const found = parsed(pack)
  return found.ok ? null : `${pathText(found.problems[0].path)}: ${found.problems[0].message}`
}

describe('a pack told by its litres in all', () => {
  it('has the main body that is left without its pockets, known as well as it is said', () => {
    expect(bodyOf({ totalLitres: 60, outsideLitres: 8 })).toEqual({ bodyLitres: 52, bodyFrom: 'stated' })
    const measured = { totalLitres: 60, outsideLitres: 8, bodyFrom: 'measured' }
    expect(bodyOf(measured)).toEqual({ bodyLitres: 52, bodyFrom: 'measured' })
  })

  it('has 85 % of it where the pockets are not known, our estimate, and a guess whatever is said', () => {
    const guess = { bodyLitres: 51, bodyFrom: 'guess' }
    expect(bodyOf({ totalLitres: 60 })).toEqual(guess)
    expect(bodyOf({ totalLitres: 60, bodyFrom: 'measured' })).toEqual(guess)
  })

  it('is refused by field where it says nothing, too much, or less than its pockets', () => {
    const missing = 'packs[0].bodyLitres: missing: write a number from 1 to 300 L, or give the litres in all'
    expect(refusalOf({})).toBe(missing)
    expect(refusalOf({ totalLitres: 60, bodyLitres: 50 })).toMatch(/^packs\[0\]\.totalLitres: stands in/)
    expect(refusalOf({ totalLitres: 6, outsideLitres: 8 })).toMatch(/^packs\[0\]\.totalLitres: leaves -2 L/)
    expect(refusalOf({ totalLitres: 400 })).toMatch(/^packs\[0\]\.totalLitres: leaves 340 L/)
  })

  it('comes into the app by its main body alone', () => {
    const found = parsed({ totalLitres: 60 })
    if (!found.ok) throw new Error(found.problems[0].message)
    const [pack] = fromPlanDocument(found.document, counter()).packs
    expect(pack).toMatchObject({ bodyLitres: 51, bodyFrom: 'guess' })
    expect(pack).not.toHaveProperty('totalLitres')
  })
})
