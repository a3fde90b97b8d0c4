// A list so long that its items are checked in portions before the trip is reckoned.

import { expect, test, vi } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { loadEngine } from '../../src/store/engine'
import { newDevice, startTab } from './tab'

const items = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    id: `i${i}`,
    name: `Thing ${i}`,
    massKg: 0.1,
    litres: 0.1,
  }))

test('ten thousand items are not reckoned in one go, but soon, and as any others; an edit of one at once', async () => {
  await loadEngine()
  const tab = await startTab(newDevice())
  const { reckoned } = tab.state
  tab.actions.createTrip({ ...emptyDraft(), gear: items(200) })
  expect(reckoned.value?.plan.gear).toHaveLength(200)
  tab.actions.createTrip({ ...emptyDraft(), gear: items(10_000) })
  expect(reckoned.value).toBeNull()
  await vi.waitFor(() => expect(reckoned.value?.plan.gear).toHaveLength(10_000), 60_000)
  expect(reckoned.value?.reckoned).toMatchObject({ ok: true })
  tab.actions.edit('Name', draft => ({
    ...draft,
    gear: draft.gear.map((item, i) => (i ? item : { ...item, massKg: 9 })),
  }))
  expect(reckoned.value?.plan.gear[0]?.massKg).toBe(9)
  tab.close()
})
