// What every part of the sheet is given.

import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Shown } from '../../report'

export interface SheetParts {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
}
