// What becomes of each row of a table.

import type { Thing, ThingFacts } from '../../plan/shelf'

/** What the shelf knows of a thing besides. */
export type ThingWords = Pick<Thing, 'note' | 'weighedOn' | 'retired'>

export interface ReadItem {
  /** The number of the row, from 1, as a spreadsheet counts. */
  row: number
  item: ThingFacts
  /** The row of the container that it rides in, or the name of one that is in the gear. */
  inside?: { row: number } | { name: string }
  thing: ThingWords
  /** What was decided where the name could be read in another way, a sentence each. */
  doubts: readonly string[]
  /** Whether it looks like the sum of the others. */
  isSum: boolean
  /** Whether it looks like one's own pack, which is no gear. */
  isPack: boolean
}

export interface RowProblem {
  row: number
  /** The column's number from 1 and its name; null where it is about the whole row. */
  column: { number: number; name: string } | null
  /** The text that could not be read. */
  text: string
  /** A sentence: what is in the way and how to mend it. */
  why: string
}

export interface TableRead {
  items: ReadItem[]
  problems: RowProblem[]
  /** How many rows were headings of groups. */
  groups: number
}
