// The small pictures: letters that stay apart, steps and marks that stay inside, and words for all that is drawn.

import { cleanup, render, screen } from '@testing-library/preact'
import fc from 'fast-check'
import { afterEach, describe, expect, test } from 'vitest'
import { letters, type Mark, ReachPicture } from '../../src/components/graphics'
import { letterSpots } from '../../src/components/graphics/mark-letters'
import { openTables } from './details'

afterEach(cleanup)

const BOX = { stepPx: 14, left: 30, right: 300, top: 20, bottom: 200 }
const mark = fc.record({ x: fc.integer({ min: 30, max: 300 }), y: fc.integer({ min: 20, max: 200 }) })

describe('letters', () => {
  test('go on after Z and never repeat', () => {
    const many = letters(800)
    expect(many.slice(24, 29)).toEqual(['Y', 'Z', 'AA', 'AB', 'AC'])
    expect(new Set(many).size).toBe(800)
  })

  test('stay inside the picture beside their marks', () => {
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 30 }), marks => {
        letterSpots(marks, BOX).forEach(({ x, y }, i) => {
          expect(x).toBeGreaterThanOrEqual(BOX.left)
          expect(x).toBeLessThanOrEqual(BOX.right)
          expect(y).toBeGreaterThanOrEqual(BOX.top)
          expect(y).toBeLessThanOrEqual(BOX.bottom)
          expect(Math.hypot(x - marks[i]!.x, y - marks[i]!.y)).toBeLessThanOrEqual(2 * BOX.stepPx)
        })
      }),
    )
  })

  test('of two marks at one place do not lie on each other', () => {
    fc.assert(
      fc.property(mark, at => {
        const [a, b] = letterSpots([at, at], BOX)
        expect(Math.max(Math.abs(a!.x - b!.x), Math.abs(a!.y - b!.y))).toBeGreaterThan(10)
      }),
    )
  })
})

describe('a picture of marks', () => {
  const marks: Mark[] = [
    { letter: 'A', name: 'Red', words: 'will do', shape: 'dot', at: { x: 50, y: 12 } },
    { letter: 'B', name: 'Grey', words: 'beyond its reach, so not drawn', shape: 'cross', at: null },
  ]
  const picture = (
    <ReachPicture
      caption="Days against water"
      says="Two stretches."
      water={{ label: 'Water, L', max: 80 }}
      days={{ label: 'Days', max: 20 }}
      runs={[]}
      marks={marks}
      table={{
        heads: ['Water', 'Days'],
        rows: [
          ['50 L', '12'],
          ['60 L', '14'],
        ],
      }}
    />
  )

  test('draws what has a place and says the rest in its key and table', () => {
    render(picture)
    const drawing = screen.getByRole('img', { name: 'Two stretches.' })
    expect(drawing.querySelectorAll('.mark')).toHaveLength(1)
    expect([...document.querySelectorAll('.chart-key li')].map(entry => entry.textContent)).toEqual([
      'A Red: will do',
      'B Grey: beyond its reach, so not drawn',
    ])
    openTables()
    expect([...document.querySelectorAll('tbody tr')].map(row => row.textContent)).toEqual([
      '50 L12',
      '60 L14',
    ])
  })

  test('has its marks inside the axes', () => {
    render(picture)
    const drawing = screen.getByRole('img', { name: 'Two stretches.' })
    const dot = drawing.querySelector('circle.mark')!
    const at = (name: string) => Number(dot.getAttribute(name))
    expect(at('cx')).toBeGreaterThan(0)
    expect(at('cx')).toBeLessThan(Number(drawing.getAttribute('width')))
    expect(at('cy')).toBeGreaterThan(0)
    expect(at('cy')).toBeLessThan(Number(drawing.getAttribute('height')))
  })
})
