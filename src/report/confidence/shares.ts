// A share in words, as people say it: "two fifths".

const WORDS: readonly (readonly [share: number, words: string])[] = [
  [1 / 20, 'a twentieth'],
  [1 / 10, 'a tenth'],
  [1 / 5, 'a fifth'],
  [1 / 4, 'a quarter'],
  [1 / 3, 'a third'],
  [2 / 5, 'two fifths'],
  [1 / 2, 'half'],
  [3 / 5, 'three fifths'],
  [2 / 3, 'two thirds'],
  [3 / 4, 'three quarters'],
  [4 / 5, 'four fifths'],
  [9 / 10, 'nine tenths'],
]

/** The nearest share that has a name; under a twentieth and over nineteen twentieths it says so. */
export function shareWords(share: number): string {
  if (share < 0.04) return 'less than a twentieth'
  if (share >= 0.995) return 'all'
  if (share > 0.95) return 'nearly all'
  const off = (named: number) => Math.abs(named - share)
  return WORDS.reduce((best, each) => (off(each[0]) < off(best[0]) ? each : best))[1]
}
