// Box-shaped rigid things: what the engine's two codes say of them, what would mend that, and that nothing changes for
// plans without boxes.

import { describe, expect, it } from 'vitest'
import { type ItemDocument, type PackDocument, parsePlan } from '../../src/plan'
import { remediesFor } from '../../src/reckon'
import { documentOf, noWater, reckoned, smallPlan } from './small-plans'

const pack: PackDocument = {
  name: 'Pack',
  bodyLitres: 50,
  outsideLitres: 8,
  innerHeightCm: 60,
  innerWidthCm: 32,
  innerDepthCm: 24,
  setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ratedKg: 12 }],
}
const box = (lengthCm: number, widthCm: number, depthCm: number): ItemDocument => ({
  id: 'case',
  massKg: 1,
  litres: 5,
  build: 'rigid',
  lengthCm,
  widthCm,
  depthCm,
})
const judged = (item: ItemDocument, more: Partial<PackDocument> = {}) =>
  reckoned(smallPlan({ gear: [item], packs: [{ ...pack, ...more }], water: noWater })).packs[0]!
const codes = (item: ItemDocument, more: Partial<PackDocument> = {}) =>
  judged(item, more).verdicts.filter(code => code === 'too-long' || code === 'too-wide')

describe('a box in a pack', () => {
  it('passes where it stands or lies, whichever side is called its length', () => {
    expect(codes(box(40, 20, 12))).toEqual([])
    expect(codes(box(12, 40, 20))).toEqual([])
    expect(codes(box(22, 25, 4), { innerHeightCm: 23 })).toEqual([])
  })

  it('is too wide where only a rounder pack would take it, and too long where only its length is in the way', () => {
    expect(codes(box(40, 28, 20))).toEqual(['too-wide'])
    expect(codes(box(40, 38, 30))).toEqual(['too-wide'])
    expect(codes(box(20, 90, 12))).toEqual(['too-long'])
    expect(judged(box(40, 28, 20)).suffices).toBe(false)
  })

  it('goes into corners that an oval has not', () => {
    expect(codes(box(40, 28, 20), { section: 'rectangle' })).toEqual([])
  })

  it('is not judged while a size of it or of the pack is missing', () => {
    const { depthCm: _depth, ...unknown } = box(20, 90, 60)
    expect(codes(unknown)).toEqual([])
    const { innerDepthCm: _inner, ...half } = pack
    const plan = smallPlan({ gear: [box(20, 90, 60)], packs: [half], water: noWater })
    expect(reckoned(plan).packs[0]!.verdicts).not.toContain('too-wide')
  })

  it('that is too wide is mended by carrying it outside', () => {
    const item = { ...box(40, 28, 20), mayRideOutside: true }
    const plan = smallPlan({ gear: [item], packs: [pack], water: noWater })
    const [remedy] = remediesFor(plan, reckoned(plan), 0)
    expect(remedy).toMatchObject({ kind: 'move-outside', move: ['case'] })
  })
})

describe('the new fields of a plan', () => {
  it('are optional, and refused by name, limit and choice where they make no sense', () => {
    const refused = (item: object, more: object) => {
      const parsed = parsePlan({
        ...documentOf({}),
        gear: [{ ...box(1, 1, 1), ...item }],
        packs: [{ ...pack, ...more }],
      })
      return parsed.ok ? [] : parsed.problems.map(({ path, message }) => `${path.join('.')}: ${message}`)
    }
    expect(refused({}, {})).toEqual([])
    expect(refused({ widthCm: 201 }, {})).toEqual(['gear.0.widthCm: write a number from 0 to 200 cm'])
    expect(refused({ depthCm: -1 }, {})).toEqual(['gear.0.depthCm: write a number from 0 to 200 cm'])
    expect(refused({}, { section: 'round' })).toEqual([
      'packs.0.section: write one of "ellipse", "rectangle"',
    ])
    const parsed = parsePlan({ ...documentOf({}), packs: [pack] })
    expect(parsed.ok && parsed.plan.packs[0]!.section).toBe('ellipse')
  })
})
