// The second copy in the page: what hinders it is said, and it goes on by itself when that is over.

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { startSecondCopy } from '../../src/store/second-copy/page'
import { wholeDraft } from '../plan/drafts'
import { diskOf, hangs } from './disk'
import { newDevice, openTab, rename, startTab, told, turns } from './tab'

beforeEach(() => {
  vi.stubGlobal('document', Object.assign(new EventTarget(), { visibilityState: 'visible' }))
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
})
afterEach(() => {
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

/** Lets this much time pass, and what it set going come to its end. */
async function pass(ms: number) {
  await vi.advanceTimersByTimeAsync(ms)
  await turns()
}

async function copied() {
  const disk = diskOf()
  const tab = await startTab(newDevice())
  tab.actions.createTrip(wholeDraft())
  await tab.flush()
  const start = () => startSecondCopy({ ...tab, lost: () => false })
  return { disk, tab, start }
}

describe('a place for the second copy that does not answer', () => {
  test('is said after five seconds, and used after the next save when it does', async () => {
    const { disk, tab, start } = await copied()
    disk.open = hangs
    void start()
    await pass(5000)
    expect(tab.state.copy.value).toEqual({
      kind: 'failed',
      why: 'the place where it lies does not answer',
    })
    disk.open = async () => {}
    rename(tab, 'Again')
    await tab.flush()
    await pass(3000)
    await vi.waitFor(() => expect(tab.state.copy.value).toMatchObject({ kind: 'kept', trips: 1 }))
  })

  test('because another tab holds it, too', async () => {
    const { tab, start } = await copied()
    Object.assign(navigator, { locks: { request: hangs } })
    void start()
    await pass(0)
    await pass(3000)
    await vi.waitFor(() =>
      expect(tab.state.copy.value).toEqual({
        kind: 'failed',
        why: 'another tab of the app holds it: close the other tabs',
      }),
    )
    Object.assign(navigator, { locks: undefined })
    rename(tab, 'Again')
    await tab.flush()
    await pass(3000)
    await vi.waitFor(() => expect(tab.state.copy.value).toMatchObject({ kind: 'kept', trips: 1 }))
  })

  test('while the browser says that it threw the database away: nothing more is said than that', async () => {
    const { disk, tab } = await copied()
    disk.open = hangs
    void startSecondCopy({ ...tab, lost: () => true })
    await pass(5000)
    expect(told(tab)).toMatch(/started it anew: .* the second copy cannot be read now/)
  })
})

test('while the database hangs, the second copy is not said to be not looked at', async () => {
  diskOf()
  const tab = openTab(newDevice(), { through: () => hangs as never })
  void tab.flush()
  await startSecondCopy({ ...tab, lost: () => false })
  expect(tab.state.copy.value).toEqual({
    kind: 'failed',
    why: 'the storage of this browser does not answer',
  })
})
