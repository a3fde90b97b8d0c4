// Moments and stops in words.

import type { Moment, Place, Reckoning } from '../reckon'

/** "leaving Larch Spring, day 2". */
export function placeText(place: Place, moments: Moment[]): string {
  const moment = moments.find(m => m.stop === place.stop && m.phase === place.phase)
  return `${phaseText(place)}, day ${moment?.day ?? 1}`
}

const phaseText = ({ phase, name }: Pick<Place, 'phase' | 'name'>) =>
  phase === 'depart' ? `leaving ${name}` : `reaching ${name}`

const SHARES = [
  ['kept', 'gear'],
  ['daily', 'food'],
  ['nightly', 'fuel'],
  ['spread', 'things used up'],
  ['water', 'water'],
  ['rubbish', 'rubbish'],
] as const

/** What a moment's load is made of, largest first, nothing that weighs nothing. */
export function loadParts(moment: Moment): { name: string; kg: number }[] {
  return SHARES.map(([share, name]) => ({ name, kg: moment.kg[share] }))
    .filter(part => part.kg > 0)
    .sort((a, b) => b.kg - a.kg)
}

export function momentAt({ moments }: Reckoning, place: Place): Moment {
  return moments.find(m => m.stop === place.stop && m.phase === place.phase) ?? moments[0]!
}
