// Round steps for rules and scale bars: 1, 2 or 5 times a power of ten of the unit that is shown.

/** The smallest round step that cuts `span` into at most `pieces`; 0 for a span of nothing. */
export function roundStep(span: number, pieces: number): number {
  if (!(span > 0)) return 0
  const rough = span / pieces
  const power = 10 ** Math.floor(Math.log10(rough))
  const digit = [1, 2, 5, 10].find(d => d * power >= rough * (1 - 1e-9)) ?? 10
  return digit * power
}

export const clamp = (value: number, low: number, high: number): number =>
  Math.max(low, Math.min(high, value))

/** A coordinate as it is written into the drawing: a tenth of a pixel is finer than any screen shows. */
export const px = (value: number): number => Math.round(value * 10) / 10
