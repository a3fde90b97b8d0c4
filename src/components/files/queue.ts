// What came in from outside and waits to be looked at, one after the other: files chosen, dropped, pasted, shared with
// the app or opened with it by the system. Only the screen that shows them reads them.

import { type ReadonlySignal, signal } from '@preact/signals'
import { plainlyNamed } from './plainly-named'

/** How many are taken at once; nobody means to open a folder of hundreds. */
const MOST_AT_ONCE = 10

const queue = signal<readonly File[]>([])

/** The files that wait, the first of which is shown. */
export const incoming: ReadonlySignal<readonly File[]> = queue

/** Takes files in, to be shown one after the other. Nothing of them is kept before the reader says so. */
export function receive(files: Iterable<File>): void {
  queue.value = [...queue.peek(), ...[...files].map(plainlyNamed)].slice(0, MOST_AT_ONCE)
}

/** The first is done with. */
export function nextIncoming(): void {
  queue.value = queue.peek().slice(1)
}
