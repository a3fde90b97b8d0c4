// A source read as the reader asks for, the rest as the table itself suggests.

import {
  decodeTable,
  type Encoding,
  type GearLayout,
  type Grid,
  guessLayout,
  type Layout,
  type Refusal,
  readGrid,
  TABLE_CAPS,
  type Target,
  tooLarge,
} from '../../files/csv'
import type { System } from '../../units'
import type { Asked, Source } from './source'

export interface Opened<F extends string> {
  /** null: a text that was pasted has none. */
  encoding: Encoding | null
  grid: Grid | Refusal
  layout: Layout<F> | null
}

/** Reads the bytes or the text into rows of cells. */
export function gridOf(
  source: Source,
  { encoding, separator }: Pick<Asked, 'encoding' | 'separator'>,
): Pick<Opened<never>, 'encoding' | 'grid'> {
  if ('text' in source) return { encoding: null, grid: readGrid(source.text, separator) }
  if (source.bytes.length > TABLE_CAPS.bytes) return { encoding: null, grid: tooLarge(source.bytes.length) }
  const decoded = decodeTable(source.bytes, encoding)
  return { encoding: decoded.encoding, grid: readGrid(decoded.text, separator) }
}

/** What the columns hold. */
export function layoutOf(
  grid: Grid,
  asked: Asked,
  { target, system }: { target: Target; system: System },
): GearLayout {
  const { headerRow, headings } = asked
  const guessed = guessLayout(grid, { target, system, ...(headerRow === undefined ? {} : { headerRow }) })
  return { ...withAsked(guessed, asked), ...(headings === undefined ? {} : { headings }) }
}

/** A layout that was guessed, with what the reader has said of its columns and its decimal mark. */
export const withAsked = <F extends string, L extends Layout<F>>(
  guessed: L,
  { columns, decimal }: Pick<Asked<F>, 'columns' | 'decimal'>,
): L => ({ ...guessed, ...(columns && { columns: [...columns] }), ...(decimal && { decimal }) })
