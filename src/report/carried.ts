// What is carried at a moment, by kind: water, food and fuel, and the gear by its groups, with mass and litres.

import type { Plan } from '../plan'
import { compositionAt, type Reckoning, type Shares } from '../reckon'
import { groupOf, kitGroups } from './kit-groups'

export interface CarriedPart {
  /** Which band of a load it belongs to. */
  share: keyof Shares | 'wanted'
  /** Of the gear its group by number, 0 for all else. */
  nth: number
  word: string
  kg: number
  /** In the main body, with its part of the gaps. */
  litres: number
  /** Where it rides if not in the main body. */
  elsewhere: 'in a box' | 'outside'
}

const WORDS: [Exclude<CarriedPart['share'], 'kept'>, string][] = [
  ['wanted', 'Water short'],
  ['water', 'Water'],
  ['rubbish', 'Rubbish'],
  ['daily', 'Food'],
  ['nightly', 'Fuel'],
  ['spread', 'Used up'],
]

/** All that is aboard then, top of the load first. `reckoning` must be what `reckon(plan)` gave. */
export function carriedAt(plan: Plan, reckoning: Reckoning, moment: number): CarriedPart[] {
  const { kg, litres, bodyLitres, wantedLitres } = reckoning.moments[moment]!
  const composition = compositionAt(plan, reckoning, moment)
  const groups = kitGroups(plan)
  const sum = Object.values(litres).reduce((a, b) => a + b, 0)
  const withGaps = (amount: number) => (sum > 0 ? (amount / sum) * bodyLitres : 0)
  const isInside = (share: CarriedPart['share'], nth = 0) => {
    const mine = composition.filter(
      ({ item, kg }) => kg > 0 && item.use === share && (share !== 'kept' || groupOf(item, groups) === nth),
    )
    return mine.length > 0 && mine.every(({ item }) => item.inside !== null)
  }
  const others = WORDS.map(([share, word]): CarriedPart => {
    const isWanted = share === 'wanted'
    return {
      share,
      nth: 0,
      word,
      kg: isWanted ? wantedLitres : kg[share],
      litres: isWanted ? 0 : withGaps(litres[share]),
      elsewhere: isInside(share) ? 'in a box' : 'outside',
    }
  })
  const gear = groups.map((word, nth): CarriedPart => {
    let mass = 0
    let room = 0
    for (const { item, kg, bodyLitres, rubbishShare } of composition) {
      if (item.use !== 'kept' || groupOf(item, groups) !== nth) continue
      mass += kg * (1 - rubbishShare)
      room += bodyLitres * (1 - rubbishShare)
    }
    return {
      share: 'kept',
      nth,
      word,
      kg: mass,
      litres: withGaps(room),
      elsewhere: isInside('kept', nth) ? 'in a box' : 'outside',
    }
  })
  return [...others, ...gear.reverse()].filter(part => part.kg > 0 || part.litres > 0)
}
