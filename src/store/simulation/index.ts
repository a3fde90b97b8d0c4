// Trials of the open plan, apart from the rest of the store so that they are loaded only where they are asked for.

export { type RunOptions, runSimulation, type SimulationEnd, type SimulationWorker } from './run-simulation'
