// From verdicts to answers: what a set-up is for the trip once the figures are counted that nobody has said.

import type { Plan, Setup } from '../plan/types'
import type { Answer, Need, SetupReckoning } from './types'
import { VERDICTS } from './verdict-table'

/** The contents alone are over the hiker's limit: that is the trip's doing and no pack's. */
export const isTripsDoing = (
  { carrier }: Pick<Plan, 'carrier'>,
  { peakLoadFullWaterKg }: Pick<Need, 'peakLoadFullWaterKg'>,
): boolean => peakLoadFullWaterKg > carrier.loadShareLimit * carrier.massKg

/** Paths of the figures nobody has said of what is taken along, by item in the plan's order. */
export function missingFigures({ gear }: Pick<Plan, 'gear'>): string[] {
  const paths: string[] = []
  gear.forEach(({ unknownUpTo, atHome }, i) => {
    if (unknownUpTo === null || atHome) return
    if (unknownUpTo.massKg !== null) paths.push(`gear[${i}].massKg`)
    if (unknownUpTo.litres !== null) paths.push(`gear[${i}].litres`)
  })
  return paths
}

/** The plan with every figure nobody has said as large as it may be; null where all are known. */
export function withUnknownsAtMost(plan: Plan): Plan | null {
  if (plan.gear.every(({ unknownUpTo }) => unknownUpTo === null)) return null
  const gear = plan.gear.map(item => {
    if (!item.unknownUpTo) return item
    const { massKg, litres } = item.unknownUpTo
    return { ...item, massKg: massKg ?? item.massKg, litres: litres ?? item.litres, unknownUpTo: null }
  })
  return { ...plan, gear }
}

/** What bears on the answers of all set-ups alike, but for `stillSuffices`. */
export interface AnswersRest {
  /** At least one thing of the list is taken. */
  takesAnything: boolean
  isTripsDoing: boolean
}

/** `stillSuffices`: with every figure nobody has said as large as it may be. The first rule that holds answers. */
export function answerOf(
  { suffices, verdicts }: Pick<SetupReckoning, 'suffices' | 'verdicts'>,
  { frame, ratedKg }: Setup,
  { takesAnything, isTripsDoing, stillSuffices }: AnswersRest & { stillSuffices: boolean },
): Answer {
  if (!suffices) return 'does-not'
  if (!takesAnything) return 'cannot-tell'
  if (frame === 'framed' && ratedKg === null) return 'cannot-tell'
  if (!stillSuffices) return 'cannot-tell'
  const asks = verdicts.filter(code => VERDICTS[code].weight === 'warns')
  return asks.some(code => code !== 'heavy-for-carrier' || !isTripsDoing) ? 'with-care' : 'does'
}
