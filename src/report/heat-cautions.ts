// Heat: the legs so hot that the Army's table begins to speak of them, and those where hard work may go on for part of
// an hour only. Source keys: tb-med-507 (the categories), bom-wbgt.

import { heatCategories } from '../equations'
import type { Plan } from '../plan'
import { airOfLeg } from '../reckon'
import { listText } from '../units'
import { type Caution, itsFigures } from './caution'
import type { Formats } from './formats'

/** The table begins at its first category; from the third on moderate work may go on for two thirds of an hour at most. */
const CAUTION_FROM_C = heatCategories[0]!.fromWbgtC
const WARNING_FROM_C = heatCategories[2]!.fromWbgtC

const FIRST_DAYS =
  'The first hot days are the most dangerous: the heat table was made for soldiers used to heat.'

export function heatCautions(plan: Plan, formats: Formats): Caution[] {
  const { stops } = plan.trip
  const legs = stops.slice(1).flatMap(({ name }, leg) => {
    const { assumed, wbgtC } = airOfLeg(plan, leg)
    return assumed || wbgtC < CAUTION_FROM_C ? [] : [{ leg, name, wbgtC }]
  })
  const groups = [
    {
      signal: 'WARNING',
      of: legs.filter(({ wbgtC }) => wbgtC >= WARNING_FROM_C),
      advice:
        'Hard walking there can end in heat stroke. Drinking more does not prevent it: change hour, pace or route. Confusion or collapse: cool at once and call for help.',
    },
    {
      signal: 'CAUTION',
      of: legs.filter(({ wbgtC }) => wbgtC < WARNING_FROM_C),
      advice: 'Heat can make you ill before water runs short: start early, walk slower and rest in shade.',
    },
  ] as const
  return groups
    .filter(({ of }) => of.length > 0)
    .map(({ signal, of, advice }, i) => {
      const hottest = of.reduce((a, b) => (b.wbgtC > a.wbgtC ? b : a))
      const first = i === 0 ? ` ${FIRST_DAYS}` : ''
      return {
        signal,
        about: 'heat',
        asks: itsFigures({ kind: 'heat', leg: hottest.leg }),
        short: `Heat: ${of.length > 1 ? 'up to ' : ''}${formats.degrees(hottest.wbgtC)} WBGT`,
        at: of.map(({ leg }) => leg),
        text: `Heat on the way to ${listText(of.map(({ name }) => name))}: ${of.length > 1 ? 'up to ' : ''}about ${formats.degrees(hottest.wbgtC)} WBGT, in fairly strong sun. ${advice}${first}`,
      }
    })
}
