// What becomes of each line of a pasted list.

export interface Understood {
  ok: true
  /** The line's number in the text, from 1. */
  line: number
  text: string
  name: string
  massKg?: number
  litres?: number
  /** What one of it holds, L: water, or things where it is a hard box. */
  holdsWaterLitres?: number
  holdsLitres?: number
  count?: number
  group?: string
  /** Whether its line or its group says that it is worn. */
  worn?: true
  /** The doubts: what was decided where the line could be read in another way, a sentence each. */
  notes: string[]
  /** The line says that it is for a day, or for a night. */
  use?: 'daily' | 'nightly'
  /** Whether its mass is the last number of the line, without a unit. */
  isBare?: true
  /** Whether it looks like the sum of the others. */
  isSum: boolean
  /** Whether it looks like one's own pack, which is no gear. */
  isPack: boolean
  /** Whether it is taken for the name of the group of what follows, and may be a thing without a mass. */
  isHeading?: true
}

export interface NotUnderstood {
  ok: false
  line: number
  text: string
  /** A sentence: what is in the way and how to mend it. */
  why: string
  /** What the line may be meant to be, to be put in its place. */
  fixes?: Fix[]
}

export interface Fix {
  label: string
  /** The line mended. */
  text: string
}

export type ListRow = Understood | NotUnderstood

export type ListRead =
  | { ok: true; rows: ListRow[]; unusedColumns: string[] }
  /** The text is larger than what is read at a time; nothing of it was read. */
  | { ok: false; message: string }
