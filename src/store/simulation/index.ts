// What takes a worker long, apart from the rest of the store so that it is loaded only where it is asked for: trials of the
// open plan, and sharing out what several people carry.

export type { SharingTold } from './messages'
export { runSharing } from './run-sharing'
export { type RunOptions, runSimulation, type SimulationEnd, type SimulationWorker } from './run-simulation'
