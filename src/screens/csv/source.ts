// The table that is being brought in: a file's bytes or a text that was pasted. It stays while the panel is closed, for
// each trip by itself, and goes with the page: the file is still where it came from.

import { type Signal, signal } from '@preact/signals'
import {
  type Column,
  type Encoding,
  type FieldName,
  type PackFieldName,
  type Separator,
  TABLE_CAPS,
} from '../../files/csv'

export type Source = { name: string; bytes: Uint8Array } | { text: string }

/** What the reader has said of how the table is to be read; the rest is guessed. */
export interface Asked<F extends string = FieldName> {
  encoding?: Encoding
  separator?: Separator
  headerRow?: number | null
  decimal?: '.' | ','
  headings?: boolean
  columns?: readonly Column<F>[]
}

export interface Kept<F extends string = FieldName> {
  source: Source | null
  asked: Asked<F>
}

const NOTHING: Kept<never> = { source: null, asked: {} }
const kept = signal<Readonly<Record<string, Kept>>>({})

/** What is kept for a trip, or where none is open, and the way to change it. */
export const useSource = (trip: string | undefined) => useKept(kept, trip ?? '')

const keptOfPacks = signal<Readonly<Record<string, Kept<PackFieldName>>>>({})

/** As `useSource`, of a table of packs. */
export const usePacksSource = (trip: string) => useKept(keptOfPacks, trip)

function useKept<F extends string>(
  all: Signal<Readonly<Record<string, Kept<F>>>>,
  key: string,
): [Kept<F>, (next: Kept<F>) => void] {
  return [
    all.value[key] ?? NOTHING,
    next => {
      all.value = { ...all.value, [key]: next }
    },
  ]
}

/** A file's bytes; of one over the cap only as many as tell that it is. Null: it cannot be read from this device. */
export async function sourceOf(file: File): Promise<Source | null> {
  try {
    const bytes = new Uint8Array(await file.slice(0, TABLE_CAPS.bytes + 1).arrayBuffer())
    return { name: file.name, bytes }
  } catch {
    // It was moved or withdrawn since it was chosen: the caller says so.
    return null
  }
}

export const unreadable = (name: string): string =>
  `${name} could not be read from this device: choose it once more, or copy it here first.`
