import { render } from 'preact'
import { App } from './app'
import { loadEngine, openTrip, startStore, startUpdates, within } from './store'
import './style.css'
import './components/components.css'
import './components/rows.css'
import './screens/screens.css'
import './screens/on-the-way/on-the-way.css'
import './screens/desk.css'

/** The engine's answer is waited for no longer than this. */
const ENGINE_MS = 3000

const root = document.getElementById('app')
if (!root) throw new Error('index.html has no element with the id "app"')

// What is on the device is read first, so that the first picture is the place that was left.
await startStore(() => import('./store/lazy'))
// With a trip open, its answer is part of the first picture; where it cannot be had, the screens say so.
if (openTrip.peek()) await within(loadEngine(), ENGINE_MS).catch(() => undefined)
document.getElementById('opening')?.remove()
render(<App />, root)
// Until here guard.ts stands in for what fails.
dispatchEvent(new Event('app-drawn'))
startUpdates()
