// What another tab saves while a save of the shelf is under way is joined by that save, and by nothing before it.

import { expect, test } from 'vitest'
import { addThing, setThingFact } from '../../src/plan/shelf'
import { newDevice, startTab, type Tab, turns } from './tab'

const shelve = (tab: Tab, name: string) =>
  tab.actions.editShelf(`Add ${name}`, shelf =>
    addThing(shelf, { ...tab, now: tab.now() }, { with: { name } }),
  )
const things = (tab: Tab) =>
  tab.state.shelf.value.things.map(({ item: { name, massKg } }) => [name, massKg]).sort()

test('a thing that two saves of another tab have made is there once', async () => {
  const device = newDevice()
  const held: (() => void)[] = []
  const holds = { readwrite: false, readonly: false }
  const here = await startTab(device, {
    through: use => async (mode, callback) => {
      if (holds[mode as 'readwrite' | 'readonly']) await new Promise<void>(done => held.push(done))
      return use(mode, callback)
    },
  })
  const other = await startTab(device)
  shelve(here, 'Tent')
  await here.flush()
  await turns()
  holds.readwrite = true
  shelve(here, 'Lamp')
  const saving = here.flush()
  shelve(other, 'Mat')
  await other.flush()
  await turns()
  holds.readonly = true
  const mat = other.state.shelf.value.things.find(({ item }) => item.name === 'Mat')!
  other.actions.editShelf('Weigh it', shelf =>
    setThingFact(shelf, mat.id, { field: 'massKg', value: 0.4, now: other.now() }),
  )
  await other.flush()
  holds.readwrite = false
  holds.readonly = false
  for (const done of held) done()
  await saving
  await here.flush()
  await turns()
  const all = [
    ['Lamp', undefined],
    ['Mat', 0.4],
    ['Tent', undefined],
  ]
  expect(things(here)).toEqual(all)
  expect(things(await startTab(device))).toEqual(all)
})
