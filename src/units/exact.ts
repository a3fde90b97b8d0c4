// Exact conversion factors as ratios of integers, so that a typed decimal is converted with one rounding.
// Sources: the inch 16 CFR 500.19 (published); the pound NIST SP 811 App. B (published, figure not re-read);
// the calorie 4.184 J NIST SP 811 App. B (from memory). The rest is integer arithmetic on these.

/** num / den, both integers that a double holds exactly. */
export type Ratio = { readonly num: number; readonly den: number }

const gcd = (a: number, b: number): number => (b ? gcd(b, a % b) : a)

/** The ratio num / den in lowest terms. Both are integers above 0. */
export const ratio = (num: number, den = 1): Ratio => {
  const g = gcd(num, den)
  return { num: num / g, den: den / g }
}

/** a / b in lowest terms. */
export const over = (a: Ratio, b: Ratio): Ratio => {
  // Cross-cancelled first: the plain products of two conversion factors leave the exact integers.
  const nums = gcd(a.num, b.num)
  const dens = gcd(a.den, b.den)
  return ratio((a.num / nums) * (b.den / dens), (a.den / dens) * (b.num / nums))
}

/** One inch is 0.0254 m exactly. 16 CFR 500.19 (published). */
export const inchM = ratio(254, 10_000)

/** One pound is 0.453 592 37 kg exactly. NIST SP 811 App. B (published, figure not re-read). */
export const poundKg = ratio(45_359_237, 100_000_000)

/** One kilocalorie (thermochemical) is 4.184 kJ exactly. NIST SP 811 App. B (from memory). */
export const kcalKj = ratio(4184, 1000)

/** 12 in, 3 ft, 5280 ft. Computed. */
export const footM = ratio(12 * 254, 10_000)
export const yardM = ratio(36 * 254, 10_000)
export const mileM = ratio(5280 * 12 * 254, 10_000)

/** One sixteenth of a pound; fourteen pounds. Computed. */
export const ounceKg = ratio(45_359_237, 1_600_000_000)
export const stoneKg = ratio(14 * 45_359_237, 100_000_000)

const CUBIC_INCH = 254 ** 3 // 16 387 064, in 1e-9 L

/** The inch cubed; 1728 of them. Computed. */
export const cubicInchL = ratio(CUBIC_INCH, 1e9)
export const cubicFootL = ratio(1728 * CUBIC_INCH, 1e9)

/** US customary liquid measures: a gallon is 231 in³, and its 4th, 8th, 16th and 128th parts. Computed. */
export const gallonL = ratio(231 * CUBIC_INCH, 1e9)
export const quartL = ratio(231 * CUBIC_INCH, 4e9)
export const pintL = ratio(231 * CUBIC_INCH, 8e9)
export const cupL = ratio(231 * CUBIC_INCH, 16e9)
export const fluidOunceL = ratio(231 * CUBIC_INCH, 128e9)
