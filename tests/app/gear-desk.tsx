// The gear at a desk as tests draw it: three items in three groups, its cells, and the keys that are pressed on them.

import { fireEvent, render, screen } from '@testing-library/preact'
import { useState } from 'preact/hooks'
import { UndoBar } from '../../src/components/frame'
import type { DraftItem } from '../../src/plan'
import { GearScreen } from '../../src/screens/gear'
import { actions, openTrip } from '../../src/store'

export const gear = () => openTrip.value!.draft.gear
export const names = () => gear().map(({ name }) => name)
const plain = (text: string | null | undefined) => (text ?? '').replace(/[\u00a0\u202f]/g, ' ')
export const focused = () => document.activeElement as HTMLElement
export const press = (key: string, more: KeyboardEventInit = {}) =>
  fireEvent.keyDown(focused(), { key, ...more })
export const type = (text: string) => fireEvent.input(focused(), { target: { value: text } })

const COLUMNS = ['name', 'massKg', 'litres', 'count', 'stow', 'use', 'build', 'home', 'open'] as const
export const cell = (id: string, column: (typeof COLUMNS)[number]) =>
  document.querySelector<HTMLElement>(`[data-cell="${id}/${column}"]`)!
export const textOf = (id: string, column: (typeof COLUMNS)[number]) => plain(cell(id, column).textContent)
export const shownNames = () =>
  screen.getAllByRole('rowheader').flatMap(head => head.querySelector('bdi')?.textContent ?? [])

export const THREE: DraftItem[] = [
  { id: 'a', name: 'Tarp', massKg: 0.5, litres: 2, group: 'Shelter' },
  { id: 'b', name: 'Quilt', massKg: 0.74, litres: 6, group: 'Sleep' },
  { id: 'c', name: 'Mug', massKg: 0.06, group: 'Kitchen', count: 2 },
]

/** The screen at a desk, with what opens from it and what stands at its foot. */
function Desk() {
  const [detail, setDetail] = useState<string | null>(null)
  return (
    <>
      <GearScreen detail={detail} onDetail={setDetail} isDesk />
      <UndoBar />
    </>
  )
}

/** Draws the screen at a desk with a trip of these items. */
export function open(items: DraftItem[] = THREE) {
  actions.createTrip({ carrier: {}, trip: { stops: [] }, gear: items, packs: [] })
  return render(<Desk />)
}
