// A list of packs: a row each that opens its page, and counts that filter them.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import type { DraftItem } from '../../src/plan'
import { PacksScreen } from '../../src/screens/packs'
import { AS_LISTED, view } from '../../src/screens/packs/view'
import { library, loadEngine } from '../../src/store'
import { demoDraft, openDraft, pageOf, rowWords } from './compare-packs'

const noDetail = { detail: null }

beforeAll(loadEngine)
beforeEach(() => {
  view.value = AS_LISTED
})
afterEach(cleanup)

describe('a long list of packs', () => {
  const many = (count: number, gearOf = (gear: DraftItem[]) => gear) => {
    const { packs, ...rest } = demoDraft()
    const all = Array.from({ length: count }, (_, i) => {
      const pack = packs[i % packs.length]!
      return {
        ...pack,
        id: `${pack.id}-${i}`,
        name: `${pack.name} ${i}`,
        setups: pack.setups.map(setup => ({ ...setup, id: `${setup.id}-${i}` })),
      }
    })
    openDraft({ ...rest, gear: gearOf(rest.gear), packs: all })
  }
  const rows = () => [...document.querySelectorAll('.row')]

  test('is a row a pack, with its answer in it, that opens its page', () => {
    many(9)
    const { rerender } = render(<PacksScreen {...noDetail} />)
    expect(document.querySelectorAll('.verdict')).toHaveLength(0)
    expect(rowWords()).toHaveLength(9)
    for (const words of rowWords()) expect(words).toMatch(/^(does|with care|can’t tell|does not)/)
    fireEvent.click(rows()[0]!.querySelector('.door')!)
    expect(library.value.place).toMatchObject({ screen: 'packs', detail: pageOf().detail })
    rerender(<PacksScreen {...pageOf()} />)
    expect(document.querySelectorAll('.pack-page .verdict').length).toBeGreaterThan(0)
    expect(rows()).toHaveLength(0)
  })

  test('draws its bars against what is known to be needed alone', () => {
    const marks = () => document.querySelectorAll('.row-bars .bar-need').length
    many(9)
    const { unmount } = render(<PacksScreen {...noDetail} />)
    expect(marks()).toBe(18)
    unmount()
    many(9, gear => [...gear, { id: 'bag', name: 'Bag of bits', massKg: 0.4 }])
    const open = render(<PacksScreen {...noDetail} />)
    expect(marks()).toBe(9)
    expect(document.querySelectorAll('.row-bars')).toHaveLength(9)
    open.unmount()
    many(9, () => [])
    render(<PacksScreen {...noDetail} />)
    expect(rows()).toHaveLength(9)
    expect(document.querySelectorAll('.row-bars')).toHaveLength(0)
  })

  test('shows those alone whose count is tapped, and all again', () => {
    many(9)
    render(<PacksScreen {...noDetail} />)
    const counts = screen.getByRole('group', { name: 'Show only' })
    const tap = (words: RegExp) => fireEvent.click(within(counts).getByRole('button', { name: words }))
    tap(/do not$/)
    for (const words of rowWords()) expect(words).toMatch(/^does not: /)
    expect(rows().length).toBeLessThan(9)
    tap(/do not$/)
    expect(rows()).toHaveLength(9)
  })

  test('has the figure it is sorted by in each row', () => {
    many(9)
    view.value = { ...AS_LISTED, order: 'rated-kg' }
    render(<PacksScreen {...noDetail} />)
    const figures = [...document.querySelectorAll('.row-figure')].map(figure => figure.textContent)
    expect(figures).toHaveLength(9)
    for (const figure of figures) expect(figure).toMatch(/^([\d.]+\sg\/kg|–not known)$/)
  })

  test('tells no figure of a set-up that the answer beside it is not of', () => {
    many(9)
    view.value = { ...AS_LISTED, order: 'carried' }
    render(<PacksScreen {...noDetail} />)
    const texts = rows().flatMap(row =>
      /^.Two-way/.test(row.textContent!) ? [row.textContent!.replace(/\s/g, ' ')] : [],
    )
    expect(texts).toHaveLength(3)
    // With its frame it does, with care; without, 0.3 kg lighter, it does not.
    for (const text of texts) expect(text).toMatch(/17\.2 kgwith care: /)
  })
})
