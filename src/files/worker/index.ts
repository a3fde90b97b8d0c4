// Starting a worker of this app; apart from the formats, which need it too.

export { startOwnWorker } from './own-worker'
