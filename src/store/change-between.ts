// What an edit of the open trip has changed in its figures and answers.

import type { Plan, Settled } from '../plan'
import type { Answer, Reckoned, Reckoning } from '../reckon'

export interface LastChange {
  /** Likely litres of the main body. */
  litres: number
  /** Heaviest load with all the water, kg. */
  kg: number
  /** Set-ups that have another answer than before. */
  answers: { name: string; answer: Answer }[]
}

type Known = Pick<Settled, 'packIds'> & { plan: Plan; reckoned: Reckoned }

/** Null where one of the two has no figures. */
export function changeBetween(before: Known, after: Known): LastChange | null {
  if (!before.reckoned.ok || !after.reckoned.ok) return null
  const [was, is] = [before.reckoned.reckoning, after.reckoned.reckoning]
  let changed: LastChange['answers'] | null = null
  return {
    litres: is.need.bodyLitres - was.need.bodyLitres,
    kg: is.need.peakLoadFullWaterKg - was.need.peakLoadFullWaterKg,
    // Asked for once typing rests: of hundreds of packs it takes its time.
    get answers() {
      changed ??= changedAnswers(before, after, { was, is })
      return changed
    },
  }
}

function changedAnswers(
  before: Known,
  after: Known,
  { was, is }: Record<'was' | 'is', Reckoning>,
): LastChange['answers'] {
  const answers = answersIn(before, was)
  return is.packs.flatMap(({ name, setup, pack, index, answer }) => {
    const old = answers.get(`${after.packIds[pack]}/${index}`)
    const isOne = after.plan.packs[pack]!.setups.length === 1
    return old === undefined || old === answer ? [] : [{ name: isOne ? name : `${name}, ${setup}`, answer }]
  })
}

const answersIn = ({ packIds }: Known, { packs }: Reckoning) =>
  new Map(packs.map(({ pack, index, answer }) => [`${packIds[pack]}/${index}`, answer]))
