// What is asked of a plan beyond its Reckoning: what each thing costs, and what should be left on the way.

import { itemName, type Plan } from '../plan'
import { type Effect, effectsOf, type OnTheWay, onTheWay, type Reckoning } from '../reckon'
import { byRoom, changeOf, costText, formatsIn, leftLines, skipText } from '../report'
import type { System } from '../units'
import { aligned } from './columns'

export interface Asked {
  effects: boolean
  /** The stop that is left; null: not asked. */
  from: number | null
}

interface Reckoned {
  listed: Plan
  reckoning: Reckoning
}

/** The stop that `--from` names; whether the plan has it is not known yet. */
export function stopAsked(text: string | undefined): Asked['from'] | 'wrong' {
  if (text === undefined) return null
  return /^[1-9]\d{0,5}$/.test(text) ? Number(text) : 'wrong'
}

/** Why a plan cannot be asked that; empty where it can. */
export function refusedFor({ trip: { stops } }: Pick<Plan, 'trip'>, { from }: Asked): string[] {
  const last = stops.length - 1
  if (from === null || from < last) return []
  if (last < 2) return ['trip.stops: no stop lies between start and end: --from has none to name']
  return [`trip.stops: --from ${from} is no stop on the way: name one from 1 to ${last - 1}`]
}

/** What is asked for, as it stands beside the Reckoning. */
export function askedWith(
  { listed, reckoning }: Reckoned,
  { effects, from }: Asked,
): { effects?: Effect[]; onTheWay?: OnTheWay } {
  return {
    ...(effects && { effects: effectsOf(listed, reckoning) }),
    ...(from !== null && { onTheWay: onTheWay(listed, reckoning, from) }),
  }
}

/** The same, to be read; empty where nothing is asked. */
export function askedReport(reckoned: Reckoned, { system, asked }: { system: System; asked: Asked }): string {
  const { listed } = reckoned
  const found = askedWith(reckoned, asked)
  const sections = [
    ...(found.effects ? [effectLines(found.effects, listed, system)] : []),
    ...(found.onTheWay ? wayLines(found.onTheWay, listed, system) : []),
  ]
  return sections.map(lines => `\n${lines.join('\n')}\n`).join('')
}

function effectLines(effects: Effect[], { gear }: Plan, system: System): string[] {
  const formats = formatsIn(system)
  const rows = effects.map((effect, i) => ({ effect, item: gear[i]! }))
  return [
    'WHAT TAKES THE ROOM (what changes if it stays home)',
    ...aligned(
      rows
        .sort((a, b) => byRoom(changeOf(a.effect), changeOf(b.effect)))
        .map(cost => [itemName(cost.item), costText(cost, formats)]),
    ),
  ]
}

function wayLines(left: OnTheWay, plan: Plan, system: System): string[][] {
  const formats = formatsIn(system)
  const nameOf = (stop: number) => plan.trip.stops[stop]!.name
  return [
    [
      `LEAVING ${nameOf(left.stop)}`,
      ...aligned(leftLines(left, plan, formats).map(({ what, amount }) => [what, amount])),
    ],
    ...(left.ifSkipped.length
      ? [
          [
            'IF A RESUPPLY IS MISSED',
            ...left.ifSkipped.map(skipped => `${nameOf(skipped.stop)}: ${skipText(skipped, left, formats)}`),
          ],
        ]
      : []),
  ]
}
