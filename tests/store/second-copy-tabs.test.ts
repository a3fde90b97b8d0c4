// The second copy, and what other tabs save meanwhile.

import { describe, expect, test } from 'vitest'
import { copiedTab, twoTrips } from './copied'
import { nameOf, names, rename, told } from './tab'

describe('a tab whose edit was joined to another tab’s while it was edited on', () => {
  /** The other tab has saved and copied; this one knows neither that nor, yet, what both have become. */
  async function joining() {
    const { device, tab } = await twoTrips()
    let afterSave = () => {}
    const late = await copiedTab(device, {
      through: use => async (mode, callback) => {
        const outcome = await use(mode, callback)
        if (mode === 'readwrite') afterSave()
        return outcome
      },
    })
    late.actions.openTripById(tab.state.library.value.open)
    await late.flush()
    device.channels.clear()
    rename(tab, 'Elsewhere')
    await tab.keep()
    const copied = new Map(device.files)
    late.actions.setField('carrier/massKg', 60, null)
    afterSave = () => {
      afterSave = () => {}
      late.actions.setField('carrier/heightCm', 160, null)
    }
    await late.flush()
    expect(nameOf(late)).toBe('Ridge')
    return { device, late, copied }
  }

  test('takes nothing for lost, and comes to hold both', async () => {
    const { device, late } = await joining()
    await late.secondCopy.check()
    expect(told(late)).toBe('')
    await late.flush()
    expect(names(late)).toEqual(['Lake', 'Elsewhere'])
    expect(names(await copiedTab(device))).toEqual(['Lake', 'Elsewhere'])
  })

  test('copies nothing of it that the database does not hold', async () => {
    const { device, late, copied } = await joining()
    await late.secondCopy.sync()
    const trips = (all: Iterable<string>) => [...all].filter(name => name.startsWith('trip'))
    expect(trips(device.files.keys())).toEqual(trips(copied.keys()))
  })
})
