// Files from outside, as they are called on the screen.

import { fireEvent, render, screen } from '@testing-library/preact'
import { expect, test, vi } from 'vitest'
import { FileButton, incoming, nextIncoming, receive } from '../../src/components/files'

/** "track" and "xpg.nosj" turned round: a reader sees "trackjson.gpx". */
const SPOOFED = 'track\u202exgp.nosj'

test('the name of a shared file steers no line', () => {
  receive([new File(['{}'], SPOOFED, { type: 'text/plain' }), new File(['a'], 'plain.csv')])
  expect(incoming.value.map(({ name, type, size }) => [name, type, size])).toEqual([
    ['trackxgp.nosj', 'text/plain', 2],
    ['plain.csv', '', 1],
  ])
  nextIncoming()
  nextIncoming()
})

test('nor does that of a chosen one', () => {
  const onFile = vi.fn()
  render(<FileButton label="Choose" accept="*" onFile={onFile} />)
  fireEvent.change(screen.getByLabelText('Choose'), { target: { files: [new File(['a'], SPOOFED)] } })
  expect(onFile.mock.calls[0]![0].name).toBe('trackxgp.nosj')
})
