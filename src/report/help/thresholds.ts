// From where the verdicts speak, in a sentence.

import { FIELDS } from '../../plan'
import { NEAR_RATING, SURE } from '../../reckon'
import type { Formats } from '../formats'

/** Where a pack begins to be tight, near its rating and too big. */
export const thresholdsText = ({ percent }: Formats): string =>
  `Tight: it fits in under ${10 * SURE} of 10 cases. Near its rating: over ${percent(NEAR_RATING)} of it. More than needed: over ${FIELDS.settings.roomyRatio.usual} times.`
