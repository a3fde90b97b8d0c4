// The words of a name in the form in which they are compared: lower case, without accents, in the singular.
// Made for English names of gear; a word that is no English plural comes out changed alike on both sides.

const SMALL = new Set('a an and for in my no of on or the with'.split(' '))

/** "Tent pegs (Ti)" → tent, peg, ti. */
export function wordsOf(name: string): string[] {
  return name
    .normalize('NFD')
    .replace(/\p{M}|['’]/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(word => word && !SMALL.has(word))
    .map(singular)
}

function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is)$/.test(word)) return word
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (/(?:ch|sh|ss|x)es$/.test(word)) return word.slice(0, -2)
  return word.endsWith('s') ? word.slice(0, -1) : word
}
