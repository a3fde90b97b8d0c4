import { hydrate, render } from 'preact'
import { App, isEmptyApp, TripApp } from './app'
import {
  afterPaint,
  followTyping,
  library,
  loadEngine,
  openTrip,
  startStore,
  startUpdates,
  within,
} from './store'
import './style.css'
import './components/components.css'
import './components/rows.css'
import './screens/screens.css'
import './screens/on-the-way/on-the-way.css'
import './screens/desk.css'

/** The engine and the frame of the open trip are waited for no longer than this. */
const ENGINE_MS = 3000
/** The service worker waits no longer than this for what is fetched ahead. */
const AHEAD_MS = 10_000

/** A rejection of it is told by guard.ts. Not awaited here: a file that waits may not be joined with others. */
export const started = start()

async function start() {
  const root = document.getElementById('app')
  if (!root) throw new Error('index.html has no element with the id "app"')
  const ahead = fetchAhead()
  // What is on the device is read first, so that the first picture is the place that was left.
  await startStore(() => import('./store/lazy'))
  // With a trip open, its answer is part of the first picture; where it cannot be had, the screens say so.
  if (openTrip.peek())
    await within(Promise.all([loadEngine(), TripApp.ahead()]), ENGINE_MS).catch(() => undefined)
  document.getElementById('opening')?.remove()
  const { dataset } = document.documentElement
  const isForWelcome = dataset.opens === undefined && isEmptyApp()
  const tapped = root.querySelector('[data-tapped]')?.textContent
  // The welcome that stands there already stays the same, with what was chosen in it meanwhile.
  if (isForWelcome && root.querySelector('.welcome') && library.peek().system === 'metric') {
    hydrate(<App />, root)
    for (const input of root.querySelectorAll('input'))
      if (input.files?.length || input.checked !== input.defaultChecked)
        input.dispatchEvent(new Event('change', { bubbles: true }))
  } else {
    root.replaceChildren()
    render(<App />, root)
  }
  delete dataset.opens
  if (isForWelcome && tapped)
    [...root.querySelectorAll('button')].find(button => button.textContent === tapped)?.click()
  followTyping(afterPaint)
  // Until here guard.ts stands in for what fails.
  dispatchEvent(new Event('app-drawn'))
  // Storing the whole app would take the network from what is tapped next.
  await within(ahead, AHEAD_MS).catch(() => undefined)
  void startUpdates()
}

/**
 * While the welcome is read, what shows a trip is fetched, and none of it run. Where the app is stored, the page names
 * the same files itself.
 */
async function fetchAhead() {
  const { ahead } = document.querySelector<HTMLElement>('script[data-ahead]')?.dataset ?? {}
  const files = ahead?.split(' ') ?? []
  await Promise.all(
    files.map(
      file =>
        new Promise(done => {
          const link = document.createElement('link')
          link.rel = file.endsWith('.css') ? 'stylesheet' : 'modulepreload'
          link.crossOrigin = ''
          link.href = file
          // What did not come is asked for again when it is needed, and told then.
          link.onload = link.onerror = done
          document.head.append(link)
          if (!link.relList.supports(link.rel)) done(null)
        }),
    ),
  )
}
