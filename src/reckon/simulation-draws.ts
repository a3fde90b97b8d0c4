// Chance for the engine that is none: numbers that look random and are the same for the same seed.
// xoshiro128** of Blackman and Vigna (2018) with splitmix32 to fill its state, both from memory; the former is held to
// its published first outputs in the tests.

/** 32 random bits a call, from a state of four words that are not all 0. */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state.map(word => word | 0) as [number, number, number, number]
  const rotate = (word: number, by: number) => (word << by) | (word >>> (32 - by))
  return () => {
    const bits = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0
    const shifted = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= shifted
    d = rotate(d, 11)
    return bits
  }
}

/** Four words of state out of one seed, which is taken as a whole number of 32 bits. */
function stateFrom(seed: number): [number, number, number, number] {
  let at = seed | 0
  const next = () => {
    at = (at + 0x9e3779b9) | 0
    let word = at ^ (at >>> 16)
    word = Math.imul(word, 0x21f0aaad)
    word ^= word >>> 15
    word = Math.imul(word, 0x735a2d97)
    return (word ^ (word >>> 15)) >>> 0
  }
  return [next(), next(), next(), next()]
}

export interface Draws {
  /** Uniform over the open interval from 0 to 1, to 53 bits. */
  uniform: () => number
  /** Standard normal, by Box and Muller. */
  normal: () => number
  /** From the beta distribution of two shapes over 0, by Jöhnk (1964, from memory): quick for shapes about 1. */
  beta: (a: number, b: number) => number
}

export function drawsFrom(seed: number): Draws {
  const bits = xoshiro128(stateFrom(seed))
  const uniform = () => ((bits() >>> 5) * 67_108_864 + (bits() >>> 6) + 0.5) / 9_007_199_254_740_992
  let spare: number | null = null
  const normal = () => {
    if (spare !== null) {
      const kept = spare
      spare = null
      return kept
    }
    const radius = Math.sqrt(-2 * Math.log(uniform()))
    const angle = 2 * Math.PI * uniform()
    spare = radius * Math.sin(angle)
    return radius * Math.cos(angle)
  }
  const beta = (a: number, b: number): number => {
    for (;;) {
      const x = uniform() ** (1 / a)
      const y = uniform() ** (1 / b)
      if (x + y > 0 && x + y <= 1) return x / (x + y)
    }
  }
  return { uniform, normal, beta }
}
