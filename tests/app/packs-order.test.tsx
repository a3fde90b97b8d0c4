// In which order packs stand: those of one answer together, by the figure asked for.

import { cleanup, render, screen } from '@testing-library/preact'
import fc from 'fast-check'
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import type { DraftPack } from '../../src/plan'
import { comparisonOf } from '../../src/report/compare-packs'
import { PacksScreen } from '../../src/screens/packs'
import { AS_LISTED, inOrder, ORDERS, type Order, view } from '../../src/screens/packs/view'
import { loadEngine } from '../../src/store'
import { demoDraft, draft, judged, openDraft, rowWords } from './compare-packs'

const noDetail = { detail: null }

beforeAll(loadEngine)
beforeEach(() => {
  view.value = AS_LISTED
})
afterEach(cleanup)

describe('the order of packs', () => {
  const names = () => [...document.querySelectorAll('.row .name')].map(element => element.textContent)

  test('best first puts those that do before those with care, and these before those that do not', () => {
    openDraft(demoDraft())
    view.value = { ...AS_LISTED, order: 'best' }
    render(<PacksScreen {...noDetail} />)
    expect(names()).toEqual(['Big old carrier', 'Two-way with removable frame', 'Small frameless'])
    expect(rowWords().map(words => words.slice(0, 4))).toEqual(['does', 'with', 'does'])
  })

  test('mixes the answers only where that is asked for', () => {
    openDraft(demoDraft())
    view.value = { ...AS_LISTED, order: 'mass' }
    const { unmount } = render(<PacksScreen {...noDetail} />)
    const answers = () =>
      [...document.querySelectorAll<HTMLElement>('.pack-row')].map(row => row.dataset.answer)
    expect(answers()).toEqual(['does', 'with-care', 'does-not'])
    unmount()
    view.value = { ...AS_LISTED, order: 'mass', mixed: true }
    render(<PacksScreen {...noDetail} />)
    // The carrier that does is the heaviest.
    expect(answers()).toEqual(['does-not', 'with-care', 'does'])
  })

  test('by price is cheapest first, and the filter leaves out what is dearer', () => {
    openDraft(demoDraft())
    view.value = { ...AS_LISTED, order: 'price', texts: { ...AS_LISTED.texts, mostPrice: '240' } }
    render(<PacksScreen {...noDetail} />)
    expect(names()).toEqual(['Big old carrier', 'Small frameless'])
    expect(screen.getByText(/2 of 3 packs shown/)).toBeTruthy()
  })

  test('never loses or doubles a pack, and puts what is not known last', () => {
    openDraft(demoDraft())
    const { plan, packIds, reckoning } = judged()
    const comparisons = comparisonOf(plan, reckoning, { massG: 1 })
    const of = (id: string) => comparisons.filter(c => packIds[c.pack] === id)
    const unknown: DraftPack = { id: 'x', setups: [{ id: 'y' }] }
    const orders = Object.keys(ORDERS) as Order[]
    const shuffled = fc.shuffledSubarray([...draft().packs, unknown], { minLength: 4 })
    fc.assert(
      fc.property(shuffled, fc.constantFrom(...orders), (packs, order) => {
        const sorted = inOrder(packs, order, of)
        expect(new Set(sorted)).toEqual(new Set(packs))
        expect(sorted).toHaveLength(packs.length)
        if (order === 'listed') expect(sorted).toEqual(packs)
        else expect(sorted.at(-1)).toBe(unknown)
      }),
    )
  })
})
