// Counts, lists and beginnings of sentences, as words.

/** A whole number with its thousands apart. */
export const countText = (count: number): string => String(count).replace(/\B(?=(?:\d{3})+$)/g, ',')

/** So many of something in words: `counted(1, 'night')` is "1 night", `counted(1200, 'entry', 'entries')` "1,200 entries". */
export const counted = (count: number, one: string, more = `${one}s`): string =>
  `${countText(count)} ${count === 1 ? one : more}`

/** "a, b and c". */
export const listText = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`

/** With its first letter a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
