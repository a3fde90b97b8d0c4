// Starting and asking a worker of this app; apart from the formats, which need it too.

export { type AskedWorker, askWorker } from './ask-worker'
export { startOwnWorker } from './own-worker'
