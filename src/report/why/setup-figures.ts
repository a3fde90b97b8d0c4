// Why the figures by which packs are compared are what they are: mass for each litre and kilogram, price for each
// litre, how many days it reaches, and whether another beats it.

import { frontierOf } from '../../reckon'
import { formatQuantity } from '../../units'
import { reachText } from '../compare-packs'
import { toldChance } from '../missing'
import { packPath, type SetupContext, setupPath } from './setup-words'
import { told } from './sum'
import type { Explanation, WhyInput } from './types'

export function whyFigures(context: SetupContext): Explanation[] {
  return [...byMass(context), ...byPrice(context), ...days(context), ...beaten(context)]
}

function massInput(context: SetupContext): WhyInput {
  const { formats, setup } = context
  return { label: 'Mass of the pack', value: formats.gear(setup.massKg), path: setupPath(context, 'massKg') }
}

function bodyInput(context: SetupContext): WhyInput {
  const { formats, pack } = context
  return { label: 'Main body', value: formats.litres(pack.bodyLitres), path: packPath(context, 'bodyLitres') }
}

function byMass(context: SetupContext): Explanation[] {
  const { judged, setup, formats, plan } = context
  const { gramsPerLitre, gramsPerRatedKg } = judged
  const { lightGramsPerLitre } = plan.settings
  const light: WhyInput[] =
    lightGramsPerLitre === null
      ? []
      : [
          {
            label: 'Light for you, up to',
            value: formats.gramsPerLitre(lightGramsPerLitre),
            from: 'yours',
            path: 'settings/lightGramsPerLitre',
          },
        ]
  const litre = told({
    title: 'Pack mass for each litre',
    says: 'The mass of the pack by its main body.',
    inputs: [massInput(context), bodyInput(context), ...light],
    result: { value: gramsPerLitre, text: formats.gramsPerLitre(gramsPerLitre) },
  })
  if (gramsPerRatedKg === null || setup.ratedKg === null) return [litre]
  const rated = told({
    title: 'Pack mass for each kg rated',
    says: 'The mass of the pack by its rating.',
    inputs: [
      massInput(context),
      { label: 'Its rating', value: formats.kg(setup.ratedKg), path: setupPath(context, 'ratedKg') },
    ],
    result: { value: gramsPerRatedKg, text: formats.gramsPerKg(gramsPerRatedKg) },
  })
  return [litre, rated]
}

function byPrice(context: SetupContext): Explanation[] {
  const { judged, pack } = context
  if (judged.pricePerLitre === null || pack.price === null) return []
  const price = formatQuantity('money', pack.price, { system: 'metric' })
  return [
    told({
      title: 'Price for each litre',
      says: 'The price by the main body.',
      inputs: [
        { label: 'Price', value: `${price} ${pack.currency ?? ''}`.trim(), path: packPath(context, 'price') },
        bodyInput(context),
      ],
      result: {
        value: judged.pricePerLitre,
        text: `${judged.pricePerLitre.toFixed(2)} ${pack.currency ?? ''}`.trim(),
      },
    }),
  ]
}

function days({ judged, reckoning, formats, missing }: SetupContext): Explanation[] {
  if (judged.reachDays === null) return []
  return [
    told({
      title: 'Can carry food for',
      says: 'The most full rations it can hold and carry at the first departure. The water is the most this trip carries; all else is as packed then. Rounded down. “How far it reaches” has the parts.',
      inputs: [{ label: 'Most water carried', value: formats.water(reckoning.need.waterCarryLitres) }],
      result: {
        value: judged.reachDays,
        text: reachText(judged.reachDays, missing),
      },
    }),
  ]
}

/** Said of a set-up that no other beats, and of one that is beaten: by what it is held against the others. */
function beaten({ judged, plan, reckoning, formats, setup, pack, missing }: SetupContext): Explanation[] {
  const { packs } = reckoning
  if (packs.length < 2 || !judged.suffices) return []
  const index = packs.indexOf(judged)
  const isBeaten = !frontierOf(reckoning, plan)[index]
  const rivals = packs.filter(other => other.suffices).length
  const isTold = toldChance(judged.fitChance, { missing, answer: judged.answer }) !== null
  const spare =
    judged.loadLimitKg === null ? 'not known' : formats.kg(judged.loadLimitKg - judged.ratedAgainstKg)
  return [
    told({
      title: 'Against the others',
      says: 'Of suitable set-ups, one is beaten by another that is nowhere worse. It must be better in one of the four points. What is not known counts as worst.',
      inputs: [
        { label: 'Pack and liner', value: formats.gear(setup.massKg + judged.linerKg) },
        {
          label: 'Price',
          value:
            pack.price === null ? 'not known' : formatQuantity('money', pack.price, { system: 'metric' }),
        },
        ...(isTold ? [{ label: 'Chance that it fits', value: formats.percent(judged.fitChance) }] : []),
        { label: 'Margin to what it may carry', value: spare },
        { label: 'Suitable set-ups', value: String(rivals) },
      ],
      result: { value: isBeaten ? 0 : 1, text: isBeaten ? 'another beats it' : 'no other beats it' },
    }),
  ]
}
