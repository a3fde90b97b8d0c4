// The service worker: registered without a bundler's help, so that the app decides when a new version takes over.
// No edit is lost to an update: they are saved first, and a page that did not ask is never reloaded.

import { notReadyText, updateSignals } from './update-signals'

const WORKER = './sw.js'
const NOT_WHOLE_TEXT =
  'A version of the app did not arrive whole and was not let in: what you have goes on. It is looked for again at the next start.'
/** A slow phone takes seconds to hear that the new version may take over. */
const FALLBACK_MS = 10_000

type Listens = Pick<EventTarget, 'addEventListener'>
type Worker = Listens & Pick<ServiceWorker, 'state' | 'postMessage'>
interface Registration extends Listens {
  readonly waiting: Worker | null
  readonly installing: Worker | null
}
interface Container extends Listens {
  readonly controller: unknown
  register: (url: string) => Promise<Registration>
}

export interface UpdateEnvironment {
  container: Container | undefined
  /** Saves what is unsaved and says whether nothing unsaved is left. */
  settleEdits: () => Promise<boolean>
  reload: () => void
}

interface TrustedTypes {
  createPolicy: (
    name: string,
    rules: { createScriptURL: (url: string) => string },
  ) => {
    createScriptURL: (url: string) => string
  }
}

export type Updates = ReturnType<typeof createUpdates>

export function createUpdates(
  { container, settleEdits, reload }: UpdateEnvironment,
  { updateWaiting, offlineReady, updateProblem } = updateSignals(),
) {
  let registration: Registration | null = null
  /** This page asked for the new version. */
  let asked = false
  /** The new version has taken over without this page asking: it runs on with the old code until it reloads. */
  let overtaken = false

  async function start() {
    if (!container) return
    let controlled = container.controller !== null
    // A worker becomes active only after its precache is complete, and takes charge of a page later than that: what the
    // page asks for before goes to the network all the same.
    if (controlled) offlineReady.value = true
    container.addEventListener('controllerchange', () => {
      offlineReady.value = true
      if (asked) return reload()
      // The first worker taking charge of a page is no update.
      if (controlled) {
        overtaken = true
        updateWaiting.value = true
        void settleEdits()
      }
      controlled = true
    })
    try {
      registration = await container.register(trustedUrl(WORKER))
    } catch (error) {
      updateProblem.value = notReadyText(error)
      return
    }
    watch(registration.installing)
    registration.addEventListener('updatefound', () => watch(registration!.installing))
    lookForWaiting()
  }

  function watch(worker: Worker | null) {
    let isWhole = false
    worker?.addEventListener('statechange', () => {
      isWhole ||= worker.state === 'installed'
      // One that was stored whole goes when a later one takes its place.
      if (worker.state === 'redundant' && !isWhole) updateProblem.value = NOT_WHOLE_TEXT
      lookForWaiting()
    })
  }

  function lookForWaiting() {
    if (registration?.waiting && container?.controller) updateWaiting.value = true
  }

  /**
   * Saves the edits and goes over to the new version with a reload. Does nothing and answers false when there is no
   * new version, or when edits could not be saved: a reload would lose them.
   */
  async function applyUpdate(): Promise<boolean> {
    const waiting = registration?.waiting ?? null
    if (!waiting && !overtaken) {
      updateWaiting.value = false
      return false
    }
    if (!(await settleEdits())) return false
    asked = true
    if (!waiting) {
      reload()
      return true
    }
    waiting.postMessage({ type: 'SKIP_WAITING' })
    setTimeout(() => overdue(waiting), FALLBACK_MS)
    return true
  }

  /** A page that is loaded while the new version takes over gets the old page, and parts of it that are no longer there. */
  function overdue(worker: Worker) {
    if (worker.state !== 'activating') return reload()
    worker.addEventListener('statechange', reload)
  }

  return { updateWaiting, offlineReady, updateProblem, start, applyUpdate }
}

/** Where the page asks for trusted script addresses, this policy allows the one worker and nothing else. */
function trustedUrl(url: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes }
  const policy = trustedTypes?.createPolicy('app-sw', {
    createScriptURL: asked => {
      if (asked === WORKER) return asked
      throw new TypeError(`no worker is to be loaded from ${asked}`)
    },
  })
  return policy ? policy.createScriptURL(url) : url
}
