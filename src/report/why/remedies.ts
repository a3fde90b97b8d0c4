// What a change gains a set-up that fails: the same figures before and after, the trip reckoned anew with it.

import type { Remedy } from '../../reckon'
import { remedyLabel } from '../compare-packs'
import { toldChance } from '../missing'
import { whyAsked } from './asked'
import type { SetupContext } from './setup-words'
import { sumOf, told } from './sum'
import type { Explanation, WhyInput } from './types'

/** One for each change; where there is none, what the trip asks of any pack. */
export function whyRemedies(context: SetupContext, remedies: readonly Remedy[]): Explanation[] {
  if (remedies.length > 0) return remedies.map(remedy => gain(context, remedy))
  const { plan, setup, formats } = context
  return whyAsked([{ name: '', plan }], { packKg: setup.massKg, formats })
}

function gain(context: SetupContext, remedy: Remedy): Explanation {
  const { plan, reckoning, formats, judged } = context
  const { after } = remedy
  const title = remedyLabel(remedy, plan)
  const says = 'The whole trip is calculated again with the change: this much less'
  const { bodyLitres } = reckoning.need
  const inputs = [...longestDay(remedy, context), ...fits(context, remedy)]
  const system = formats.system
  if (after.mends.includes('load'))
    return sumOf({
      title,
      says: `${says} is carried.`,
      kind: 'mass',
      system,
      show: formats.kg,
      parts: [
        { label: 'carried now', value: judged.carriedKg },
        { label: 'carried then', value: -after.carriedKg },
      ],
      inputs: [
        {
          label: 'Main body asked for, now and then',
          value: `${formats.litres(bodyLitres)}, ${formats.litres(after.bodyLitres)}`,
        },
        ...inputs,
      ],
    })
  if (!after.mends.includes('room'))
    return told({
      title,
      says: 'Calculated again with the change, it is suitable.',
      inputs,
      result: { value: 1, text: 'it does' },
    })
  return sumOf({
    title,
    says: `${says} is asked for.`,
    kind: 'volume',
    system,
    show: formats.litres,
    parts: [
      { label: 'asked for now', value: bodyLitres },
      { label: 'asked for then', value: -after.bodyLitres },
    ],
    inputs,
  })
}

function fits({ judged, missing }: SetupContext, { after }: Remedy): WhyInput[] {
  const isCollar = after.collarChance !== null
  const now = toldChance(isCollar ? judged.fitChanceWithCollar : judged.fitChance, { missing })
  const then = toldChance(after.collarChance ?? after.fitChance, { missing })
  if (now === null || then === null) return []
  return [
    {
      label: isCollar ? 'It fits with the collar raised, now and then' : 'It fits, now and then',
      value: `${now}, ${then}`,
    },
  ]
}

function longestDay(remedy: Remedy, { formats }: SetupContext): WhyInput[] {
  const change = remedy.kind === 'combined' ? remedy.trip : remedy
  return change.kind === 'camp-at-water'
    ? [{ label: 'Longest day’s walking then', value: formats.hours(change.longestDayHours) }]
    : []
}
