// Long lists and moving in them: what is drawn of thousands, and where a row goes by drag, by key and by button.

import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import fc from 'fast-check'
import { useMemo } from 'preact/hooks'
import { afterEach, describe, expect, test } from 'vitest'
import {
  type Entry,
  entryProps,
  Grip,
  LongList,
  movedTo,
  type Spot,
  useMover,
} from '../../src/components/long-list'
import { drawnIndices, slotAt, topsOf } from '../../src/components/long-list/slots'
import { spotBefore, spotByKey } from '../../src/components/long-list/spot'

afterEach(cleanup)

const heights = fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 200 })
const rows = (...keys: string[]): Entry[] =>
  keys.map(key => (key.startsWith('#') ? { key, heading: key.slice(1) } : { key }))

describe('slots', () => {
  test('lie one under the other, and each height is found in the slot that holds it', () => {
    fc.assert(
      fc.property(heights, fc.integer({ min: 0, max: 20 }), fc.nat(), (list, gap, seed) => {
        const tops = topsOf(list, gap)
        expect(tops.at(-1)).toBe(list.reduce((sum, height) => sum + height + gap, 0))
        const y = seed % tops.at(-1)!
        const at = slotAt(tops, y)
        expect(tops[at]!).toBeLessThanOrEqual(y)
        expect(tops[at + 1]!).toBeGreaterThan(y)
      }),
    )
  })

  test('beyond either end are the first and the last', () => {
    expect(slotAt(topsOf([10, 10, 10], 0), -5)).toBe(0)
    expect(slotAt(topsOf([10, 10, 10], 0), 500)).toBe(2)
    expect(slotAt(topsOf([], 0), 5)).toBe(0)
  })

  test('that are drawn are a stretch and what is held, in order, none twice, none that is not there', () => {
    expect(drawnIndices({ first: 3, last: 5 }, [9, -1, 4, 0, 12], 10)).toEqual([0, 3, 4, 5, 9])
    expect(drawnIndices({ first: 8, last: 40 }, [], 10)).toEqual([8, 9])
  })
})

describe('a place in a list with headings', () => {
  const list = rows('#A', 'a', 'b', '#B', 'c')

  test.each([
    ['b', 'ArrowUp', { prev: null, next: 'a', under: 'A' }],
    ['b', 'ArrowDown', { prev: null, next: 'c', under: 'B' }],
    ['c', 'ArrowUp', { prev: 'b', next: null, under: 'A' }],
    ['c', 'Home', { prev: null, next: 'a', under: 'A' }],
    ['a', 'End', { prev: 'c', next: null, under: 'B' }],
  ])('of %s by %s is %o', (key, pressed, spot) => {
    expect(spotByKey(list, key, pressed)).toEqual(spot)
  })

  test.each([
    ['a', 'ArrowUp'],
    ['c', 'ArrowDown'],
    ['a', 'Home'],
    ['c', 'End'],
    ['a', 'x'],
    ['a', 'toString'],
    ['gone', 'ArrowUp'],
  ])('of %s by %s is none', (key, pressed) => {
    expect(spotByKey(list, key, pressed)).toBeNull()
  })

  test('above all headings is under none', () => {
    expect(spotByKey(rows('a', '#B', 'b'), 'b', 'ArrowUp')).toEqual({ prev: 'a', next: null, under: null })
  })

  test('before itself or what follows it is where it is', () => {
    expect(spotBefore(list, 'b', 2)).toBeNull()
    expect(spotBefore(list, 'b', 3)).toBeNull()
  })

  test('is always where the row is then shown, and pressed on it comes from one end to the other', () => {
    const lists = fc
      .uniqueArray(fc.integer({ min: 0, max: 30 }), { minLength: 2, maxLength: 9 })
      .map(ids => ids.map(id => ({ id: String(id), group: id % 3 })))
    fc.assert(
      fc.property(lists, fc.nat(), (things, n) => {
        const id = things[n % things.length]!.id
        let now = [...things].sort((a, b) => a.group - b.group)
        const shown = () =>
          now.flatMap((thing, i): Entry[] => [
            ...(thing.group === now[i - 1]?.group
              ? []
              : [{ key: `#${thing.group}`, heading: `${thing.group}` }]),
            { key: thing.id },
          ])
        const press = (key: string): Spot | null => {
          const spot = spotByKey(shown(), id, key)
          const moved = { ...now.find(thing => thing.id === id)!, group: Number(spot?.under) }
          if (spot) now = movedTo(now, moved, spot)
          return spot
        }
        for (let i = 0; i < 40; i++) press('ArrowUp')
        expect(now[0]!.id).toBe(id)
        for (let i = 0; i < 40; i++) press('ArrowDown')
        expect(now.at(-1)!.id).toBe(id)
        expect(now.map(thing => thing.id).sort()).toEqual(things.map(thing => thing.id).sort())
        // Groups stay together: nothing is torn apart on the way.
        expect(now.map(thing => thing.group)).toEqual(now.map(thing => thing.group).sort())
      }),
    )
  })
})

describe('a list', () => {
  function List({ count, open = null }: { count: number; open?: string | null }) {
    const mover = useMover()
    const entries = Array.from({ length: count }, (_, i) => ({ key: `k${i}` }))
    return (
      <LongList
        entries={entries}
        open={open}
        mover={mover}
        draw={(at, of) => (
          <li key={`k${at}`} {...entryProps(`k${at}`, at, of)}>
            <Grip mover={mover} id={`k${at}`} name={`Row ${at}`} />
          </li>
        )}
      />
    )
  }

  test('of some rows is drawn whole, without telling places', () => {
    render(<List count={50} />)
    expect(screen.getAllByRole('button')).toHaveLength(50)
    expect(screen.getAllByRole('listitem')[0]!.hasAttribute('aria-setsize')).toBe(false)
  })

  test('of thousands is drawn in part, and each row says which of how many it is', () => {
    render(<List count={3000} />)
    const drawn = screen.getAllByRole('listitem')
    expect(drawn.length).toBeLessThan(200)
    expect(drawn[0]!.getAttribute('aria-setsize')).toBe('3000')
    expect(drawn[1]!.getAttribute('aria-posinset')).toBe('2')
  })

  test('keeps what is open drawn wherever it lies', () => {
    render(<List count={3000} open="k2500" />)
    expect(screen.getByRole('button', { name: 'Move Row 2500' })).toBeTruthy()
    expect(screen.queryByRole('button', { name: 'Move Row 2499' })).toBeNull()
  })

  test('keeps what has the focus drawn', () => {
    const drawn = render(<List count={3000} />)
    fireEvent.focusIn(screen.getByRole('button', { name: 'Move Row 3' }))
    drawn.rerender(<List count={2999} />)
    expect(screen.getByRole('button', { name: 'Move Row 3' })).toBeTruthy()
  })

  test('is not drawn anew while a row follows the pointer', () => {
    let draws = 0
    function Counted() {
      const mover = useMover()
      const entries = useMemo(() => rows('k0', 'k1'), [])
      mover.now.moving = { entries, onMove: () => {} }
      const draw = (at: number, of: number | undefined) => {
        draws++
        const key = `k${at}`
        return (
          <li key={key} {...entryProps(key, at, of)}>
            <Grip mover={mover} id={key} name={key} />
          </li>
        )
      }
      return <LongList entries={entries} open={null} mover={mover} draw={draw} />
    }
    const { container } = render(<Counted />)
    const grip = screen.getByRole('button', { name: 'Move k0' })
    grip.setPointerCapture = () => {}
    const point = (type: string, clientY: number) =>
      act(() => void fireEvent(grip, new MouseEvent(type, { bubbles: true, button: 0, clientY })))
    point('pointerdown', 10)
    point('pointermove', 30)
    expect(container.querySelector('.dragged')?.textContent).toBe('k0')
    const before = draws
    point('pointermove', 50)
    point('pointermove', 70)
    expect((container.querySelector('.dragged') as HTMLElement).style.insetBlockStart).toBe('70px')
    expect(draws).toBe(before)
    point('pointercancel', 70)
    expect(container.querySelector('.dragged')).toBeNull()
  })
})
