// Starts the worker that reads GPX files.

import { startOwnWorker } from '../worker'

/** Rejects where the browser has no workers or does not let this one start. */
export const startGpxWorker = (): Promise<Worker> => startOwnWorker(() => import('./worker'), 'gpx')
