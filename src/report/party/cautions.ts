// What could hurt one of a party: each one's own cautions, and what only one of them carries.

import type { PartyPlan } from '../../plan'
import { isShelter, type PartyReckoning, personAlone } from '../../reckon'
import type { Caution } from '../caution'
import { cautionsOf, foodCautions } from '../cautions'
import type { Formats } from '../formats'
import { nameIn } from './words'

export interface PartyCaution {
  /** Whom it concerns; null: everybody. */
  name: string | null
  caution: Caution
}

/** What is the same for everybody is told once. */
export function partyCautions(plan: PartyPlan, party: PartyReckoning, formats: Formats): PartyCaution[] {
  const own = plan.people.map((_, who) => {
    const alone = personAlone(plan, party, who)
    // Who carries the food says nothing of who eats it.
    return cautionsOf(alone.plan, alone.reckoning, formats).filter(({ about }) => about !== 'food')
  })
  const isEverybodys = ({ text }: Caution) => own.every(list => list.some(other => other.text === text))
  const shared = (own[0] ?? []).filter(isEverybodys).map(caution => ({ name: null, caution }))
  const each = own.flatMap((list, who) =>
    list
      .filter(caution => !isEverybodys(caution))
      .map(caution => ({ name: plan.people.length > 1 ? nameIn(plan, who) : null, caution })),
  )
  const all = [...drinksLess(plan, formats), ...turningBack(plan, party), ...foodCautions(plan)].map(
    caution => ({ name: null, caution }),
  )
  return [...each, ...all, ...shared]
}

/** How much less somebody drinks is nobody's measurement. */
function drinksLess(plan: PartyPlan, { percent }: Formats): Caution[] {
  return plan.people.flatMap(({ waterShare }, who): Caution[] => {
    if (waterShare === 0 || waterShare >= 1) return []
    const text = `${nameIn(plan, who)}’s water is counted as ${percent(waterShare)} of the trip’s, by your word. Drinking too little in heat makes ill: carry more if you are not sure, and let everybody drink to thirst.`
    return [{ signal: 'CAUTION', about: 'water', text, atAnswer: true }]
  })
}

/** Common practice, without a source: said only where the names and the bottles tell. */
function turningBack(plan: PartyPlan, { people }: PartyReckoning): Caution[] {
  if (people.length < 2) return []
  const onlyWith = (is: (item: PartyPlan['gear'][number]) => boolean): string | null => {
    const things = new Set(plan.gear.filter(item => item.count > 0 && is(item)).map(({ id }) => id))
    const with_ = people.flatMap(({ carries }, who) => (carries.some(id => things.has(id)) ? [who] : []))
    return with_.length === 1 ? nameIn(plan, with_[0]!) : null
  }
  const drinkers = plan.people.filter(({ waterShare }) => waterShare > 0)
  const rows = [
    ['water', drinkers.length < 2 ? null : onlyWith(item => item.holdsWaterLitres > 0)],
    ['shelter', onlyWith(isShelter)],
  ] as const
  return rows.flatMap(([what, name]): Caution[] =>
    name === null
      ? []
      : [
          {
            signal: 'CAUTION',
            about: 'load',
            atAnswer: true,
            text: `${name} carries all the ${what}: if one of you turns back or is lost, the others have none. Stay together, or share it out (common practice, no source).`,
          },
        ],
  )
}
