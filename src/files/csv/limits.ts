// How much of a table is read. Ours: rows as many as a plan may hold items, the rest far more than a gear list has and
// little enough for a slow phone.

export const TABLE_CAPS = {
  bytes: 4_000_000,
  rows: 20_000,
  columns: 200,
  cellLength: 2000,
  /** Quotes that close nothing times the longest run of blanks: what bounds the reader's time. See slow-quotes.ts. */
  slowQuotes: 50_000_000,
} as const
