// Typing: the field has what was typed at once, the reckoning follows, and nothing else ever finds it behind.

import { effect } from '@preact/signals'
import { expect, test } from 'vitest'
import { emptyDraft, removeItem } from '../../src/plan'
import { createActions } from '../../src/store/actions'
import { loadEngine } from '../../src/store/engine'
import { createState } from '../../src/store/state'

await loadEngine()

function opened() {
  let [at, ids] = [0, 0]
  const state = createState()
  const actions = createActions(state, { now: () => ++at, newId: () => `id${++ids}` })
  const item = (id: string) => ({ id, name: id, massKg: 1, litres: 1 })
  actions.createTrip({ ...emptyDraft(), gear: [item('tent'), item('stove')] })
  const waiting: (() => void)[] = []
  state.pace.follow(run => waiting.push(run))
  const seen: (number | undefined)[] = []
  effect(() => {
    seen.push(state.reckoned.value?.plan.gear.reduce((sum, { massKg }) => sum + massKg, 0))
  })
  const type = (massKg: number) => state.pace.typing(() => actions.setField('gear/tent/massKg', massKg, null))
  const painted = () => {
    for (const run of waiting.splice(0)) run()
  }
  const draftKg = () => state.edited.value.draft.gear[0]!.massKg
  return { state, actions, type, painted, seen, draftKg, waiting }
}

test('what is typed is in the draft at once, and reckoned once the page has shown it', () => {
  const { state, type, painted, seen, draftKg } = opened()
  expect([seen, state.pace.isBehind.value]).toEqual([[2], false])
  type(5)
  expect([draftKg(), seen, state.pace.isBehind.value]).toEqual([5, [2], true])
  painted()
  expect([seen, state.pace.isBehind.value]).toEqual([[2, 6], false])
})

test('keys that come faster than pages are painted are reckoned together, and none puts it off', () => {
  const { type, painted, seen, waiting } = opened()
  for (const kg of [2, 3, 4]) type(kg)
  expect(waiting).toHaveLength(1)
  painted()
  expect(seen).toEqual([2, 5])
  type(7)
  painted()
  expect(seen).toEqual([2, 5, 8])
})

test('whatever else is done meanwhile is reckoned at once, with what was typed', () => {
  const { state, actions, type, painted, seen } = opened()
  type(3)
  actions.edit('Remove', draft => removeItem(draft, 'stove'))
  expect([seen, state.pace.isBehind.value]).toEqual([[2, 3], false])
  type(4)
  actions.undo()
  expect(seen.at(-1)).toBe(3)
  painted()
  expect(seen.at(-1)).toBe(3)
})

test('another trip that is opened meanwhile is reckoned as itself', () => {
  const { actions, type, seen } = opened()
  type(3)
  actions.createTrip({ ...emptyDraft(), gear: [{ id: 'bag', name: 'Bag', massKg: 9, litres: 1 }] })
  expect(seen.at(-1)).toBe(9)
})

test('until it is told to follow, all is reckoned at once', () => {
  const state = createState()
  const actions = createActions(state, { now: () => 1, newId: () => 'a' })
  actions.createTrip({ ...emptyDraft(), gear: [{ id: 'tent', name: 'Tent', massKg: 1, litres: 1 }] })
  state.pace.typing(() => actions.setField('gear/tent/massKg', 4, null))
  expect(state.reckoned.value?.plan.gear[0]?.massKg).toBe(4)
})
