// Where a default comes from, for the screens: ours, or the trade's without a source, or a published rule. None is a
// measurement of this hiker.

export const PRACTICE = 'common practice, no source'
export const JUDGEMENT = 'our judgement'
export const RANGES = 'our judgement inside published ranges'
export const DIN = 'DIN 33466, by third-party copy'
