// From the path of a field to its row.

import { pathParts } from './field-path'
import { FIELDS, type Field, part } from './fields'

/** The row of the field at a path of a draft. Throws RangeError for a path of no field. */
export function fieldOf(path: string): Field {
  let row: Field | undefined = part(FIELDS.plan)
  for (const name of pathParts(path))
    row = row?.as === 'list' ? part(row.rows) : row?.as === 'part' ? row.rows[name] : undefined
  if (!row) throw new RangeError(`no field at ${path}`)
  return row
}
