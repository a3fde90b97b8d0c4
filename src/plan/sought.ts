// A search as people type it: all of its words must be somewhere in a text, whatever their case and accents.

/** Letters as they are sought: without case and accents. */
export const plainLetters = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()

/** The words of a search. */
export const soughtWords = (sought: string): string[] => plainLetters(sought).split(/\s+/).filter(Boolean)
