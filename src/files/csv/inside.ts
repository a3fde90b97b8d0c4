// What rides in which container: by the name of one in the table or in the gear, or by "row 7" of the table where a name
// would not tell. A container in a container is not a thing a plan can hold.

import type { GearColumn } from './guess'
import type { ReadItem, RowProblem, TableRead } from './types'

/** By row and not by name: for containers of the same name, and for one that is called so. */
export const rowWord = (row: number): string => `row ${row}`
const ROW_WORD = /^row (\d{1,6})$/i

/** The rows with their containers found; one whose container is nowhere becomes a problem. */
export function inContainers(
  read: TableRead,
  columns: readonly GearColumn[],
  known: readonly string[],
): TableRead {
  const byRow = new Map(read.items.filter(({ item }) => item.holdsLitres !== undefined).map(i => [i.row, i]))
  const byName = new Map<string, number[]>()
  for (const { row, item } of byRow.values()) byName.set(item.name!, [...(byName.get(item.name!) ?? []), row])
  const at = columns.findIndex(({ field }) => field === 'inside')
  const problems: RowProblem[] = []
  const items = read.items.flatMap((each): ReadItem[] => {
    if (!each.inside || !('name' in each.inside)) return [each]
    const { name } = each.inside
    const no = (why: string) => {
      problems.push({ row: each.row, column: { number: at + 1, name: 'Carried inside' }, text: name, why })
      return []
    }
    if (each.item.holdsLitres !== undefined)
      return no('A container cannot go into a container: leave one of the two cells empty.')
    const word = ROW_WORD.exec(name)
    const rows = word && byRow.has(Number(word[1])) ? [Number(word[1])] : (byName.get(name) ?? [])
    if (rows.length > 1)
      return no(`${rows.length} containers are called so: write ${rows.map(rowWord).join(' or ')}.`)
    if (rows.length === 1) return [{ ...each, inside: { row: rows[0]! } }]
    if (known.includes(name)) return [each]
    return no(
      'No container of this name is in the table or the gear: say what it holds, or leave the cell empty.',
    )
  })
  if (problems.length === 0) return { ...read, items }
  return { ...read, items, problems: [...read.problems, ...problems].sort((a, b) => a.row - b.row) }
}
