// What earlier versions of the app have stored: undo steps kept with each trip, and a page's last words of version 1.
// The records in fixtures/before-journal.json were written by that version.

import { keys, set } from 'idb-keyval'
import { describe, expect, test } from 'vitest'
import { PARTING, readRecord } from '../../src/store/documents'
import { raw } from './copied'
import records from './fixtures/before-journal.json'
import { nameOf, names, newDevice, rename, startTab, type Tab, told } from './tab'

async function olderDevice() {
  const device = newDevice()
  for (const [key, value] of Object.entries(records)) await set(key, value, raw(device))
  return device
}
const draftOf = (tab: Tab, name: string) => tab.state.tripList.value.find(({ draft }) => draft.name === name)
const areas = async (tab: Tab) => new Set((await keys<string>(tab.use)).map(key => key.split('/')[0]))

describe('undo steps stored with each trip', () => {
  test.each(['at once', 'when they have been stored anew'])(
    'are steps of the one journal, all to be undone and redone by name and in order: %s',
    async when => {
      const device = await olderDevice()
      if (when !== 'at once') await startTab(device)
      const tab = await startTab(device)
      expect([names(tab), told(tab)]).toEqual([['Valley', 'Sea'], ''])
      expect(draftOf(tab, 'Sea')?.draft.trip.water).toEqual({ campLitres: 3 })
      expect(await areas(tab)).toEqual(new Set(['library', 'step', 'trip']))
      const labels: (string | null)[] = []
      for (; tab.state.canUndo.value; tab.actions.undo()) labels.push(tab.state.lastLabel.value)
      expect(labels).toEqual(['Trip, name', 'Trip, name (in “Valley”)', 'Add item'])
      expect(names(tab)).toEqual(['Ridge', 'Lake'])
      expect(draftOf(tab, 'Ridge')?.draft.gear.some(({ id }) => id === 'map')).toBe(false)
      for (; tab.state.canRedo.value; tab.actions.redo()) labels.push(tab.state.redoLabel.value)
      expect(labels.slice(3).map(label => label?.replace(/ \(in.*/, ''))).toEqual([
        'Add item',
        'Trip, name',
        'Food, mass',
        'Trip, wet',
        'Trip, name',
      ])
      expect(draftOf(tab, 'Valley')).toMatchObject({
        draft: { trip: { wet: true } },
        typed: { 'gear/food/massKg': 'some' },
      })
      expect(names(tab)).toEqual(['Valley', 'Sea'])
    },
  )

  test('go on with what is done next', async () => {
    const device = await olderDevice()
    const tab = await startTab(device)
    rename(tab, 'Ocean')
    await tab.flush()
    const next = await startTab(device)
    next.actions.undo()
    next.actions.undo()
    expect(nameOf(next)).toBe('Lake')
  })

  test('two tabs that take them over at once make the same steps', async () => {
    const device = await olderDevice()
    device.channels.clear()
    const [a, b] = await Promise.all([startTab(device), startTab(device)])
    const ids = (tab: Tab) => tab.state.journal.value.map(({ id }) => id)
    expect(ids(a)).toEqual(ids(b))
    expect(ids(await startTab(device))).toEqual(ids(a))
    expect(ids(a)).toHaveLength(5)
  })
})

test('a page’s last words of version 1 are read as such of version 2, without shelf and steps', () => {
  const [stored] = Object.entries(records).flatMap(([key, value]) =>
    key.startsWith('parting') ? [value] : [],
  )
  expect(readRecord(PARTING, stored)).toEqual({
    ok: true,
    value: { ...stored, version: 2, shelf: null, steps: [] },
  })
})
