// A part of the app that is fetched when it is first opened, with a network that comes and goes.

import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { render as draw } from 'preact'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { later } from '../../src/components/frame'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})

const Part = () => <p>The part</p>

/** A part that fails to come so many times. */
function failing(times: number) {
  let tries = 0
  const Later = later(async () => {
    if (++tries <= times) throw new TypeError('Failed to fetch')
    return Part
  })
  return { Later, tries: () => tries }
}
const pass = (ms: number) =>
  act(async () => {
    await vi.advanceTimersByTimeAsync(ms)
  })
const said = () => screen.getByRole('status').textContent

test('what cannot be fetched says so, and comes by itself once the network answers', async () => {
  const { Later, tries } = failing(3)
  render(<Later />)
  await pass(0)
  expect(said()).toMatch(/not on the device yet. The network does not answer/)
  await pass(2000 + 4000 + 8000)
  expect(tries()).toBe(4)
  expect(screen.getByText('The part')).toBeTruthy()
})

test.each([
  ['by a tap', () => fireEvent.click(screen.getByRole('button', { name: 'Try now' }))],
  ['when the device is back online', () => dispatchEvent(new Event('online'))],
])('it is tried at once %s', async (_, again) => {
  const { Later, tries } = failing(1)
  render(<Later />)
  await pass(0)
  act(() => void again())
  await pass(0)
  expect([tries(), screen.getByText('The part').textContent]).toEqual([2, 'The part'])
})

test('what does not answer at all says that it waits', async () => {
  const Later = later(() => new Promise<typeof Part>(() => {}))
  render(<Later />)
  expect(said()).toBe('Opening…')
  await pass(4000)
  expect(said()).toMatch(/^Still opening/)
})

test('nothing is tried any more once the place is left', async () => {
  const { Later, tries } = failing(99)
  const { unmount } = render(<Later />)
  await pass(0)
  unmount()
  await pass(60_000)
  dispatchEvent(new Event('online'))
  await pass(0)
  expect(tries()).toBe(1)
})

test('is drawn where it comes ahead of time, between the first picture and the first look for it', async () => {
  const Later = later(async () => Part)
  // Not by the test library, which would let the look come at once.
  draw(<Later />, document.body)
  Later.ahead()
  await vi.advanceTimersByTimeAsync(1000)
  expect(screen.getByText('The part')).toBeTruthy()
  draw(null, document.body)
})
