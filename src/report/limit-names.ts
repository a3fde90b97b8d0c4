// Whose a limit is: the hiker's own, or the usual one while nothing else was said.

import { defaults, type Plan } from '../plan'

type OfSettings = { settings: Pick<Plan['settings'], 'framelessCeilingKg'> }

const isOwnCeiling = ({ settings }: OfSettings): boolean =>
  settings.framelessCeilingKg !== defaults.SETTINGS.framelessCeilingKg

/** "your limit", or "the usual limit", without a frame. */
export const framelessLimit = (plan: OfSettings): string =>
  isOwnCeiling(plan) ? 'your limit' : 'the usual limit'

/** Where it does not stand from the sentence that no frame is meant. */
export const limitWithoutFrame = (plan: OfSettings): string => `${framelessLimit(plan)} without a frame`

/** "your limit", or "the usual limit", for the share of the body mass. */
export const shareLimitName = ({ carrier }: Pick<Plan, 'carrier'>): string =>
  carrier.loadShareLimit === defaults.loadShareLimitFor(carrier.ageYears) ? 'the usual limit' : 'your limit'

/** The limit without a frame as a sentence, with where it comes from. */
export const framelessLimitSentence = (plan: OfSettings, kg: (kg: number) => string): string => {
  const limit = kg(plan.settings.framelessCeilingKg)
  return isOwnCeiling(plan)
    ? `Your own limit without a frame is ${limit}`
    : `Common practice, with no source behind it, is to stay near ${limit}`
}
