// How a rigid piece goes into a pack: the rules, their bounds, and searches that find the same without the formulas.
// Bounds are computed from plane geometry; the clearance and the order of the questions are our judgement.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fitRoom, type PackInner, type RigidPiece } from '../../src/equations'
import { value } from './cases'
import { boxy, can, fit, oval } from './fit-pieces'

describe('a rigid piece in a pack', () => {
  it('stands upright where its end goes into the section: Ø 22 × 30 cm in 32 × 24 cm (computed)', () => {
    expect(fit(can(22, 30), oval({ clearanceCm: 1 }))).toEqual({ verdict: 'upright' })
    expect(fit(can(24, 30), oval())).toEqual({ verdict: 'upright' })
    expect(fit(can(24, 30), boxy())).toEqual({ verdict: 'upright' })
    expect(fit({ shape: 'box', widthCm: 20, lengthCm: 15, depthCm: 50 }, oval())).toEqual({
      verdict: 'upright',
    })
  })

  it('needs its corners inside an oval, not only its sides', () => {
    const box: RigidPiece = { shape: 'box', lengthCm: 40, widthCm: 28, depthCm: 20 }
    expect(fit(box, boxy({ innerHeightCm: 41 })).verdict).toBe('upright')
    expect(fit(box, oval({ innerHeightCm: 41 })).verdict).not.toBe('upright')
    // (23.8/32)² + (16/24)² is just under 1, with 23.9 just over.
    const narrow = (widthCm: number) =>
      fit({ ...box, widthCm, depthCm: 16 }, oval({ innerHeightCm: 41 })).verdict
    expect([narrow(23.8), narrow(23.9)]).toEqual(['upright', 'deforms'])
  })

  it('needs 1 cm of clearance each way unless told otherwise (our judgement)', () => {
    const { clearanceCm: _none, ...inner } = oval({ innerHeightCm: 31 })
    expect(fit(can(23, 30), inner).verdict).toBe('upright')
    expect(fit(can(23.1, 30), inner).verdict).toBe('deforms')
    expect(fit(can(23, 30.1), inner).verdict).not.toBe('upright')
  })

  it('lies across where it is too long to stand, or its end too wide', () => {
    expect(fit(can(10, 25), oval({ innerHeightCm: 20 }))).toEqual({ verdict: 'only-lying', how: 'across' })
    expect(fit(can(26, 5), oval())).toEqual({ verdict: 'only-lying', how: 'across' })
    expect(fit({ shape: 'box', lengthCm: 30, widthCm: 28, depthCm: 4 }, oval({ innerHeightCm: 29 }))).toEqual(
      {
        verdict: 'only-lying',
        how: 'across',
      },
    )
  })

  it('leans where it is longer than the pack is high, but not than its diagonal', () => {
    const inner = boxy({ innerHeightCm: 50, innerWidthCm: 30, innerDepthCm: 20 })
    expect(fit(can(0.1, 61.4), inner)).toEqual({ verdict: 'only-lying', how: 'slanted' })
    expect(fit(can(0.1, 61.7), inner).verdict).toBe('too-long')
    expect(fit(can(3, 61), inner)).toMatchObject({ verdict: 'too-long' })
    expect(fit(can(0.1, 59), oval({ innerHeightCm: 50 }))).toEqual({ verdict: 'only-lying', how: 'slanted' })
    expect(fit(can(0.1, 59.5), oval({ innerHeightCm: 50 })).verdict).toBe('too-long')
  })

  it('deforms the pack while its girth is within the section’s: up to Ø 28.1 cm in 32 × 24 cm (computed)', () => {
    expect(fit(can(28.1, 30), oval())).toEqual({ verdict: 'deforms', how: 'upright' })
    const over = fit(can(28.2, 30), oval({ innerHeightCm: 31 }))
    expect(over).toMatchObject({ verdict: 'does-not-fit' })
    expect(over.verdict === 'does-not-fit' && over.byCm).toBeCloseTo(Math.PI * 28.2 - 88.41397, 4)
  })

  it('is too long where only its length is in the way, by as much', () => {
    expect(fit(can(22, 65), oval())).toEqual({ verdict: 'too-long', byCm: 5 })
  })

  it('lies the same way whichever order a box’s sides are given in', () => {
    const side = fc.double({ min: 1, max: 70, noNaN: true })
    fc.assert(
      fc.property(side, side, side, (a, b, c) => {
        const one = fit({ shape: 'box', lengthCm: a, widthCm: b, depthCm: c }, oval())
        expect(fit({ shape: 'box', lengthCm: c, widthCm: a, depthCm: b }, oval())).toEqual(one)
      }),
    )
  })

  const RANK = { upright: 0, 'only-lying': 1, deforms: 2, 'too-long': 3, 'does-not-fit': 3 }
  const size = fc.double({ min: 1, max: 60, noNaN: true })
  const anyPiece: fc.Arbitrary<RigidPiece> = fc.oneof(
    fc.tuple(size, size).map(([diameterCm, lengthCm]) => can(diameterCm, lengthCm)),
    fc.tuple(size, size, size).map(([a, b, c]) => ({
      shape: 'box' as const,
      lengthCm: a,
      widthCm: b,
      depthCm: c,
    })),
  )
  const share = fc.double({ min: 0.3, max: 1, noNaN: true })
  const section = fc.constantFrom('ellipse' as const, 'rectangle' as const)

  it('goes in no worse when it is smaller, nor when the pack is larger', () => {
    fc.assert(
      fc.property(anyPiece, section, share, share, (piece, shape, smaller, narrower) => {
        const shrunk = Object.fromEntries(
          Object.entries(piece).map(([key, side]) => [key, typeof side === 'number' ? side * smaller : side]),
        ) as unknown as RigidPiece
        const inner = oval({ section: shape })
        const less = oval({ section: shape, innerHeightCm: 60 * narrower, innerWidthCm: 32 * narrower })
        const rank = (one: RigidPiece, of: PackInner) => RANK[fit(one, of).verdict]
        expect(rank(shrunk, inner)).toBeLessThanOrEqual(rank(piece, inner))
        expect(rank(piece, inner)).toBeLessThanOrEqual(rank(piece, less))
      }),
      { numRuns: 300 },
    )
  })

  it('goes in no other way when width and depth of the pack change places', () => {
    fc.assert(
      fc.property(anyPiece, section, size, size, (piece, shape, widthCm, depthCm) => {
        const inner = oval({ section: shape, innerWidthCm: widthCm + 3, innerDepthCm: depthCm + 3 })
        const turned = { ...inner, innerWidthCm: depthCm + 3, innerDepthCm: widthCm + 3 }
        const [one, other] = [fit(piece, inner), fit(piece, turned)]
        expect(other.verdict).toBe(one.verdict)
        if ('byCm' in one && 'byCm' in other) expect(other.byCm).toBeCloseTo(one.byCm, 6)
      }),
    )
  })

  it('goes into a section with corners no worse than into an oval of the same width and depth', () => {
    fc.assert(
      fc.property(anyPiece, piece => {
        expect(RANK[fit(piece, boxy()).verdict]).toBeLessThanOrEqual(RANK[fit(piece, oval()).verdict])
      }),
    )
  })

  it('goes in just where its sizes are within the room that decides', () => {
    fc.assert(
      fc.property(anyPiece, section, (piece, shape) => {
        const inner = oval({ section: shape })
        const room = value(fitRoom(piece, inner))
        const { verdict } = fit(piece, inner)
        const easy = 1e-6
        fc.pre(Math.abs(room.longCm - room.heightCm) > easy && Math.abs(room.endCm - room.endRoomCm) > easy)
        const stands = room.longCm < room.heightCm && room.endCm < room.endRoomCm
        expect(verdict === 'upright').toBe(stands)
        if (stands) return
        const across = piece.shape === 'cylinder' ? piece.lengthCm : room.longCm
        fc.pre([room.lyingRoomCm - across, room.slantRoomCm - room.longCm].every(cm => Math.abs(cm) > easy))
        const goesIn = across < room.lyingRoomCm || room.longCm < room.slantRoomCm
        // A box may also lie on its middle side while its short one decides no room: never said where it goes in no way.
        if (piece.shape === 'cylinder') expect(verdict === 'only-lying').toBe(goesIn)
        else if (verdict === 'only-lying') expect(goesIn).toBe(true)
      }),
      { numRuns: 300 },
    )
  })

  it('leans just where a search over all angles finds room for it', () => {
    const thin = fc.double({ min: 0.5, max: 3, noNaN: true })
    fc.assert(
      fc.property(thin, section, (thickCm, shape) => {
        // A box as deep as the piece is thick; an oval leaves the piece the chord that is as wide as the piece.
        const inner = oval({ section: shape, innerHeightCm: 50, innerWidthCm: 30 })
        const flat = { ...inner, innerDepthCm: shape === 'ellipse' ? 24 : Math.max(3, thickCm) }
        const across =
          shape === 'ellipse'
            ? 30 * Math.sqrt(1 - (thickCm / 24) ** 2)
            : longestFlat(30, flat.innerDepthCm, thickCm)
        const room = longestFlat(50, across, thickCm)
        fc.pre(room > 50.1)
        const square = (lengthCm: number) =>
          fit({ shape: 'box', lengthCm, widthCm: thickCm, depthCm: thickCm }, flat).verdict
        expect([square(room - 0.01), square(room + 0.01)]).toEqual(['only-lying', 'too-long'])
      }),
      { numRuns: 60 },
    )
  })

  function longestFlat(longCm: number, shortCm: number, thickCm: number): number {
    let best = 0
    for (let i = 0; i <= 20_000; i++) {
      const angle = (i / 20_000) * (Math.PI / 2)
      const byLong = (longCm - thickCm * Math.sin(angle)) / Math.cos(angle)
      const byShort = angle === 0 ? Infinity : (shortCm - thickCm * Math.cos(angle)) / Math.sin(angle)
      best = Math.max(best, Math.min(byLong, byShort))
    }
    return best
  }
})
