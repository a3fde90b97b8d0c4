// Words from somebody else's plan: nothing in them may steer the line they stand in.

// C0 and C1 controls; marks, embeddings, overrides and isolates of the bidirectional algorithm; zero-width characters
// and line separators. Zero-width joiners stay: some scripts are written with them.
const STEERING = /[\p{Cc}\u061c\u200b\u200e\u200f\u2028-\u202e\u2060\u2066-\u2069\ufeff]/gu

export const cleanText = (text: string): string => text.replace(STEERING, '')

/** The same value with every text in it cleaned. For values whose depth has been checked. */
export function cleanWords(value: unknown): unknown {
  if (typeof value === 'string') return cleanText(value)
  if (Array.isArray(value)) return value.map(cleanWords)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, cleanWords(child)]))
}
