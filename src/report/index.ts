export { type Caution, cautionsOf, GENERAL_LINE } from './cautions'
export { loadParts, momentAt, phaseText, placeText } from './places'
export { chanceText, marginText, type Shown, shownIn } from './shown'
export { type SetupInWords, setupInWords, type Verdict } from './verdicts'
