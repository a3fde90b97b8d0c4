// The engine is fetched on demand in the app; here it is there before each file's tests.

import { loadEngine } from '../../src/store'

await loadEngine()
