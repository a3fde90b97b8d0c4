// Finds or installs the browser that the journeys run in, and says which.
import { chromiumPath } from './chromium.mjs'

console.log(chromiumPath())
