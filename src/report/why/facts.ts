// Why the lesser figures of the need are what they are: base weight, what is worn, pockets, water, density, measures
// and the share of body mass. Source key: our-judgement.

import { fieldPath } from '../../plan'
import { compositionAt, type Moment, rigidInBody, stowsOf } from '../../reckon'
import { momentAt, momentIndex, placeText } from '../places'
import { whyCarry } from './carry'
import { commonShare, shareLimit } from './share-limit'
import { sumOf, told } from './sum'
import { countedName, litresPath, massPath, thingParts } from './things'
import type { Explanation, WhyContext } from './types'

/** Base weight and what is worn, by their things. */
export function whyBaseWeight(context: WhyContext): Explanation[] {
  const { plan, reckoning, formats } = context
  const { need, moments } = reckoning
  const composition = compositionAt(plan, reckoning, momentIndex(moments, need.peakAt))
  const stowOf = stowsOf(plan.gear)
  const sum = { kind: 'mass', system: formats.system, show: formats.kg } as const
  const byThing = { path: massPath, show: formats.gear }
  const base = sumOf({
    ...sum,
    title: 'Base weight',
    says: 'All that is carried and not used up: no food, fuel, water or pack, nothing worn.',
    parts: thingParts(
      composition.map(({ item, kg, rubbishShare }) => ({
        item,
        value: item.use === 'kept' ? kg * (1 - rubbishShare) : 0,
      })),
      byThing,
    ),
  })
  const worn = sumOf({
    ...sum,
    title: 'Worn and in hand',
    says: 'Items said to be worn: they are on you, not in the load.',
    parts: thingParts(
      composition.map(({ item }) => ({
        item,
        value: stowOf(item) === 'worn' ? item.massKg * item.count : 0,
      })),
      byThing,
    ),
  })
  return [base, worn]
}

/** All that stands in the list of facts, in its order. */
export function whyFacts(context: WhyContext): Explanation[] {
  const { need } = context.reckoning
  return [
    ...whyBaseWeight(context),
    whyPockets(context),
    ...whyMostWater(context),
    ...whyContainers(context),
    ...whyMeasures(context),
    ...(need.packedDensity === null ? [] : [whyDensity(context)]),
    whyLoadShare(context),
  ]
}

function whyPockets({ plan, reckoning, formats }: WhyContext): Explanation {
  const { moments, need } = reckoning
  const fullest = moments.reduce(
    (best, { outsideLitres }, i) => (outsideLitres > moments[best]!.outsideLitres ? i : best),
    0,
  )
  return sumOf({
    title: 'Room in pockets',
    says: 'Items said to go in an outside pocket, where they take most. Bottles that hang outside are not among them.',
    kind: 'volume',
    system: formats.system,
    show: formats.litres,
    text: formats.litres(need.outsideLitres),
    parts: thingParts(
      compositionAt(plan, reckoning, fullest).map(({ item, pocketLitres }) => ({
        item,
        value: pocketLitres,
      })),
      { path: litresPath, show: formats.litres },
    ),
  })
}

/** The carry that is the largest, and the one that falls short most if it is another. */
function whyMostWater(context: WhyContext): Explanation[] {
  const { carries } = context.reckoning
  const most = carries.reduce((a, b) => (b.carriedLitres > a.carriedLitres ? b : a), carries[0]!)
  const short = carries.reduce((a, b) => (b.shortLitres > a.shortLitres ? b : a), most)
  return [...new Set([most, short])].map(carry => whyCarry(context, carry))
}

function whyContainers({ plan, reckoning, formats }: WhyContext): Explanation[] {
  if (reckoning.need.waterCapacityLitres === null) return []
  return [
    sumOf({
      title: 'Bottles hold',
      says: 'What the bottles and bags in the gear hold together.',
      kind: 'volume',
      system: formats.system,
      show: formats.water,
      parts: thingParts(
        plan.gear.map(item => ({ item, value: item.holdsWaterLitres * item.count })),
        { path: ({ id }) => fieldPath('gear', id, 'holdsWaterLitres'), show: formats.water },
      ),
    }),
  ]
}

function whyMeasures({ plan, reckoning, formats }: WhyContext): Explanation[] {
  const { longestCm, widestCm } = reckoning.need
  const rigid = rigidInBody({ gear: plan.gear, stowOf: stowsOf(plan.gear) })
  const measure = (title: string, field: 'lengthCm' | 'diameterCm', cm: number | null) => {
    if (cm === null) return []
    const item = rigid.find(each => each[field] === cm)
    return [
      told({
        title,
        says: 'The largest measure among the rigid items in the main body.',
        inputs: item
          ? [{ label: countedName(item), value: formats.cm(cm), path: fieldPath('gear', item.id, field) }]
          : [],
        result: { value: cm, text: formats.cm(cm) },
      }),
    ]
  }
  return [
    ...measure('Longest rigid item inside', 'lengthCm', longestCm),
    ...measure('Widest rigid item inside', 'diameterCm', widestCm),
  ]
}

function whyDensity({ reckoning, formats }: WhyContext): Explanation {
  const { need, moments } = reckoning
  const full: Moment = momentAt(reckoning, need.bodyAt)
  return told({
    title: 'Packed density',
    says: 'What is in the main body at its fullest, by its litres with gaps.',
    inputs: [
      { label: `Mass in the main body, ${placeText(need.bodyAt, moments)}`, value: formats.kg(full.bodyKg) },
      { label: 'Litres it takes', value: formats.litres(full.bodyLitres) },
    ],
    result: { value: need.packedDensity ?? 0, text: formats.density(need.packedDensity ?? 0) },
  })
}

/** The heaviest load as a share of body mass; without the pack. */
export function whyLoadShare(context: WhyContext): Explanation {
  const { plan, reckoning, formats } = context
  const { peakLoadFullWaterKg } = reckoning.need
  const share = peakLoadFullWaterKg / plan.carrier.massKg
  return told({
    title: 'Heaviest load, share of body mass',
    says: 'The heaviest load, without the pack, by the body mass of who carries it.',
    inputs: [
      { label: 'Heaviest load', value: formats.kg(peakLoadFullWaterKg) },
      { label: 'Body mass', value: formats.kg(plan.carrier.massKg), path: 'carrier/massKg' },
      shareLimit(context),
      ...commonShare(context),
    ],
    result: { value: share, text: formats.percent(share) },
  })
}
