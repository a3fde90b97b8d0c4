// The pace walked in words, what it changes ahead, and the warning of it.

import type { OnTheWay } from '../../reckon'
import { counted } from '../../units'
import type { Caution } from '../caution'
import { shortCautions } from '../cautions'
import type { Formats } from '../formats'
import type { Ahead, Walked } from './pace'

/** "14:05" */
export const clockText = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`

/** "6 h 10 min for 2 legs planned at 5 h: 1.23 times the time." */
export function walkedText({ legs, hours, plannedHours, factor }: Walked, formats: Formats): string {
  const planned = `${formats.hours(hours)} for ${counted(legs, 'leg')} planned at ${formats.hours(plannedHours)}`
  return `${planned}: ${factor.toFixed(2)} times the time, breaks included.`
}

export interface AheadLine {
  what: string
  says: string
}

/** So many stops ahead are told. */
const MOST_STOPS = 6

/** Each stop ahead by walking time and clock, the last beside the plan, and the water to leave with where that is another. */
export function aheadLines({ plan, left, stops }: Ahead, planned: OnTheWay, formats: Formats): AheadLine[] {
  const wants = (at: OnTheWay) => formats.water(at.waterLitres + at.wantedLitres)
  const water =
    wants(left) === wants(planned)
      ? []
      : [{ what: 'Water wanted as you leave', says: `${wants(left)} instead of ${wants(planned)}` }]
  const told = stops.slice(0, MOST_STOPS).map(({ stop, hours, plannedHours, minute }, i, { length }) => {
    const [now, then] = [formats.hours(hours), formats.hours(plannedHours)]
    const beside = i === length - 1 && now !== then ? ` instead of ${then}` : ''
    const clock = minute === null ? '' : `, about ${clockText(minute)}`
    return { what: plan.trip.stops[stop]!.name, says: now + beside + clock }
  })
  const food =
    formats.kg(left.foodKg) === formats.kg(planned.foodKg)
      ? []
      : [
          {
            what: 'Food as you leave',
            says: `${formats.kg(left.foodKg)} instead of ${formats.kg(planned.foodKg)}`,
          },
        ]
  return [...told, ...water, ...food]
}

/**
 * The warning where bottles do not last at this pace: on the stretch that one stands in, which may have begun before, and
 * on those after it. Without its reasons, which are those of the open plan and not of this one.
 */
export function dryAhead({ plan, reckoning }: Ahead, from: number, formats: Formats): Caution[] {
  const carries = reckoning.carries.filter(({ to }) => to > from)
  return shortCautions(plan, { ...reckoning, carries }, formats).map(({ asks: _asks, ...caution }) => caution)
}
