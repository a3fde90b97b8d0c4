import { hydrate, render } from 'preact'
import { App, isEmptyApp, TripApp } from './app'
import { library, loadEngine, openTrip, startStore, startUpdates, within } from './store'
import './style.css'
import './components/components.css'
import './components/rows.css'
import './screens/screens.css'
import './screens/on-the-way/on-the-way.css'
import './screens/desk.css'

/** The engine and the frame of the open trip are waited for no longer than this. */
const ENGINE_MS = 3000

const root = document.getElementById('app')
if (!root) throw new Error('index.html has no element with the id "app"')

// What is on the device is read first, so that the first picture is the place that was left.
await startStore(() => import('./store/lazy'))
// With a trip open, its answer is part of the first picture; where it cannot be had, the screens say so.
if (openTrip.peek())
  await within(Promise.all([loadEngine(), TripApp.ahead()]), ENGINE_MS).catch(() => undefined)
document.getElementById('opening')?.remove()
const { dataset } = document.documentElement
// What stands there already stays the same, with what was chosen in it meanwhile.
const isAhead =
  root.firstChild && dataset.opens === undefined && isEmptyApp() && library.peek().system === 'metric'
const tapped = root.querySelector('[data-tapped]')?.textContent
if (isAhead) hydrate(<App />, root)
else {
  root.replaceChildren()
  render(<App />, root)
}
delete dataset.opens
if (isAhead && tapped)
  for (const button of root.querySelectorAll('button')) if (button.textContent === tapped) button.click()
// Until here guard.ts stands in for what fails.
dispatchEvent(new Event('app-drawn'))
startUpdates()
