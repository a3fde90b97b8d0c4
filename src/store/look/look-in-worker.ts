// Looks at a file from outside off the page's own thread: ended at once when cancelled.

import type { Looked } from '../../files/backup'
import { askWorker, SILENT_SECONDS, type StartWorker, startOwnWorker } from '../../files/worker'
import { gathering, type LookAsked, type LookTold } from './messages'

export interface LookOptions {
  signal?: AbortSignal
  startWorker?: StartWorker
}

const unread = (problem: string, canTryAgain = true): Looked => ({
  kind: 'unread',
  problems: [problem],
  canTryAgain,
})

/** What a reading ends with that nobody waits for any more. */
const CANCELLED: Looked = unread('Reading was stopped.', false)
const BROKEN: Looked = unread(
  'The part of the app that reads files did not start or broke off. Reload the app and open the file again.',
)
const SILENT: Looked = unread(
  `The file was being read for so long that reading was stopped: nothing had been heard of it for ${SILENT_SECONDS} seconds. Close other apps and tabs, then try again.`,
)

/** What the file is, and what is in it. Never rejects: where it cannot be read it is `unread`, with why in words. */
export function lookInWorker(file: File, options: LookOptions = {}): Promise<Looked> {
  const { signal, startWorker = () => startOwnWorker(() => import('./worker'), 'files') } = options
  const hear = gathering()
  return askWorker<Looked>({
    start: startWorker,
    request: { kind: 'look', file } satisfies LookAsked,
    signal,
    cancelled: CANCELLED,
    broken: BROKEN,
    silent: SILENT,
    onMessage: told => hear(told as LookTold),
  })
}
