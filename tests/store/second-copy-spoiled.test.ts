// A second copy that was emptied, damaged or left behind outside the app: what is said of it is true after the next save.

import { expect, test } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { MANIFEST } from '../../src/store/second-copy/manifest'
import { copiedTab, files, lose, twoTrips } from './copied'
import { names, rename } from './tab'

const spoiled: [string, (files: Map<string, string>) => void][] = [
  ['emptied', files => files.clear()],
  ['left with its manifest only', files => keepOnly(files, name => name === MANIFEST)],
  ['left with its files only', files => void files.delete(MANIFEST)],
  ['left with another manifest', files => void files.set(MANIFEST, '{}')],
  ['cut short', files => cut(files, () => true)],
  ['left with one trip', files => keepOnly(files, name => name.startsWith('trip'), 1)],
]
const cut = (files: Map<string, string>, isCut: (name: string) => boolean) => {
  for (const [name, text] of files) if (isCut(name)) files.set(name, text.slice(0, 40))
}
const keepOnly = (
  files: Map<string, string>,
  isKept: (name: string) => boolean,
  most = Number.POSITIVE_INFINITY,
) => {
  let kept = 0
  for (const name of files.keys()) if (!isKept(name) || ++kept > most) files.delete(name)
}

test.each(spoiled)('that is %s behind the back of the app is whole after the next save', async (_, spoil) => {
  const { device, tab } = await twoTrips()
  tab.actions.createTrip({ ...emptyDraft(), name: 'Moor' })
  await tab.keep()
  spoil(device.files)
  rename(tab, 'Moor, edited')
  await tab.keep()
  expect(tab.state.copy.value).toMatchObject({ kind: 'kept', trips: 3 })
  lose(device)
  expect(names(await copiedTab(device)).sort()).toEqual(['Lake', 'Moor, edited', 'Ridge'])
})

test('a copy that was spoiled before the start is whole after it', async () => {
  const { device } = await twoTrips()
  cut(device.files, name => name.startsWith('trip'))
  await copiedTab(device)
  lose(device)
  expect(names(await copiedTab(device)).sort()).toEqual(['Lake', 'Ridge'])
})

test('a copy is not given a removed trip again by a tab that has not heard of its removal', async () => {
  const { device, tab, ridge } = await twoTrips()
  const deaf = await copiedTab(device)
  device.channels.clear()
  tab.actions.removeTrip(ridge)
  await tab.keep()
  deaf.actions.openTripById(deaf.state.tripList.value[0]!.id)
  rename(deaf, 'Lake, edited')
  await deaf.keep()
  expect(files(device).filter(name => name.includes(ridge))).toEqual([])
  expect(names(await copiedTab(device))).toEqual(['Lake, edited'])
})
