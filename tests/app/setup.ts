// Each file starts with an empty page and a store of its own, in which the engine, fetched on demand in the app, is
// there already; each test with an empty list of packs, which outlives the trips.

import { configure } from '@testing-library/preact'
import { beforeEach, vi } from 'vitest'

// No gate on speed: parts of the app are fetched on demand, and a busy machine is no defect.
configure({ asyncUtilTimeout: 15_000 })
vi.resetModules()
document.body.replaceChildren()
const { actions, loadEngine, shelf } = await import('../../src/store')
await loadEngine()
beforeEach(() => {
  if (shelf.peek().packs.length > 0)
    actions.editShelf('Empty the list of packs', it => ({ ...it, packs: [] }))
})
