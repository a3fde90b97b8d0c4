import { get } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { addItem } from '../../src/plan'
import { addThing, type Shelf } from '../../src/plan/shelf'
import { createSecondCopy } from '../../src/store/second-copy/second-copy'
import { type Copied, gear, lose, twoTrips, vaultOf } from './copied'
import { nameOf, names, rename, startTab, told } from './tab'

describe('while the database does not answer', () => {
  /** A tab whose database answers only when told to, showing the copy. */
  async function lent(device: Copied) {
    let open = false
    const tab = await startTab(device, {
      through: use => (mode, callback) =>
        open ? use(mode, callback) : Promise.reject(new DOMException('', 'UnknownError')),
    })
    const secondCopy = createSecondCopy({ ...tab, vault: vaultOf(device), alone: work => work() })
    await secondCopy.check()
    const answer = async () => {
      open = true
      await tab.flush()
      await tab.flush()
    }
    return { ...tab, secondCopy, answer }
  }

  test('the copied trips are shown, and where they come from', async () => {
    const { device } = await twoTrips()
    const tab = await lent(device)
    expect(names(tab)).toEqual(['Lake', 'Ridge'])
    expect(tab.state.saveState.value).toMatchObject({
      kind: 'memory-only',
      message: expect.stringContaining('second copy'),
    })
  })

  test('when it answers, it has the last word', async () => {
    const { device, tab: before } = await twoTrips()
    rename(before, 'Newer than the copy')
    await before.flush()
    const tab = await lent(device)
    expect(nameOf(tab)).toBe('Ridge')
    await tab.answer()
    expect(names(tab)).toEqual(['Lake', 'Newer than the copy'])
    expect(tab.state.saveState.value).toEqual({ kind: 'saved' })
  })

  test('a shelf that it has lost is written before it is said to be saved', async () => {
    const { device, tab: before } = await twoTrips()
    const outside = { newId: before.newId, now: before.now() }
    before.actions.editShelf('Add', shelf => addThing(shelf, outside, { with: { name: 'Tent' } }))
    await before.keep()
    lose(device)
    const tab = await lent(device)
    expect(tab.state.shelf.value.things).toHaveLength(1)
    await tab.answer()
    expect(tab.state.saveState.value).toEqual({ kind: 'saved' })
    expect((await get<Shelf>('shelf', tab.use))?.things).toHaveLength(1)
    await tab.secondCopy.check()
    expect(told(tab)).not.toMatch(/differs|joined|older/)
    await tab.flush()
    expect((await startTab(device)).state.shelf.value.things).toHaveLength(1)
  })

  test('an edit made meanwhile takes the place of the state it was made from, after its undo steps', async () => {
    const { device, tab: before } = await twoTrips()
    before.actions.edit('Add item', draft => addItem(draft, () => 'new'))
    await before.keep()
    const tab = await lent(device)
    rename(tab, 'Meanwhile')
    await tab.answer()
    expect(names(tab)).toEqual(['Lake', 'Meanwhile'])
    tab.actions.undo()
    expect(nameOf(tab)).toBe('Ridge')
    expect(gear(tab)).toBe(4)
    tab.actions.undo()
    expect(gear(tab)).toBe(3)
    await tab.flush()
    expect(names(await startTab(device))).toEqual(['Lake', 'Ridge'])
  })

  test('an edit of an older copy goes beside the later state', async () => {
    const { device, tab: before } = await twoTrips()
    rename(before, 'Later')
    await before.flush()
    const tab = await lent(device)
    rename(tab, 'Meanwhile')
    await tab.answer()
    expect(names(tab).sort()).toEqual(['Lake', 'Later', 'Meanwhile (other tab)'])
  })

  test('a trip removed from the database does not come back by way of the copy', async () => {
    const { device, tab: before, lake } = await twoTrips()
    before.actions.removeTrip(lake)
    await before.flush()
    const tab = await lent(device)
    await tab.answer()
    expect(names(tab)).toEqual(['Ridge'])
  })
})
