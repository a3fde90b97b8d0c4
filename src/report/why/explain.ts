// The explanations of a figure, the figure's own first, then those of what it rests on.

import { isSource } from '../../reckon'
import type { Formats } from '../formats'
import { momentIndex } from '../places'
import { whyAsked } from './asked'
import { whyCamps, whyCarry, whyOwnLegWater } from './carry'
import { whyCartridges } from './cartridges'
import { whyDay } from './day'
import { whyDayEnergy, whyLegEnergy } from './energy'
import { whyBaseWeight, whyFacts, whyLoadShare } from './facts'
import { whyFit } from './fit'
import { whyCosts, whyDaysFood, whyMeasured, whyNoted, whySwaps, whyTrack } from './found'
import { whyFuel } from './fuel'
import { whyBodyLitres, whyFree, whyMomentLitres, whyMomentLoad, whyPeakLoad } from './need'
import { whyOnTheWay } from './on-the-way'
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

type AboutOf<Kind, Any = About> = Any extends { kind: string }
  ? Kind extends Any['kind']
    ? Any
    : never
  : never
type Reasons<Kind extends string> = {
  [K in Kind]: (context: WhyContext, about: AboutOf<K>) => Explanation[]
}

/** The reasons of a figure of the plan that is reckoned. */
const REASONS: Reasons<Exclude<About, PlanAbout | FoundAbout>['kind']> = {
  'walking-time': (context, { leg }) => [whyWalkingTime(context, leg)],
  'leg-energy': (context, { leg }) => whyLegEnergy(context, leg),
  'leg-water': (context, { leg }) =>
    context.plan.trip.water.litresPerHour === 'from-heat'
      ? whyLegWater(context, leg)
      : [whyOwnLegWater(context, leg)],
  day: (context, { day }) => whyDay(context, day),
  'day-energy': (context, { day }) => whyDayEnergy(context, day),
  ration: (context, { day }) => whyRation(context, day),
  'resting-energy': context => {
    const { body } = context.working
    return body ? [whyResting(context, body)] : []
  },
  fuel: (context, { item }) => whyFuel(context, item),
  cartridges: (context, { item }) => whyCartridges(context, item),
  'body-litres': context => [whyBodyLitres(context), whyKnown(context)],
  'peak-load': context => [whyPeakLoad(context), ...carriesAt(context, peakOf(context))],
  'moment-load': (context, { moment }) => [whyMomentLoad(context, moment), ...carriesAt(context, moment)],
  'moment-litres': (context, { moment, pack = 0 }) => [
    whyMomentLitres(context, moment),
    ...whyFree(context, { moment, pack }),
    whyBodyLitres(context),
  ],
  'base-weight': context => whyBaseWeight(context),
  facts: context => whyFacts(context),
  'load-share': (context, { setup }) =>
    setup === undefined ? [whyLoadShare(context)] : whyBodyShare(setupContext(context, setup)),
  heat: (context, { leg }) => [whyHeat(context, leg)],
  'heat-table': (context, { leg }) => whyHeatTable(context, leg),
  sure: context => whySure(context),
  carry: (context, { stop, camps = [] }) => [...carriesOf(context, stop), ...whyCamps(context, stop, camps)],
  'on-the-way': (context, { left }) => whyOnTheWay(context, left),
  'set-up': (context, { setup }) => whySetup(context, setup),
  fit: (context, about) => whyFit(context, about),
  placing: (context, { pack }) => whyPlacing(context, pack),
  reach: (context, { setup }) => whyReach(setupContext(context, setup), setup),
  remedies: (context, { setup, remedies }) => whyRemedies(setupContext(context, setup), remedies),
  bears: (context, { setup }) => whyBears(context, setup),
}

/** Those of figures that bring what they are reckoned from. */
const ALONE: {
  [K in (PlanAbout | FoundAbout)['kind']]: (about: AboutOf<K>, formats: Formats) => Explanation[]
} = {
  tag: ({ plan, known }, formats) => whyTag(plan, known, formats),
  asked: ({ trips, packKg }, formats) => whyAsked(trips, { packKg, formats }),
  trips: ({ trips, setup }, formats) => whyTrips(trips, setup, formats),
  cover: ({ trips }, formats) => whyCover(trips, formats),
  measured: whyMeasured,
  'days-food': whyDaysFood,
  costs: whyCosts,
  swaps: whySwaps,
  noted: whyNoted,
  track: whyTrack,
}

/** Those that need no open plan. */
export const needsNoPlan = (about: About): about is PlanAbout | FoundAbout => Object.hasOwn(ALONE, about.kind)

/** Empty where the figure is not computed: none is given, or the hiker's own stands. */
export function explain(about: About, context: WhyContext): Explanation[] {
  if (needsNoPlan(about)) return explainAlone(about, context.formats)
  const reasons = REASONS[about.kind] as (context: WhyContext, about: About) => Explanation[]
  return reasons(context, about)
}

export const explainAlone = (about: PlanAbout | FoundAbout, formats: Formats): Explanation[] =>
  (ALONE[about.kind] as (about: About, formats: Formats) => Explanation[])(about, formats)

const peakOf = ({ reckoning: { moments, need } }: WhyContext) => momentIndex(moments, need.peakFullWaterAt)

const carriesOf = (context: WhyContext, stop: number) =>
  context.reckoning.carries.filter(carry => carry.stop === stop).map(carry => whyCarry(context, carry))

/** The water of a moment that is the departure from a source. */
function carriesAt(context: WhyContext, index: number): Explanation[] {
  const { stop, phase } = context.reckoning.moments[index]!
  return phase === 'depart' && isSource(context.plan, stop) ? carriesOf(context, stop) : []
}
