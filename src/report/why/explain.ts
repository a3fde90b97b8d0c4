// The explanations of a figure, the figure's own first, then those of what it rests on.

import { bodyOf, isSource } from '../../reckon'
import type { Formats } from '../formats'
import { momentIndex } from '../places'
import { whyAsked } from './asked'
import { whyCamps, whyCarry, whyOwnLegWater } from './carry'
import { whyCartridges } from './cartridges'
import { whyDay } from './day'
import { whyDayEnergy, whyLegEnergy } from './energy'
import { whyBaseWeight, whyFacts, whyLoadShare } from './facts'
import { whyFit } from './fit'
import { whyDaysFood, whyMeasured, whyTrack } from './found'
import { whyFuel } from './fuel'
import { whyBodyLitres, whyFree, whyMomentLitres, whyMomentLoad, whyPeakLoad } from './need'
import { whyPlacing } from './placing'
import { whyRation } from './ration'
import { whyReach } from './reach'
import { whyRemedies } from './remedies'
import { whyResting } from './resting'
import { whyBears, whySetup } from './setup'
import { whyBodyShare } from './setup-load'
import { setupContext } from './setup-words'
import { whyKnown, whySure } from './sure'
import { whyTag } from './tag'
import { whyCover, whyTrips } from './trips'
import type { About, Explanation, FoundAbout, PlanAbout, WhyContext } from './types'
import { whyWalkingTime } from './walking-time'
import { whyHeat, whyHeatTable, whyLegWater } from './water'

/** Empty where the figure is not computed: none is given, or the hiker's own stands. */
export function explain(about: About, context: WhyContext): Explanation[] {
  if (needsNoPlan(about)) return explainAlone(about, context.shown)
  switch (about.kind) {
    case 'walking-time':
      return [whyWalkingTime(context, about.leg)]
    case 'leg-energy':
      return whyLegEnergy(context, about.leg)
    case 'leg-water':
      return context.plan.trip.water.litresPerHour === 'from-heat'
        ? whyLegWater(context, about.leg)
        : [whyOwnLegWater(context, about.leg)]
    case 'day':
      return whyDay(context, about.day)
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
    case 'cartridges':
      return whyCartridges(context, about.item)
    case 'body-litres':
      return [whyBodyLitres(context), whyKnown(context)]
    case 'peak-load':
      return [whyPeakLoad(context), ...carriesAt(context, peakOf(context))]
    case 'moment-load':
      return [whyMomentLoad(context, about.moment), ...carriesAt(context, about.moment)]
    case 'moment-litres':
      return [
        whyMomentLitres(context, about.moment),
        ...whyFree(context, { moment: about.moment, pack: about.pack ?? 0 }),
        whyBodyLitres(context),
      ]
    case 'base-weight':
      return whyBaseWeight(context)
    case 'facts':
      return whyFacts(context)
    case 'load-share':
      return about.setup === undefined
        ? [whyLoadShare(context)]
        : whyBodyShare(setupContext(context, about.setup))
    case 'heat':
      return [whyHeat(context, about.leg)]
    case 'heat-table':
      return whyHeatTable(context, about.leg)
    case 'sure':
      return whySure(context)
    case 'carry':
      return [...carriesOf(context, about.stop), ...whyCamps(context, about.stop, about.camps ?? [])]
    case 'set-up':
      return whySetup(context, about.setup)
    case 'fit':
      return whyFit(context, about)
    case 'placing':
      return whyPlacing(context, about.pack)
    case 'reach':
      return whyReach(setupContext(context, about.setup), about.setup)
    case 'remedies':
      return whyRemedies(setupContext(context, about.setup), about.remedies)
    case 'bears':
      return whyBears(context)
  }
}

/** Those that need no open plan. */
export const needsNoPlan = (about: About): about is PlanAbout | FoundAbout =>
  'plan' in about || 'trips' in about || ['measured', 'days-food', 'track'].includes(about.kind)

export function explainAlone(about: PlanAbout | FoundAbout, shown: Formats): Explanation[] {
  switch (about.kind) {
    case 'tag':
      return whyTag(about.plan, about.known, shown)
    case 'asked':
      return whyAsked(about.trips, { packKg: about.packKg, shown })
    case 'trips':
      return whyTrips(about.trips, about.setup, shown)
    case 'cover':
      return whyCover(about.trips, shown)
    case 'measured':
      return whyMeasured(about, shown)
    case 'days-food':
      return whyDaysFood(about, shown)
    case 'track':
      return whyTrack(about, shown)
  }
}

const peakOf = ({ reckoning: { moments, need } }: WhyContext) => momentIndex(moments, need.peakFullWaterAt)

const carriesOf = (context: WhyContext, stop: number) =>
  context.reckoning.carries.filter(carry => carry.stop === stop).map(carry => whyCarry(context, carry))

/** The water of a moment that is the departure from a source. */
function carriesAt(context: WhyContext, index: number): Explanation[] {
  const { stop, phase } = context.reckoning.moments[index]!
  return phase === 'depart' && isSource(context.plan, stop) ? carriesOf(context, stop) : []
}
