// What becomes of each line of a pasted list.

export interface Understood {
  ok: true
  /** The line's number in the text, from 1. */
  line: number
  text: string
  name: string
  massKg?: number
  litres?: number
  count?: number
  group?: string
  /** Whether the line says that it is worn. */
  worn?: true
  /** What was decided where the line could be read in another way, a sentence each. */
  notes: string[]
  /** A day's food: the line says that it is eaten, and that it is for a day. */
  use?: 'daily'
  /** Whether its mass is the last number of the line, without a unit. */
  isBare?: true
  /** Whether it looks like the sum of the others. */
  isSum: boolean
  /** Whether it looks like one's own pack, which is no gear. */
  isPack: boolean
}

export interface NotUnderstood {
  ok: false
  line: number
  text: string
  /** A sentence: what is in the way and how to mend it. */
  why: string
}

export type ListRow = Understood | NotUnderstood

export type ListRead =
  | { ok: true; rows: ListRow[]; unusedColumns: string[] }
  /** The text is larger than what is read at a time; nothing of it was read. */
  | { ok: false; message: string }
