// Shares out what several people carry, off the page's own thread: ended at once when cancelled.

import { askWorker, SILENT_SECONDS, type StartWorker, startOwnWorker } from '../../files/worker'
import type { PartyPlan } from '../../plan'
import type { SharingAsked, SharingTold } from './messages'

interface SharingOptions {
  plan: PartyPlan
  signal: AbortSignal
  startWorker?: StartWorker
}

const failed = (message: string): SharingTold => ({ ok: false, message })

/** Never rejects. */
export function runSharing({ plan, signal, startWorker }: SharingOptions): Promise<SharingTold> {
  return askWorker<SharingTold>({
    start: startWorker ?? (() => startOwnWorker(() => import('./worker'), 'sharing')),
    request: { kind: 'share-out', plan } satisfies SharingAsked,
    signal,
    cancelled: failed('Cancelled: everything is carried as before.'),
    broken: failed('Sharing out did not start or broke off. Reload the app and try again.'),
    silent: failed(
      `Sharing out was stopped: nothing had been heard of it for ${SILENT_SECONDS} seconds. Close other apps and tabs, then try again.`,
    ),
    onMessage: data => data as SharingTold,
  })
}
