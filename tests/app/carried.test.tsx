// The list beside the picture of the pack: what is carried at a moment, and together.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import type { DraftItem } from '../../src/plan'
import { NeedScreen } from '../../src/screens/need'
import { actions } from '../../src/store'
import { wholeDraft } from '../plan/drafts'

afterEach(cleanup)

const list = async (more: DraftItem[]) => {
  actions.createTrip({ ...wholeDraft(), gear: [...wholeDraft().gear, ...more] })
  render(<NeedScreen />)
  return screen.findByRole('list', { name: 'Carried then' })
}

test.each<[DraftItem, string]>([
  [{ id: 'rope', name: 'Rope', massKg: 1, litres: 2 }, 'Together'],
  [{ id: 'rope', name: 'Rope', massKg: 1 }, 'Together, litres at least'],
  [{ id: 'rope', name: 'Rope', litres: 2 }, 'Together, mass at least'],
  [{ id: 'rope', name: 'Rope' }, 'Together, at least'],
])('with %j the sum is told as “%s”', async (item, words) => {
  const carried = within(await list([item]))
  expect(carried.getByText(/^Together/).textContent).toBe(words)
})

test('a group that is called as the water stands beside it, and only the one touched is singled out', async () => {
  const carried = within(await list([{ id: 'can', name: 'Can', group: 'Water', massKg: 1, litres: 2 }]))
  expect(carried.getAllByText('Water')).toHaveLength(2)
  const hand = screen.getByRole('slider', { name: 'Layer in the pack' })
  const texts: string[] = []
  for (let layer = 0; layer < Number(hand.getAttribute('aria-valuemax')); layer++) {
    fireEvent.keyDown(hand, { key: layer === 0 ? 'Home' : 'ArrowUp' })
    texts.push(hand.getAttribute('aria-valuetext')!)
    expect(document.querySelectorAll('.carried .named')).toHaveLength(1)
  }
  expect(texts.filter(text => text.startsWith('Water,'))).toHaveLength(2)
})
