// The explanations of a figure, the figure's own first, then those of what it rests on.

import { bodyOf } from '../../reckon'
import { whyDayEnergy, whyLegEnergy } from './energy'
import { whyFuel } from './fuel'
import { whyBodyLitres, whyPeakLoad } from './need'
import { whyRation } from './ration'
import { whyResting } from './resting'
import type { About, Explanation, WhyContext } from './types'
import { whyWalkingTime } from './walking-time'
import { whyLegWater } from './water'

/** Empty where the figure is not computed: none is given, or the hiker's own stands. */
export function explain(about: About, context: WhyContext): Explanation[] {
  switch (about.kind) {
    case 'walking-time':
      return [whyWalkingTime(context, about.leg)]
    case 'leg-energy':
      return whyLegEnergy(context, about.leg)
    case 'leg-water':
      return whyLegWater(context, about.leg)
    case 'day-energy':
      return whyDayEnergy(context, about.day)
    case 'ration':
      return whyRation(context, about.day)
    case 'resting-energy': {
      const body = bodyOf(context.plan.carrier)
      return body ? [whyResting(context, body)] : []
    }
    case 'fuel':
      return whyFuel(context, about.item)
    case 'body-litres':
      return [whyBodyLitres(context)]
    case 'peak-load':
      return [whyPeakLoad(context)]
  }
}
