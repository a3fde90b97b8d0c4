// What the help shows: all of it made from the engine, the catalogue of fields and the reports' own words.

export { GLOSSARY } from '../glossary'
export { tenCases } from './cases'
export { cautionExamples, SIGNALS } from './cautions'
export { defaultsByOrigin } from './defaults'
export { type Example, exampleOf } from './example'
export { exampleOfRules, type Rule, rulesIn } from './rules'
export { thresholdsText } from './thresholds'
export { type VerdictExample, verdictExamples } from './verdicts'
