// Why so much should be left on leaving a stop, and what missing a resupply changes. Source key: our-judgement.

import type { OnTheWay } from '../../reckon'
import { leftLines, skipText, untilNext } from '../on-the-way'
import { told } from './sum'
import type { Explanation, WhyContext } from './types'

/** The lines as the screen shows them, with how they are reckoned. */
export function whyOnTheWay(context: WhyContext, left: OnTheWay): Explanation[] {
  const { plan, formats } = context
  const { stops } = plan.trip
  const { to, rows } = untilNext(left, context)
  return [
    told({
      title: `Leaving ${stops[left.stop]!.name}`,
      says: 'Figures of the whole trip at this departure. Food: every meal until it is bought again or the trip ends, and spare days. Nights: those with meals from the pack. Water: for the legs to the next water, dry camps and the reserve, while bottles last. The load is without the pack.',
      inputs: leftLines(left, plan, formats).map(({ what, amount }) => ({ label: what, value: amount })),
      result: { value: left.loadKg, text: formats.kg(left.loadKg) },
    }),
    told({
      title: `Until ${stops[to]!.name}`,
      says: 'At each departure on the way: the load without the pack, the water in the bottles and the food.',
      inputs: rows.map(({ stop, says }) => ({ label: stops[stop]!.name, value: says })),
      result: { value: left.foodKg, text: formats.kg(left.foodKg) },
    }),
    ...left.ifSkipped.map(skipped =>
      told({
        title: `Without ${stops[skipped.stop]!.name}`,
        says: 'The trip is calculated once more without this resupply. Its food is carried from the one before. Shown is what changes from here on: the heaviest load and the fullest main body.',
        inputs: [{ label: 'Then', value: skipText(skipped, left, formats) }],
        result: {
          value: skipped.foodKg ?? 0,
          text: skipped.foodKg === null ? 'not possible' : `${formats.kg(skipped.foodKg)} of food from here`,
        },
      }),
    ),
  ]
}
