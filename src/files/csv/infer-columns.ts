// What the cells of a column look like, where its heading does not say what it holds.

import { type Choice, FIELDS } from '../../plan'
import { hasUnitOf, isBare } from './amount'
import { choiceWords, chosenBy } from './choices'
import type { FieldName } from './fields'

export interface CellTraits {
  filled: number
  distinct: number
  /** Shares of the filled cells. */
  bare: number
  whole: number
  words: number
  mass: number
  volume: number
  place: number
  use: number
}

/** Judgement of ours: so large a share of the cells must look alike. */
const MOST = 0.7

export function traitsOf(cells: readonly string[]): CellTraits {
  const filled = cells.filter(cell => cell !== '')
  const share = (test: (cell: string) => boolean) =>
    filled.length === 0 ? 0 : filled.filter(test).length / filled.length
  const chosen = (name: string, row: Choice) => (cell: string) =>
    chosenBy(cell, choiceWords(name, row)) !== null
  return {
    filled: filled.length,
    distinct: new Set(filled).size,
    bare: share(isBare),
    whole: share(cell => /^\d{1,3}$/.test(cell) && Number(cell) <= 100),
    words: share(cell => /\p{L}{2}/u.test(cell)),
    mass: share(cell => hasUnitOf('mass', cell)),
    volume: share(cell => hasUnitOf('volume', cell)),
    place: share(chosen('place', FIELDS.item.stow)),
    use: share(chosen('use', FIELDS.item.use)),
  }
}

/**
 * Fields for the columns that have none yet, by their looks. A field that is taken is not given again. Under headings
 * (`headed`) only looks that leave no doubt count: bare numbers may be prices, and words brands.
 */
export function inferColumns(
  columns: readonly CellTraits[],
  taken: ReadonlySet<FieldName>,
  { headed }: { headed: boolean },
): (FieldName | null)[] {
  const given = new Set(taken)
  const found: (FieldName | null)[] = columns.map(() => null)
  const give = (field: FieldName, fits: (traits: CellTraits) => boolean) => {
    if (given.has(field)) return
    const at = columns.findIndex((traits, i) => found[i] === null && traits.filled > 0 && fits(traits))
    if (at < 0) return
    found[at] = field
    given.add(field)
  }
  give('mass', ({ mass }) => mass >= MOST)
  give('litres', ({ volume }) => volume >= MOST)
  give('place', ({ place, distinct }) => place >= MOST && distinct > 1)
  give('use', ({ use, distinct }) => use >= MOST && distinct > 1)
  if (headed) return found
  give('name', ({ words, filled, distinct }) => words >= MOST && distinct > filled / 2)
  give('name', ({ words }) => words >= MOST)
  give('group', ({ words, filled, distinct }) => words >= MOST && filled > 2 && distinct <= filled / 2)
  // Of two columns of bare numbers the one of small whole ones is a count.
  const numbers = columns.filter(({ bare }, i) => found[i] === null && bare >= MOST).length
  if (numbers > 1 || given.has('mass')) give('count', ({ bare, whole }) => bare >= MOST && whole >= MOST)
  give('mass', ({ bare }) => bare >= MOST)
  return found
}
