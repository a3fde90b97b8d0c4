// Small counts in words.

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

/** "three"; figures from ten on. */
export const numberWord = (count: number): string => WORDS[count] ?? String(count)
