// What every part of the sheet is given.

import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'

export interface SheetParts {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  /** The place of the pack that is taken; null: none is. */
  taken: number | null
  /** Of every table so many rows are drawn. */
  rows: number
}
