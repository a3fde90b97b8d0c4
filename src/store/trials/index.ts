// Trials of the open plan, apart from the rest of the store so that they are loaded only where they are asked for.

export { runTrial, type TrialEnd, type TrialOptions, type TrialWorker } from './run-trial'
