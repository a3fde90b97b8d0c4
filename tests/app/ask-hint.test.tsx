// That figures can be asked is said once a device, and kept with its settings.

import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, expect, test, vi } from 'vitest'
import { Ask, AskHint } from '../../src/components/why'
import { library } from '../../src/store'

afterEach(() => {
  cleanup()
  vi.unstubAllGlobals()
  const settings = library as { value: typeof library.value }
  const { toldWhy: _told, ...rest } = settings.value
  settings.value = rest
})

/** Stands in for the browser’s: tells each line to be in view, or beyond it. */
function watchWith(isIntersecting: boolean) {
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(private readonly tell: (seen: { isIntersecting: boolean }[]) => void) {}
      observe = () => this.tell([{ isIntersecting }])
      disconnect = () => undefined
    },
  )
}

const hint = () => screen.queryByText(/^Tap a dotted figure/)

test('it is said until it was seen, and not again; a later visit writes nothing', () => {
  watchWith(true)
  render(<AskHint />)
  expect(hint()).toBeTruthy()
  const kept = library.value
  expect(kept.toldWhy).toBe(true)
  cleanup()
  render(<AskHint />)
  expect(hint()).toBeNull()
  expect(library.value).toBe(kept)
})

test('below the window it was not seen yet', () => {
  watchWith(false)
  render(<AskHint />)
  cleanup()
  render(<AskHint />)
  expect(hint()).toBeTruthy()
})

test('who has asked a figure knows', () => {
  watchWith(false)
  render(
    <Ask title="44 L" answer={() => 'Because.'}>
      44 L
    </Ask>,
  )
  fireEvent.click(screen.getByRole('button', { name: '44 L' }))
  render(<AskHint />)
  expect(hint()).toBeNull()
})
