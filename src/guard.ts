// What stands where the app cannot be drawn: a plain page that says what is known, tries again, and saves what is stored
// as a backup file. A script of its own before all others, which imports nothing: whatever part is missing, this is there.

export {}

const PATIENCE_MS = 12_000
const ANSWER_MS = 3000

const stop = new AbortController()
const { signal } = stop

addEventListener('error', onError, { capture: true, signal })
addEventListener('unhandledrejection', ({ reason }) => fail(stoppedText(reason)), { signal })
// Told by main.tsx.
addEventListener('app-drawn', () => stop.abort(), { signal })
setTimeout(() => fail('The app has not started in 12 seconds.'), PATIENCE_MS)

function onError({ target, error, message }: ErrorEvent) {
  if (target instanceof HTMLScriptElement) fail('A part of the app could not be loaded.', true)
  else if (!(target instanceof Element)) fail(stoppedText(error ?? message))
}

const stoppedText = (error: unknown) =>
  `The app stopped while it was starting (${error instanceof Error ? `${error.name}: ${error.message}` : String(error)}).`

/** Shows the plain page, unless the app is drawn or the page stands already. */
function fail(known: string, isMissing = false) {
  if (signal.aborted) return
  stop.abort()
  const said = make('p', '')
  said.setAttribute('role', 'status')
  const actions = make('div', '')
  actions.className = 'actions'
  actions.append(
    button('Try again', () => tryAgain(isMissing)),
    button('Save what is stored as a file', async () => {
      said.textContent = await save().catch(
        error => `What is stored could not be read (${error?.name ?? error}).`,
      )
    }),
  )
  const main = make('main', '')
  main.append(
    make('h1', 'Pack Reckoner'),
    make('p', known),
    make('p', 'What is stored on this device is left as it is.'),
    actions,
    said,
  )
  document.getElementById('opening')?.remove()
  delete document.documentElement.dataset.opens
  const place = document.getElementById('app') ?? document.body
  place.replaceChildren(main)
}

function make(name: string, text: string) {
  const element = document.createElement(name)
  element.textContent = text
  return element
}

function button(text: string, act: () => unknown) {
  const made = make('button', text) as HTMLButtonElement
  made.type = 'button'
  made.addEventListener('click', () => void act())
  return made
}

/** Its code is beside this script, under a name that only the page knows. */
async function save(): Promise<string> {
  const at = document.querySelector<HTMLElement>('script[data-save]')?.dataset.save ?? ''
  const { saveStored } = await import(/* @vite-ignore */ new URL(at, document.baseURI).href)
  return saveStored()
}

/** A version that waits, or is found now, is let in; parts that are missing are no longer taken from the store. */
async function tryAgain(isMissing: boolean) {
  try {
    const registration = await inTime(navigator.serviceWorker.getRegistration())
    if (registration && !registration.waiting) await inTime(registration.update()).catch(() => undefined)
    if (registration?.waiting) {
      const taken = new Promise(resolve =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve),
      )
      registration.waiting.postMessage({ type: 'SKIP_WAITING' })
      await inTime(taken)
    } else if (isMissing && navigator.onLine) await registration?.unregister()
  } finally {
    location.reload()
  }
}

function inTime<T>(promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    setTimeout(() => reject(new DOMException('no answer', 'TimeoutError')), ANSWER_MS)
    promise.then(resolve, reject)
  })
}
