// The load that leads everywhere: with all the water the trip wants, whatever the containers hold.

import type { Moment, Need } from '../reckon'

/** Enough nine times in ten; water is exact, so all that is wanted of it adds no doubt. */
export const safeLoadKg = ({ peakLoadFullWaterKg, peakLoadKg, peakLoadSafeKg }: Need): number =>
  peakLoadFullWaterKg + (peakLoadSafeKg - peakLoadKg)

/** The load at a moment with all the water then wanted, kg. */
export const loadThen = ({ kg, wantedLitres }: Moment): number => kg.total + wantedLitres
