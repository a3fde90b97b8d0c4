// Why a set-up reaches as far as it does: what it may bear and hold besides the gear, what a day of food adds, and
// the days at each amount of water where the limit that rules changes.

import { type ReachBasis, reachBasisOf } from '../../reckon'
import { daysText, type ReachInWords, reachInWords, reachText } from '../compare-packs'
import { limitWithoutFrame } from '../limit-names'
import { type SetupContext, setupPath } from './setup-words'
import { sumOf, told } from './sum'
import { countedName, massPath } from './things'
import type { Explanation } from './types'

export function whyReach(context: SetupContext, setupIndex: number): Explanation[] {
  const { plan, reckoning, formats } = context
  const words = reachInWords(plan, reckoning, { setupIndex, formats })
  if (words === null) return []
  const basis = reachBasisOf(plan, reckoning)
  return [
    ...toBear(context, basis),
    aDay(context, basis),
    edge(context, words, basis),
    stretches(context, words),
  ]
}

function toBear(context: SetupContext, { baseKg }: ReachBasis): Explanation[] {
  const { reckoning, formats, judged, setup } = context
  if (judged.loadLimitKg === null) return []
  const ceiling = judged.loadLimitKg !== setup.ratedKg
  return [
    sumOf({
      title: 'Left to carry, for food and water',
      says: 'What it may carry, less the pack, a liner and the gear. Spare rations and fuel that is not bought with the food count as gear.',
      kind: 'mass',
      system: formats.system,
      show: formats.kg,
      parts: [
        {
          label: ceiling ? limitWithoutFrame(context.plan) : 'its rating',
          value: judged.loadLimitKg,
          path: ceiling ? 'settings/framelessCeilingKg' : setupPath(context, 'ratedKg'),
        },
        { label: 'the pack and a liner', value: reckoning.need.peakLoadFullWaterKg - judged.ratedAgainstKg },
        { label: 'all but food and water', value: -baseKg },
      ],
    }),
  ]
}

function aDay({ plan, formats }: SetupContext, { dayKg, dayLitres }: ReachBasis): Explanation {
  const daily = plan.gear.filter(item => item.use === 'daily')
  return told({
    title: 'A day more',
    says: 'A full ration and its fuel add this much to load and main body.',
    inputs: [
      ...daily.map(item => ({
        label: countedName(item),
        value: formats.gear(item.massKg * item.count),
        path: massPath(item),
      })),
      { label: 'Items in the main body', value: formats.litres(dayLitres) },
    ],
    result: { value: dayKg, text: formats.gear(dayKg) },
  })
}

/** The points of the curve: between two of them the days fall in a straight line. */
function edge(
  { formats, missing }: SetupContext,
  { points, runs }: ReachInWords,
  { dayKg }: ReachBasis,
): Explanation {
  const inputs = runs.flatMap(run =>
    run.points.map(point => ({
      label: `With ${formats.water(point.waterLitres)} of water, by ${run.label}`,
      value: daysText(point.days),
    })),
  )
  return told({
    title: 'Days of food for each amount of water',
    says: `What is left to carry, less the water, by ${formats.gear(dayKg)} a day; or the days at which the main body is full, where that is less. Rounded down.`,
    inputs,
    result: { value: points[0]?.days ?? 0, text: reachText(points[0] ? points[0].days : 0, missing) },
    ignores: 'water that is drunk on the way: it is the first departure that counts.',
  })
}

function stretches({ formats }: SetupContext, words: ReachInWords): Explanation {
  const most = Math.max(0, ...words.stretches.map(({ days }) => days))
  return told({
    title: 'This trip’s longest stretch',
    says: 'Rations eaten between two resupplies, and the water carried at the start.',
    inputs: words.stretches.map(stretch => ({
      label: stretch.name,
      value: `${daysText(stretch.days)} with ${formats.water(stretch.waterLitres)}`,
    })),
    result: { value: most, text: daysText(most) },
  })
}
