// Starting and asking a worker of this app; apart from the formats, which need it too.

export { type AskedWorker, askWorker, SILENT_SECONDS, type StartWorker } from './ask-worker'
export { startOwnWorker } from './own-worker'
export { whenAsked } from './when-asked'
