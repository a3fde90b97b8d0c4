// The field of many marks: nothing lies over anything, everything lies inside, and a thousand marks are a few shapes.

import { signal } from '@preact/signals'
import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import fc from 'fast-check'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { type FieldMark, FieldPicture, type FieldSpan } from '../../src/components/graphics'
import { overlaps } from '../../src/components/graphics/boxes'
import { nearestMark, placeMarks, shapePaths, stepMark } from '../../src/components/graphics/field-plan'
import { markGrid } from '../../src/components/graphics/mark-grid'
import { placeNames } from '../../src/components/graphics/mark-names'

afterEach(cleanup)

const FRAME = { left: 30, right: 630, top: 20, bottom: 260 }
const spot = fc.record({ x: fc.integer({ min: 30, max: 630 }), y: fc.integer({ min: 20, max: 260 }) })
const names = fc.array(fc.record({ at: spot, widthPx: fc.integer({ min: 8, max: 180 }) }), { maxLength: 25 })
const around = { ...FRAME, linePx: 15, radiusPx: 5 }

describe('names of marks', () => {
  test('lie on no other name, no mark and nothing that is taken, and leave the frame nowhere', () => {
    const box = fc.record({
      at: spot,
      w: fc.integer({ min: 1, max: 200 }),
      h: fc.integer({ min: 1, max: 60 }),
    })
    fc.assert(
      fc.property(
        names,
        fc.array(spot, { maxLength: 60 }),
        fc.array(box, { maxLength: 3 }),
        (named, others, boxes) => {
          const marks = [...named.map(({ at }) => at), ...others]
          const taken = boxes.map(({ at: { x, y }, w, h }) => ({
            left: x,
            right: x + w,
            top: y,
            bottom: y + h,
          }))
          const asked = named.map(({ at, widthPx }) => ({ ...at, widthPx }))
          const placed = placeNames(asked, markGrid(marks, around.radiusPx), { ...around, taken })
          placed.forEach((name, i) => {
            expect(name.right - name.left).toBe(asked[name.index]!.widthPx)
            expect(name.left >= 30 && name.right <= 630 && name.top >= 20 && name.bottom <= 260).toBe(true)
            for (const other of [...placed.slice(i + 1), ...taken]) expect(overlaps(name, other)).toBe(false)
            for (const { x, y } of marks)
              expect(overlaps(name, { left: x - 5, right: x + 5, top: y - 5, bottom: y + 5 })).toBe(false)
          })
        },
      ),
    )
  })

  test('have their place beside a mark that stands alone', () => {
    fc.assert(
      fc.property(spot, fc.integer({ min: 8, max: 180 }), (at, widthPx) => {
        expect(
          placeNames([{ ...at, widthPx }], markGrid([at], around.radiusPx), { ...around, taken: [] }),
        ).toHaveLength(1)
      }),
    )
  })
})

const scale = { x: (v: number) => 30 + 6 * v, y: (v: number) => 260 - 4 * v }
const value = fc.double({ min: 0, max: 120, noNaN: true })
const mark = fc.record({
  shape: fc.constantFrom('dot' as const, 'half-dot' as const, 'ring' as const, 'cross' as const),
  x: value,
  y: fc.option(value),
})
const keyed = (marks: Omit<FieldMark, 'key'>[]) => marks.map((each, i) => ({ ...each, key: `${i}` }))

describe('marks', () => {
  test('lie in the frame, and those of which one figure is not known in the strip under it', () => {
    fc.assert(
      fc.property(fc.array(mark), marks => {
        const strip = { top: 260, bottom: 290 }
        placeMarks(keyed(marks), { ...scale, ...FRAME }, strip).forEach(({ x, y }, i) => {
          expect(x >= 30 && x <= 630).toBe(true)
          if (marks[i]!.y === null) expect(y > 260 && y < 290).toBe(true)
          else expect(y >= 20 && y <= 260).toBe(true)
        })
      }),
    )
  })

  test('of one shape are one path, with a stroke for each', () => {
    const spots = Array.from({ length: 500 }, (_, i) => ({ x: i, y: i }))
    const strokes = (d: string) => d.match(/M/g)?.length ?? 0
    expect(strokes(shapePaths(spots, 'cross', 3).outline)).toBe(500)
    expect(strokes(shapePaths(spots, 'dot', 3).full)).toBe(500)
    const half = shapePaths(spots, 'half-dot', 3)
    expect([strokes(half.outline), strokes(half.full)]).toEqual([500, 500])
    expect(shapePaths(spots, 'ring', 3).full).toBe('')
  })

  test('are all reached by the arrow keys, each way', () => {
    fc.assert(
      fc.property(
        fc.array(spot, { minLength: 1 }),
        fc.constantFrom('x' as const, 'y' as const),
        (spots, along) => {
          for (const by of [1, -1]) {
            const seen = new Set<number>()
            let at = -1
            for (const _ of spots) {
              at = stepMark(spots, at, { by, along })
              seen.add(at)
            }
            expect(seen.size).toBe(spots.length)
          }
        },
      ),
    )
  })

  test('far from a touch are not meant by it', () => {
    expect(
      nearestMark(
        [
          { x: 0, y: 0 },
          { x: 30, y: 0 },
        ],
        { x: 18, y: 0 },
        22,
      ),
    ).toBe(1)
    expect(nearestMark([{ x: 0, y: 0 }], { x: 30, y: 0 }, 22)).toBe(-1)
  })
})

describe('the picture', () => {
  const draw = async (count: number, lit = signal<string | null>(null)) => {
    const shapes = ['dot', 'half-dot', 'ring', 'cross'] as const
    const marks = Array.from(
      { length: count },
      (_, i): FieldMark => ({
        key: `${i}`,
        shape: shapes[i % 4]!,
        x: 20 + ((i * 7) % 60),
        y: i % 9 === 8 ? null : (i * 3) % 30,
      }),
    )
    const doors = { onLit: vi.fn(), onOpen: vi.fn(), onSpan: vi.fn<(span: FieldSpan) => void>() }
    render(
      <FieldPicture
        says="Many packs."
        label="Packs on the chart"
        x={{ label: 'Litres', min: 10, max: 90 }}
        y={{ label: 'Load', max: 33 }}
        {...{ marks, lit, ...doors }}
        names={[{ key: '0', text: 'First' }]}
        corner={{ x: 44, lowX: 40, sureX: 48, y: 16, label: 'this trip' }}
        line={{ base: 2, slope: 0.3, text: 'full' }}
        chosen="1"
        area={null}
        textOf={key => `Pack ${key}`}
      />,
    )
    // The marks follow the frame around them.
    return { ...doors, hand: await screen.findByRole('slider', { name: 'Packs on the chart' }) }
  }

  test('is as many nodes with a thousand packs as with five', async () => {
    await draw(1000)
    const many = document.querySelectorAll('svg *').length
    cleanup()
    await draw(5)
    expect(many).toBeLessThan(document.querySelectorAll('svg *').length + 20)
    expect(many).toBeLessThan(90)
  })

  test('names a mark by keys, says it, and opens it by Enter', async () => {
    const lit = signal<string | null>('0')
    const { hand, onLit, onOpen } = await draw(5, lit)
    expect(hand.getAttribute('aria-valuetext')).toBe('Pack 0')
    fireEvent.keyDown(hand, { key: 'ArrowRight' })
    expect(onLit).toHaveBeenLastCalledWith('1')
    fireEvent.keyDown(hand, { key: 'Enter' })
    expect(onOpen).toHaveBeenCalledWith('0')
  })

  test('marks an area by dragging, in the units of its axes, and opens nothing', async () => {
    const { hand, onSpan, onLit, onOpen } = await draw(5)
    const at = (x: number, y: number) => ({ clientX: x, clientY: y, pointerType: 'mouse' })
    fireEvent.pointerDown(hand, at(60, 40))
    fireEvent.pointerMove(hand, at(200, 90))
    fireEvent.pointerUp(hand, at(200, 90))
    fireEvent.click(hand, at(200, 90))
    const { x, y } = onSpan.mock.calls[0]![0]
    expect(x[0]).toBeGreaterThan(10)
    expect(x[1]).toBeLessThan(90)
    expect(x[0] < x[1] && y[0] < y[1]).toBe(true)
    expect(onOpen).not.toHaveBeenCalled()
    expect(onLit).not.toHaveBeenCalled()
  })
})
