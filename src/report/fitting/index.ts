// How rigid things go into a pack, in words: for the verdicts, and thing by thing.

export { type Fitting, fittingOf } from './judge'
export { type FitVerdict, fittingVerdicts, tooLargeWords } from './verdicts'
export { fitWords, pairWords } from './words'
