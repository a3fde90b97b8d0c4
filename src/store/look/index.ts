// What a file from outside is, told by a worker; loaded where files are opened.

export { lookInWorker } from './look-in-worker'
