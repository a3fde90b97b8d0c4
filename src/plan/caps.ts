// How much a plan may hold: apart from the ranges of its fields, which the first page does without.

/** How many of each thing a plan may hold, and how long its words and its file may be. */
export const CAPS = {
  fileBytes: 5_000_000,
  stops: 500,
  /** Of the whole trip. */
  nights: 400,
  items: 20_000,
  packs: 1000,
  setups: 20,
  packings: 50,
  people: 8,
  nameLength: 200,
  depth: 20,
  /** Of any one part: an item has some thirty. */
  fields: 100,
} as const

/** Days of walking in a trip of one night a camp. */
export const MOST_DAYS = CAPS.nights + 1
