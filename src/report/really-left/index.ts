// On the way, from what the hiker notes: how far what is really left lasts, and the rest of the trip at the pace walked.

export { type Lasting, lasting, shortOf } from './lasts'
export { type Ahead, aheadAt, type Walked, walkedPace } from './pace'
export { aheadLines, clockText, dryAhead, walkedText } from './words'
