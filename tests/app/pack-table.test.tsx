// The table of packs at a desk: it sorts within the answers, remembers its columns, and draws what is near its window.

import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { formatsIn } from '../../src/report'
import { comparisonOf, judgedPacks, linesOf } from '../../src/report/compare-packs'
import { PacksScreen } from '../../src/screens/packs'
import { markArea } from '../../src/screens/packs/chart'
import { PackTable } from '../../src/screens/packs/table'
import { AS_ANSWERED, order } from '../../src/screens/packs/table/order'
import { AS_LISTED, view } from '../../src/screens/packs/view'
import { actions, library } from '../../src/store'
import { demoDraft, draft, judged, openDraft, plain } from './compare-packs'
import { openDetails } from './details'

beforeEach(() => {
  order.value = AS_ANSWERED
  view.value = AS_LISTED
  markArea(null)
})
afterEach(cleanup)

/** The demo with so many packs, of which every fifth is set aside. */
function many(count: number) {
  const { packs, ...rest } = demoDraft()
  const all = Array.from({ length: count }, (_, i) => {
    const { setups, ...pack } = packs[i % packs.length]!
    const [setup] = setups
    const massKg = 0.5 + ((i * 37) % 100) / 100
    return {
      ...pack,
      id: `pack-${i}`,
      name: `Pack number ${i}`,
      ...(i % 5 === 4 && { aside: 'strap dug in' }),
      setups: [{ ...setup!, id: `setup-${i}`, massKg }],
    }
  })
  openDraft({ ...rest, packs: all })
}

function drawTable(more: { narrow?: boolean; chosen?: string } = {}) {
  const { plan, packIds, reckoning } = judged()
  const comparisons = comparisonOf(plan, reckoning)
  const { packs } = draft()
  const found = judgedPacks(packs, { plan, reckoning, comparisons, packIds })
  const lines = linesOf(packs, { plan, reckoning, comparisons, judged: found })
  const onOpen = vi.fn()
  render(
    <PackTable
      {...{ lines, plan, onOpen }}
      formats={formatsIn('metric')}
      chosen={more.chosen ?? null}
      narrow={more.narrow ?? false}
    />,
  )
  return { lines, onOpen }
}

const rows = () => [...document.querySelectorAll<HTMLElement>('[data-row]')]
const texts = (row: HTMLElement) => [...row.children].map(cell => plain(cell.textContent ?? ''))
const heads = () => screen.getAllByRole('columnheader').map(head => plain(head.textContent ?? ''))
const head = (name: RegExp) => screen.getByRole('columnheader', { name })
const press = (name: RegExp) => fireEvent.click(head(name).querySelector('button')!)
const marks = () => rows().map(row => row.querySelector('.answer-mark')?.textContent)

describe('sorting', () => {
  test('keeps what does first, whichever the column and the way, until answers are mixed', () => {
    many(18)
    drawTable()
    const masses = () =>
      rows().flatMap(row => (row.querySelector('s') ? [] : Number(texts(row)[6]!.replace(/ .*/, ''))))
    const together = () => marks().filter((mark, i, all) => mark !== all[i - 1]).length
    const kinds = new Set(marks()).size
    press(/^Mass/)
    expect(head(/^Mass/).getAttribute('aria-sort')).toBe('ascending')
    // Those set aside stand after the others, and are in their own order.
    expect(together()).toBeLessThanOrEqual(2 * kinds)
    press(/^Mass/)
    expect(head(/^Mass/).getAttribute('aria-sort')).toBe('descending')
    expect(together()).toBeLessThanOrEqual(2 * kinds)
    expect(
      screen.getAllByRole('columnheader').filter(each => each.ariaSort || each.getAttribute('aria-sort')),
    ).toHaveLength(1)
    fireEvent.click(screen.getByRole('checkbox', { name: 'Mix answers when sorting' }))
    expect(masses().length).toBeGreaterThan(10)
    const grams = rows().flatMap(row => {
      const [, amount, unit] = /^([\d.]+) (k?g)$/.exec(texts(row)[6]!)!
      return row.querySelector('s') ? [] : [Number(amount) * (unit === 'kg' ? 1000 : 1)]
    })
    expect(grams).toEqual([...grams].sort((a, b) => b - a))
  })

  test('has what is better at the top first: the most to spare, the least mass', () => {
    many(6)
    drawTable()
    press(/^To spare ?, load/)
    expect(head(/^To spare ?, load/).getAttribute('aria-sort')).toBe('descending')
    press(/^Price/)
    expect(head(/^Price/).getAttribute('aria-sort')).toBe('ascending')
  })
})

describe('a row', () => {
  test('has a mark, a reason with its number, and is struck through where it is set aside', () => {
    many(10)
    drawTable()
    const aside = rows().filter(row => row.querySelector('s'))
    expect(aside).toHaveLength(2)
    expect(rows().slice(-2)).toEqual(aside)
    for (const row of aside) expect(texts(row)[1]).toContain('“strap dug in”')
    const fails = rows().filter(
      row => row.querySelector('.answer-mark')?.textContent === '×' && !row.querySelector('s'),
    )
    expect(fails.length).toBeGreaterThan(0)
    for (const row of fails) expect(texts(row)[1]).toMatch(/^Does not: .*\d/)
  })

  test('opens its pack, by a tap and from the keyboard', () => {
    many(6)
    const { lines, onOpen } = drawTable()
    const name = rows()[1]!.querySelector('bdi, s')!.textContent
    fireEvent.click(rows()[1]!.querySelector('th button')!)
    expect(onOpen).toHaveBeenCalledExactlyOnceWith(lines.find(line => line.name === name)!.packId)
  })

  test('is one stop of the tab key, left and reached by the arrows', () => {
    many(60)
    drawTable()
    const stops = () => rows().filter(row => row.querySelector<HTMLElement>('th button')!.tabIndex === 0)
    expect(stops()).toHaveLength(1)
    const button = stops()[0]!.querySelector('button')!
    act(() => button.focus())
    const key = (name: string) => fireEvent.keyDown(document.activeElement!, { key: name })
    const at = () => document.activeElement?.closest<HTMLElement>('[data-row]')?.dataset.row
    key('ArrowDown')
    key('ArrowDown')
    expect(at()).toBe('2')
    key('ArrowUp')
    expect(at()).toBe('1')
    key('End')
    expect(at()).toBe('59')
    key('Home')
    expect(at()).toBe('0')
    expect(stops()).toHaveLength(1)
  })
})

describe('the columns', () => {
  test('are chosen from all figures, and kept on the device', () => {
    many(6)
    drawTable()
    expect(heads().slice(0, 4)).toEqual(['Pack', 'For this trip▲', 'Body', 'To spare, litres'])
    openDetails(screen.getByText(/^Columns: /))
    fireEvent.click(screen.getByRole('checkbox', { name: 'Carried mass' }))
    fireEvent.click(screen.getByRole('checkbox', { name: 'Price' }))
    expect(heads()).toContain('Carried')
    expect(heads()).not.toContain('Price')
    expect(library.value.packColumns).toContain('carried')
    cleanup()
    drawTable()
    expect(heads()).toContain('Carried')
    expect(heads()).not.toContain('Price')
    actions.setPackColumns(['body', 'spare-litres', 'mass'])
  })

  test('beside an open page are the name, the answer and the figure sorted by', () => {
    many(6)
    order.value = { ...AS_ANSWERED, by: 'price' }
    drawTable({ narrow: true, chosen: 'pack-2' })
    expect(heads()).toEqual(['Pack', 'For this trip', 'Price▲'])
    const [chosen, ...others] = rows().filter(row => row.getAttribute('aria-current') === 'true')
    expect(others).toEqual([])
    expect(chosen!.textContent).toContain('Pack number 2')
  })
})

test('of a thousand packs those near the window are drawn, and their number is told', () => {
  many(1000)
  drawTable()
  expect(rows().length).toBeGreaterThan(10)
  expect(document.querySelectorAll('*').length).toBeLessThan(1500)
  expect(screen.getByRole('table').getAttribute('aria-rowcount')).toBe('1001')
  const first = rows()[0]!.textContent
  press(/^Mass/)
  press(/^Mass/)
  expect(rows()[0]!.textContent).not.toBe(first)
  expect(document.querySelectorAll('*').length).toBeLessThan(1500)
})

test('an area marked on the chart leaves its packs in the table, and all come back', () => {
  many(9)
  render(<PacksScreen detail={null} isDesk />)
  expect(rows()).toHaveLength(9)
  openDetails(screen.getByText('Show a part only'))
  fireEvent.input(screen.getByRole('textbox', { name: /^Main body, from/ }), { target: { value: '50' } })
  const left = rows().length
  expect(left).toBeGreaterThan(0)
  expect(left).toBeLessThan(9)
  fireEvent.click(screen.getByRole('button', { name: 'Show all again' }))
  expect(rows()).toHaveLength(9)
})
