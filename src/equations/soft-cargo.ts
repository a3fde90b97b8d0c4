// How heavy a litre of soft, hand-packed goods is: what was published, and the limits outside which figures look odd.
// Sources: nasa-ctb (keys of data/sources.json); the limits around it are our judgement.

/** kg a litre, of the whole packed bag. */
export const softCargo = {
  typicalKgPerLitre: 0.29,
  source: 'nasa-ctb',
  /** Below and above: probably an amount typed wrong. */
  plausibleKgPerLitre: { min: 0.12, max: 0.45, unit: 'kg/L', source: 'our-judgement' },
} as const
