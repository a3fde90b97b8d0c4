// Starts the worker that reads GPX files.

import { startOwnWorker } from '../worker'
import workerAddress from './worker.ts?worker&url'

/** Throws where the browser has no workers or does not let this one start. */
export const startGpxWorker = (): Worker => startOwnWorker(workerAddress, 'gpx')
