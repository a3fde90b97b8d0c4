// From verdicts to answers: what a set-up is for the trip once the figures are counted that nobody has said.

import type { Plan } from '../plan/types'
import type { Answer, Need, VerdictCode } from './types'
import type { JudgedSetup } from './verdicts'

/** The verdicts that ask for care. */
const CARES: ReadonlySet<VerdictCode> = new Set([
  'tight',
  'fits-with-collar',
  'near-rating',
  'outgrows-its-support',
  'outside-short',
])

/** The contents alone are over the hiker's limit: that is the trip's doing and no pack's. */
export const isTripsDoing = (
  { carrier }: Pick<Plan, 'carrier'>,
  { peakLoadFullWaterKg }: Pick<Need, 'peakLoadFullWaterKg'>,
): boolean => peakLoadFullWaterKg > carrier.loadShareLimit * carrier.massKg

/** Paths of the figures nobody has said, by item in the plan's order. */
export function missingFigures({ gear }: Plan): string[] {
  return gear.flatMap(({ unknownUpTo }, i) =>
    (['massKg', 'litres'] as const).flatMap(field =>
      unknownUpTo && unknownUpTo[field] !== null ? [`gear[${i}].${field}`] : [],
    ),
  )
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

/** `stillSuffices`: with every figure nobody has said as large as it may be. The first rule that holds answers. */
export function answerOf(setup: JudgedSetup, plan: Plan, need: Need, stillSuffices: boolean): Answer {
  const { frame, ratedKg } = plan.packs[setup.pack]!.setups[setup.index]!
  if (!setup.suffices) return 'does-not'
  if (!plan.gear.some(({ count }) => count > 0)) return 'cannot-tell'
  if (frame === 'framed' && ratedKg === null) return 'cannot-tell'
  if (!stillSuffices) return 'cannot-tell'
  const packIsTooMuch = setup.verdicts.includes('heavy-for-carrier') && !isTripsDoing(plan, need)
  return packIsTooMuch || setup.verdicts.some(code => CARES.has(code)) ? 'with-care' : 'does'
}
