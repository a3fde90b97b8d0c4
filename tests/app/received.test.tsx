// A file from outside whose reader falls silent: it is said, and can be tried again.

import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { Received } from '../../src/screens/backup'
import type { LookTold } from '../../src/store/look/messages'

/** Readers that were started, in order. */
let started: SilentWorker[] = []
class SilentWorker {
  onmessage: ((event: { data: LookTold }) => void) | null = null
  isEnded = false
  constructor() {
    started.push(this)
  }
  postMessage() {}
  terminate() {
    this.isEnded = true
  }
}

beforeEach(() => {
  started = []
  vi.stubGlobal('Worker', SilentWorker)
  // Another test may have left the page at an address that no worker can be found from.
  vi.stubGlobal('location', new URL('http://localhost/'))
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] })
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})

const button = (name: string) => screen.queryByRole('button', { name })
/** The worker's module is had before it starts. */
const begun = () => act(() => vi.dynamicImportSettled())
const pass = (ms: number) => act(async () => void (await vi.advanceTimersByTimeAsync(ms)))

test('a file that is read for ever is given up, can be tried again, and then be read', async () => {
  render(<Received file={new File(['{}'], 'plan.json')} onDone={() => {}} />)
  await begun()
  await pass(59_000)
  expect(screen.getByText('Reading…')).toBeTruthy()
  await pass(2000)
  expect(screen.getByText(/nothing had been heard of it for 60 seconds/)).toBeTruthy()
  expect(started[0]?.isEnded).toBe(true)
  expect(button('Go on without it')).toBeTruthy()
  fireEvent.click(button('Try again')!)
  await begun()
  expect(screen.getByText('Reading…')).toBeTruthy()
  const text = JSON.stringify({ kind: 'unread', problems: ['It is empty.'] })
  await act(async () => started[1]?.onmessage?.({ data: { kind: 'done', text } }))
  expect(screen.getByText('It is empty.')).toBeTruthy()
  expect(button('Try again')).toBeNull()
})
