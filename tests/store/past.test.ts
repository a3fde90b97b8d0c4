// Earlier states of a trip, as undo would bring them back.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addItem, mark, moveItem, removeItem, setField } from '../../src/plan'
import { contentsOf } from '../../src/store/journal'
import { pastStates } from '../../src/store/past/states'
import { counter, wholeDraft } from '../plan/drafts'
import { newDevice, startTab } from './tab'

type Tab = Awaited<ReturnType<typeof startTab>>

const edits: Record<string, (tab: Tab, n: number) => void> = {
  weigh: ({ actions }, n) => actions.setField('gear/box/massKg', n / 10, null),
  text: ({ actions }, n) => actions.setField('gear/box/litres', undefined, `about ${n}`),
  add: ({ actions }, n) => actions.edit('Add', draft => addItem(draft, counter(`${n}-`), { at: n % 3 })),
  remove: ({ actions }) => actions.edit('Delete', draft => removeItem(draft, draft.gear.at(-1)?.id ?? '')),
  move: ({ actions }, n) => actions.edit('Move', draft => moveItem(draft, draft.gear[0]?.id ?? '', n)),
  note: ({ actions }, n) => actions.edit('Tick', draft => mark(draft, 'packed', `${n}`, n % 3 > 0)),
  rename: ({ actions }, n) => actions.edit('Rename', draft => setField(draft, 'name', `Trip ${n}`)),
  shelf: ({ actions }, n) =>
    actions.editShelf('Shelf', shelf => ({ ...shelf, bases: [{ id: `${n}`, name: '', lines: [] }] })),
  other: ({ actions, state }) => {
    const { open } = state.library.value
    actions.createTrip(wholeDraft())
    actions.setField('name', 'Another', null)
    actions.openTripById(open)
  },
  undo: ({ actions, state }) => {
    const { open } = state.library.value
    actions.undo()
    if (state.trips.value.has(open ?? '')) actions.openTripById(open)
  },
}
const aWay = fc.array(fc.tuple(fc.constantFrom(...Object.keys(edits)), fc.nat(9)), { maxLength: 12 })

test('the states of a trip are those that undo goes back through, latest first, whatever else was done between', async () => {
  await fc.assert(
    fc.asyncProperty(aWay, async way => {
      const tab = await startTab(newDevice())
      const id = tab.actions.createTrip(wholeDraft())
      for (const [what, n] of way) if (tab.state.trips.value.has(id)) edits[what]!(tab, n)
      const trip = tab.state.trips.value.get(id)
      if (!trip) return
      const told = [...pastStates(trip, tab.state.journal.value)].map(({ label, draft, typed }) => ({
        label,
        draft,
        typed,
      }))
      const seen: typeof told = []
      for (;;) {
        const [label, before] = [tab.state.lastLabel.value, tab.state.trips.value.get(id)!]
        tab.actions.undo()
        const after = tab.state.trips.value.get(id)
        if (!after || !tab.state.canUndo.value) break
        if (after !== before && JSON.stringify(contentsOf(after)) !== JSON.stringify(contentsOf(before)))
          seen.push({ label: label!.replace(/ \(in .*/, ''), ...contentsOf(after) })
      }
      // What only notes something, as a tick does, is told of by itself nowhere.
      expect(told).toEqual(seen.filter(({ label }) => label !== 'Tick'))
    }),
    { numRuns: 60 },
  )
})

describe('a step that does not fit', () => {
  test('ends it: what lies before is not told', async () => {
    const tab = await startTab(newDevice())
    tab.actions.createTrip(wholeDraft())
    for (const n of [1, 2, 3]) edits.rename!(tab, n)
    const { journal, openTrip } = tab.state
    const broken = journal.value.map((step, i) =>
      i === 2 ? { ...step, parts: step.parts.map(part => ({ ...part, patch: { list: null } })) } : step,
    ) as typeof journal.value
    expect([...pastStates(openTrip.value!, broken)].map(({ draft }) => draft.name)).toEqual(['Trip 2'])
  })
})
