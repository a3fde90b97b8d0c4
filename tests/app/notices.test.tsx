// Notices come and go above everything else: not while a finger is down, or the tap would miss.

import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { Notices } from '../../src/components/frame'
import { actions, storeProblem } from '../../src/store'
import { state } from '../../src/store/start'

afterEach(cleanup)

const aWhile = () => act(() => new Promise<void>(done => setTimeout(done, 5)))

test('nothing comes or goes above a button that is pressed', async () => {
  render(<Notices />)
  await aWhile()
  fireEvent.pointerDown(document.body)
  await act(() => state.tell('A record is damaged.'))
  expect(screen.queryByText(/damaged/)).toBeNull()
  fireEvent.pointerUp(document.body)
  await aWhile()
  expect(screen.getByText(/damaged/)).toBeTruthy()
  fireEvent.pointerDown(document.body)
  await act(() => actions.dismissStoreProblem())
  expect(screen.getByText(/damaged/)).toBeTruthy()
  fireEvent.pointerUp(document.body)
  await aWhile()
  expect(screen.queryByText(/damaged/)).toBeNull()
  expect(storeProblem.value).toBeNull()
})
