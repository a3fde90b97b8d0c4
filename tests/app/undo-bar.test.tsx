// The bar that offers the way back: after an undo, and once something else has been done.

import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { UndoBar } from '../../src/components/frame/UndoBar'
import { emptyDraft } from '../../src/plan'
import { actions, tripList } from '../../src/store'
import { createBackups } from '../../src/store/lazy/backups'
import { newId, state } from '../../src/store/start'
import { fileOf, MERGE } from '../store/kept'
import { newDevice, openTab } from '../store/tab'

afterEach(cleanup)

const backups = () => {
  state.loaded.value = true
  return createBackups({
    state,
    use: openTab(newDevice()).use,
    records: { erasure: { ofAll: null }, unread: new Set() },
    newId,
    now: () => 1e12,
    place: async () => null,
    alone: work => work(),
  })
}

test('the bar offers Redo after an undo, and no more once a backup is taken in', async () => {
  const kept = backups()
  actions.createTrip({ ...emptyDraft(), name: 'Ridge' })
  const file = fileOf(kept.contents())
  actions.removeTrip(tripList.value[0]!.id)
  render(<UndoBar />)
  fireEvent.click(screen.getByRole('button', { name: 'Undo' }))
  expect(screen.getByRole('status').textContent).toContain('Undone: Delete trip “Ridge”')
  expect(screen.getByRole('button').textContent).toBe('Redo')
  const another = { ...file, trips: file.trips.map(trip => ({ ...trip, id: 'other' })) }
  await act(async () => void (await kept.takeIn(another, MERGE, 'Backup merged')))
  expect(tripList.value).toHaveLength(2)
  expect(screen.queryByRole('button', { name: 'Redo' })).toBeNull()
})
