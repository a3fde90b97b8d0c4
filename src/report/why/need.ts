// Why the main body needs its litres and the load its kilograms, at any moment: gear, food, fuel, water and rubbish,
// each by its things. Source keys: stovall-1986, furnas-1931, gum-2008, our-judgement.

import { fieldPath } from '../../plan'
import {
  meanFilling,
  packingOf,
  roomFor,
  roomRange,
  type UncertaintyShare,
  uncertaintySharesOf,
} from '../../reckon'
import { likelyLoadText, likelyRange, likelyText } from '../confidence'
import { safeLoadKg } from '../loads'
import { leastText, missingOf, notInItText } from '../missing'
import { momentIndex, placeText } from '../places'
import { settingInput } from './origins'
import { sumOf } from './sum'
import { countedName, litresParts, litresPath, loadParts } from './things'
import type { Explanation, PlanContext, WhyInput, WhyOther } from './types'
import { numberText } from './words'

/** The things that make the litres most unsure are named, so many at most. */
const MOST_DOUBTS = 3

export function whyBodyLitres(context: PlanContext): Explanation {
  const { reckoning, formats } = context
  const { need, moments } = reckoning
  const at = momentIndex(moments, need.bodyAt)
  const own = whyMomentLitres(context, at)
  const { rigidLitres, softLitres } = moments[at]!
  const packing = packingOf(context.plan.settings, need.factor)
  const { low, high } = roomRange(rigidLitres, softLitres, packing)
  const { litres, litresUp } = formats
  const { low: least, high: most } = likelyRange(need)
  const missing = missingOf(context.plan)
  const noLitres = notInItText(missing, 'litres')
  const likely = `Likely ${litres(least)} to ${litres(most)}, in whole litres ${likelyText(need, formats)}: 1.28 times the standard deviation of ${litres(need.sigmaV)} either way, so ${litresUp(most)} is enough in about 9 of 10 cases.`
  return {
    ...own,
    title: `Main body, fullest ${placeText(need.bodyAt, moments)}`,
    result: { ...own.result, text: leastText(missing, 'litres', own.result.text) },
    range: {
      bounds: [],
      note: `${litresUp(need.bodyLitres)} on the screen: a need is never rounded down. ${noLitres ? `${noLitres}.` : likely}`,
    },
    inputs: [...own.inputs, ...(noLitres ? [] : uncertaintyInputs(context))],
    sourceKeys: [...own.sourceKeys, 'gum-2008'],
    others: {
      title: 'The same items',
      list: [
        { label: 'with every gap filled', value: low, text: litres(low), sourceKeys: [] },
        { label: 'with no gap filled', value: high, text: litres(high), sourceKeys: [] },
      ],
      note: 'What is measured by filling is surest, a guess is least sure; the half-widths are our judgement.',
    },
  }
}

/** What is free, or too much, in a pack at a moment. */
export function whyFree(
  context: PlanContext,
  { moment, pack: index }: { moment: number; pack: number },
): Explanation[] {
  const { plan, reckoning, formats, packIds } = context
  const pack = plan.packs[index]
  if (!pack) return []
  const { litres, system } = formats
  const id = packIds?.[index]?.id
  const inLitres = reckoning.moments[moment]!.bodyLitres
  const free = pack.bodyLitres - inLitres
  const most = inLitres - pack.bodyLitres - pack.collarLitres
  return [
    sumOf({
      title: `${pack.name} then`,
      says: 'Its main body less what is inside at this moment.',
      kind: 'volume',
      system,
      show: litres,
      text: free < 0 ? `${litres(-free)} over the brim` : `${litres(free)} free`,
      parts: [
        {
          label: 'main body to the brim',
          value: pack.bodyLitres,
          path: id === undefined ? undefined : fieldPath('packs', id, 'bodyLitres'),
        },
        { label: 'inside', value: -inLitres },
      ],
      inputs:
        pack.collarLitres > 0
          ? [
              { label: 'Collar', value: litres(pack.collarLitres) },
              ...(most > 0 ? [{ label: 'More than the collar takes', value: litres(most) }] : []),
            ]
          : [],
    }),
  ]
}

/** Each kind of thing with its part of the gaps, as the picture of the pack draws them. */
export function whyMomentLitres(context: PlanContext, index: number): Explanation {
  const { plan, reckoning, formats } = context
  const moment = reckoning.moments[index]!
  const { settings } = plan
  const { factor } = reckoning.need
  const packing = packingOf(settings, factor)
  const { bodyLitres, rules } = roomFor(moment.rigidLitres, moment.softLitres, packing)
  const bands = litresParts(context, index)
  const things = bands.reduce((sum, band) => sum + band.value, 0)
  const withGaps = bands.map(band => {
    const gaps = things > 0 ? (band.value / things) * (bodyLitres - things) : 0
    const [first] = band.of ?? [{ label: band.label, value: band.value, text: formats.litres(band.value) }]
    const of = first ? [...(band.of ?? [first]), gapsPart(gaps, formats.litres)] : []
    return { ...band, value: band.value + gaps, of }
  })
  return sumOf({
    title: `Main body, ${placeText(placeOf(context, index), reckoning.moments)}`,
    equation: 'Packing model of Stovall, de Larrard and Buil, 1986',
    says: `Rigid items leave gaps and soft items fill part of them. Here ${rules === 'skeleton' ? 'the rigid items rule' : 'the soft items rule'}: they ask for more room.`,
    kind: 'volume',
    system: formats.system,
    show: formats.litres,
    parts: withGaps,
    inputs: [
      { label: 'Rigid items inside', value: formats.litres(moment.rigidLitres) },
      { label: 'Soft items inside', value: formats.litres(moment.softLitres) },
      settingInput(context, 'rigidPacking', formats.percent),
      settingInput(context, 'softPacking', formats.percent),
      settingInput(context, 'fillEfficiency', formats.percent),
      ...fillingInput(settings.fillEfficiency, formats),
      ...(factor === 1 ? [] : [{ label: 'From your own packing', value: `${numberText(factor, 2)} times` }]),
    ],
    sourceKeys: ['stovall-1986', 'furnas-1931', 'our-judgement'],
    ignores:
      'the shapes of items and of the pack; long and wide rigid items are held against its inner measures apart.',
  })
}

const gapsPart = (value: number, show: (value: number) => string) => ({
  label: value < 0 ? 'pressed closer than they are' : 'gaps between them',
  value,
  text: value < 0 ? `− ${show(-value)}` : show(value),
  path: 'settings/softPacking',
})

const placeOf = ({ plan, reckoning }: PlanContext, index: number) => {
  const { stop, phase } = reckoning.moments[index]!
  return { stop, phase, name: plan.trip.stops[stop]!.name }
}

/** As the setting is the likeliest filling, and not the mean. */
function fillingInput(fillEfficiency: number, { percent }: PlanContext['formats']): WhyInput[] {
  const filling = meanFilling(fillEfficiency)
  if (percent(filling) === percent(fillEfficiency)) return []
  return [{ label: 'Used here: the mean of this, none and all', value: percent(filling) }]
}

const PACKING_DOUBTS: Record<Exclude<UncertaintyShare['of'], 'item'>, string> = {
  packing: 'How well gaps fill',
  hand: 'How one hand differs from another',
  reading: 'How well your packings were read',
}

function uncertaintyInputs({ plan, reckoning, formats }: PlanContext): WhyInput[] {
  const shares = uncertaintySharesOf(plan, reckoning).slice(0, MOST_DOUBTS)
  return shares.map(share => {
    const value = `${formats.percent(share.share)} of the uncertainty`
    if (share.of !== 'item') return { label: PACKING_DOUBTS[share.of], value }
    const item = plan.gear.find(each => each.id === share.id)!
    return { label: `Litres of ${countedName(item)}`, value, path: litresPath(item) }
  })
}

export function whyPeakLoad(context: PlanContext): Explanation {
  const { reckoning, formats } = context
  const { need, moments } = reckoning
  const at = momentIndex(moments, need.peakFullWaterAt)
  const safeKg = safeLoadKg(need)
  const missing = missingOf(context.plan)
  const noMass = notInItText(missing, 'mass')
  const own = whyMomentLoad(context, at, need.peakLoadFullWaterKg - moments[at]!.kg.total)
  const held: WhyOther[] =
    need.waterShortLitres > 0
      ? [
          {
            label: 'with what your bottles hold',
            value: need.peakLoadKg,
            text: leastText(missing, 'mass', formats.kg(need.peakLoadKg)),
            sourceKeys: [],
          },
        ]
      : []
  const title = `Heaviest load, ${placeText(need.peakFullWaterAt, moments)}`
  if (noMass)
    return {
      ...own,
      title,
      result: { ...own.result, text: leastText(missing, 'mass', own.result.text) },
      range: { bounds: [], note: `${noMass}.` },
      others: held.length > 0 ? { title: 'With less water', list: held, note: '' } : null,
    }
  return {
    ...own,
    title,
    sourceKeys: ['gum-2008'],
    others: {
      title: 'With its likely error',
      list: [
        {
          label: 'at most, in 9 of 10 cases',
          value: safeKg,
          text: formats.kg(safeKg),
          sourceKeys: ['gum-2008'],
        },
        ...held,
      ],
      note: `Likely ${likelyLoadText(need, formats)}: 1.28 times the standard deviation of ${formats.gear(need.sigmaM)} either way. Weighed is good to ± 0.5 %, stated to 5 %, a guess to 20 % (our judgement).`,
    },
  }
}

/** `wantedKg`: water that no container holds, counted as well. */
export function whyMomentLoad(
  context: PlanContext,
  index: number,
  wantedKg = context.reckoning.moments[index]!.wantedLitres,
): Explanation {
  const { reckoning, formats } = context
  const { kg, km, hours } = reckoning.moments[index]!
  return sumOf({
    title: `Load ${placeText(placeOf(context, index), reckoning.moments)}`,
    says: 'All that is not worn, with the food, fuel, water and rubbish of then. Without the pack.',
    kind: 'mass',
    system: formats.system,
    show: formats.kg,
    parts: [
      ...loadParts(context, index),
      ...(wantedKg > 0 ? [{ label: 'water your bottles do not hold', value: wantedKg }] : []),
    ],
    inputs: [
      ...(wantedKg > 0 ? [{ label: 'With what your bottles hold', value: formats.kg(kg.total) }] : []),
      { label: 'Walked by then', value: `${formats.km(km)}, ${formats.hours(hours)}` },
    ],
    ignores: 'rain and sweat soaked up on the way.',
  })
}
