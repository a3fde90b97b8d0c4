// Whether a thing may ride outside: yes, no, or nobody said.

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { factText } from '../../src/screens/gear/fact-words'
import { ItemEditor } from '../../src/screens/gear/ItemEditor'
import { actions, openTrip, reckoned } from '../../src/store'

afterEach(cleanup)

const item = () => openTrip.value!.draft.gear[0]!
function Live() {
  return <ItemEditor item={item()} />
}
const choices = () => within(screen.getByRole('group', { name: 'May be carried outside?' }))
const chosen = () => choices().getByRole('radio', { checked: true }).parentElement!.textContent
const choose = (name: string) => fireEvent.click(choices().getByRole('radio', { name }))

test('nobody has said until it is said, and it can be taken back', () => {
  actions.createTrip({ ...emptyDraft(), gear: [{ id: 'a', name: 'Shirt', massKg: 0.2, litres: 1 }] })
  render(<Live />)
  expect(chosen()).toBe('Not said')
  expect(reckoned.value!.plan.gear[0]!.mayRideOutside).toBeNull()
  choose('No')
  expect([item().mayRideOutside, reckoned.value!.plan.gear[0]!.mayRideOutside]).toEqual([false, false])
  choose('Yes')
  expect(item().mayRideOutside).toBe(true)
  choose('Not said')
  expect(item()).not.toHaveProperty('mayRideOutside')
})

test('is told apart in words', () => {
  const words = [undefined, true, false].map(said => factText('mayRideOutside', said, 'metric'))
  expect(words).toEqual(['not said', 'yes', 'no'])
})
