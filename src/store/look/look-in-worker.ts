// Looks at a file from outside off the page's own thread: ended at once when cancelled.

import type { Looked } from '../../files/backup'
import { type AskedWorker, askWorker, startOwnWorker } from '../../files/worker'
import { gathering, type LookAsked, type LookTold } from './messages'
import workerAddress from './worker.ts?worker&url'

export interface LookOptions {
  signal?: AbortSignal
  startWorker?: () => AskedWorker
}

const unread = (problem: string): Looked => ({ kind: 'unread', problems: [problem] })

/** What a reading ends with that nobody waits for any more. */
const CANCELLED: Looked = unread('Reading was stopped.')
const BROKEN: Looked = unread(
  'The part of the app that reads files did not start or broke off. Reload the app and open the file again.',
)

/** What the file is, and what is in it. Never rejects: where it cannot be read it is `unread`, with why in words. */
export function lookInWorker(file: File, options: LookOptions = {}): Promise<Looked> {
  const { signal, startWorker = () => startOwnWorker(workerAddress, 'files') } = options
  const hear = gathering()
  return askWorker<Looked>({
    start: startWorker,
    request: { kind: 'look', file } satisfies LookAsked,
    signal,
    cancelled: CANCELLED,
    broken: BROKEN,
    onMessage: told => hear(told as LookTold),
  })
}
