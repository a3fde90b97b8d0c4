// Each file starts with an empty page and a store of its own, in which the engine, fetched on demand in the app, is
// there already.

import { configure } from '@testing-library/preact'
import { vi } from 'vitest'

// No gate on speed: parts of the app are fetched on demand, and a busy machine is no defect.
configure({ asyncUtilTimeout: 15_000 })
vi.resetModules()
document.body.replaceChildren()
const { loadEngine } = await import('../../src/store')
await loadEngine()
