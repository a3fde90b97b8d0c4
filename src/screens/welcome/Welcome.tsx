// The empty app: one picture, one sentence, what it is for, one tap each, and the ways back to what was kept before.

import { useState } from 'preact/hooks'
import { UnitsChoice } from '../../components/fields'
import { FileButton, receive } from '../../components/files'
import { toTop } from '../../components/frame'
import { emptyDraft } from '../../plan'
import { actions, newId } from '../../store'
import { loadDemo } from './load'

export function Welcome() {
  const [failed, setFailed] = useState(false)
  const use = (label: string, begin: () => void) => (
    <button type="button" class="quiet" onClick={begin}>
      {label}
    </button>
  )
  return (
    <main class="welcome">
      <h1>Pack Reckoner</h1>
      <Picture />
      <p class="lead">
        Your trip and your gear ask for litres and carry a load. See how much, and whether a pack is enough.
      </p>
      <div class="actions">
        <button type="button" class="primary" onClick={() => beginAt('trip')}>
          Plan a trip
        </button>
        {use('Is my pack enough?', () => beginAt('packs'))}
        {use('Food and water between resupplies', beginWithResupply)}
        {use('In a shop', () => beginAt('shop'))}
        {use('Look at a demo trip', () => void loadDemo().catch(() => setFailed(true)))}
      </div>
      {failed ? <p class="problem">The demo could not be loaded: go online once and try again.</p> : null}
      <UnitsChoice />
      <div class="actions">
        <FileButton
          quiet
          label="Open a saved file"
          accept=".json,application/json"
          onFile={file => receive([file])}
        />
        {use('More: trips, shelf, backups', () => toTop('more'))}
        {use('How it works', () => toTop('help'))}
      </div>
      <p class="hint">The demo is invented. Everything stays on this device and works without a network.</p>
    </main>
  )
}

/** The load along a trip, which falls as food is eaten and rises with water and a shop, under what a pack can carry. */
const Picture = () => (
  <svg class="welcome-picture" viewBox="0 0 340 80" aria-hidden="true">
    <path class="load" d="M0 80V34L70 46V36L140 54V14L220 34V26L300 54V80Z" />
    <path class="limit" d="M0 8H300" />
    <path d="M306 79V36q0-15 16-15t16 15V79ZM306 42h32M311 79V58h22V79M317 21q5-8 10 0" />
  </svg>
)

function beginAt(screen: string) {
  actions.createTrip(emptyDraft())
  toTop(screen)
}

function beginWithResupply() {
  const [start, shop, end] = [newId(), newId(), newId()]
  const stops = [
    { id: start, name: 'Start' },
    { id: shop, name: 'Resupply', resupply: true },
    { id: end, name: 'End' },
  ]
  actions.createTrip({ ...emptyDraft(), trip: { stops } })
  toTop('trip', `trip/stops/${shop}`)
}
