// Words from somebody else's plan: nothing in them may steer the line they stand in. Used for every plan and backup that
// comes in, by file, link or paste.

// C0 and C1 controls; lone surrogates; marks, embeddings, overrides and isolates of the bidirectional algorithm;
// zero-width and invisible characters, line separators and marks of annotation. Zero-width joiners stay: some scripts
// are written with them.
const STEERING = /[\p{Cc}\p{Cs}\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]/gu

/** Texts of several lines, by the name of their field: their line breaks stay. */
const OF_LINES = new Set(['note'])

export const cleanText = (text: string): string => text.replace(STEERING, '')

/** No field of a plan has a longer name. */
const MOST_NAME = 60

/** The name of a field that no plan has: it may be anything, and as long as the file. */
export function shortName(name: string): string {
  const seen = cleanText(name.slice(0, MOST_NAME)).trim()
  return (seen || '(a name that cannot be seen)') + (name.length > MOST_NAME ? '…' : '')
}

const cleanLines = (text: string): string =>
  text
    .split(/\r\n|[\r\n]/)
    .map(cleanText)
    .join('\n')

/** The same value with every text in it cleaned. For values whose depth has been checked. */
export function cleanWords(value: unknown, field = ''): unknown {
  if (typeof value === 'string') return OF_LINES.has(field) ? cleanLines(value) : cleanText(value)
  if (Array.isArray(value)) return value.map(entry => cleanWords(entry))
  if (typeof value !== 'object' || value === null) return value
  // fromEntries defines own properties: a "__proto__" key stays a key, for the schema to refuse.
  return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, cleanWords(child, key)]))
}
