// Why a set-up has the room it has, and how likely the trip fits it. Source keys: gum-2008, our-judgement.

import { bodyHalfWidth } from '../../reckon'
import { marginText } from '../formats'
import { toldChance } from '../missing'
import { placeText } from '../places'
import { settingInput } from './origins'
import { packPath, type SetupContext, spareText } from './setup-words'
import { sumOf, told } from './sum'
import type { Explanation, WhyInput } from './types'
import { numberText } from './words'

const BODY_FROM = {
  'test-method': 'by test method',
  measured: 'measured',
  stated: 'stated',
  guess: 'guessed',
} as const

export function whyRoom(context: SetupContext): Explanation[] {
  return [spare(context), ...chance(context), ...size(context), ...pockets(context), ...innerSizes(context)]
}

function spare(context: SetupContext): Explanation {
  const { reckoning, formats, pack, judged, plan, missing } = context
  const { need, moments } = reckoning
  const { headroomLitres } = plan.settings
  return sumOf({
    title: 'Room',
    says: `The main body less the litres that this trip asks for ${placeText(need.bodyAt, moments)}, ${formats.litresUp(need.bodyLitres)} in whole litres; what fills them stands under Need.`,
    kind: 'volume',
    system: formats.system,
    show: formats.litres,
    text: spareText(
      judged.bodyMarginLitres,
      value => marginText(value, formats.litres),
      missing.litres.length > 0,
    ),
    parts: [
      { label: 'main body of the pack', value: pack.bodyLitres, path: packPath(context, 'bodyLitres') },
      { label: 'asked for', value: -need.bodyLitres },
      { label: 'what its pockets cannot take', value: need.bodyLitres - judged.bodyNeedLitres },
    ],
    inputs:
      headroomLitres === null
        ? []
        : [
            {
              label: 'Headroom you want',
              value: formats.litres(headroomLitres),
              from: 'yours',
              path: 'settings/headroomLitres',
            },
          ],
  })
}

function chance(context: SetupContext): Explanation[] {
  const { reckoning, formats, pack, judged, missing } = context
  const { need } = reckoning
  const { answer, fitChance, fitChanceWithCollar } = judged
  const fits = toldChance(fitChance, { missing, answer })
  const withCollar = toldChance(fitChanceWithCollar, { missing, answer })
  if (fits === null || withCollar === null) return []
  const half = bodyHalfWidth[pack.bodyFrom]
  const collar: WhyInput[] =
    pack.collarLitres > 0
      ? [
          {
            label: `With its collar, ${formats.litres(pack.bodyLitres + pack.collarLitres)} in all`,
            value: withCollar,
            path: packPath(context, 'collarLitres'),
          },
        ]
      : []
  return [
    told({
      title: 'How likely it fits',
      equation: 'Both sides are unsure, and the uncertainties add by their squares',
      says: `The need has a standard deviation of ${formats.litres(need.sigmaV)}; the litres of the pack are ${BODY_FROM[pack.bodyFrom]} and taken to be good to ± ${formats.percent(half)}. From 9 of 10 cases it counts as a fit, under 5 of 10 as too small.`,
      inputs: [
        { label: 'Main body', value: formats.litres(pack.bodyLitres), path: packPath(context, 'bodyLitres') },
        { label: 'Asked for', value: formats.litres(judged.bodyNeedLitres) },
        { label: 'The litres are', value: BODY_FROM[pack.bodyFrom], path: packPath(context, 'bodyFrom') },
        ...collar,
      ],
      result: { value: fitChance, text: fits },
      sourceKeys: ['gum-2008', 'our-judgement'],
    }),
  ]
}

function size(context: SetupContext): Explanation[] {
  const { formats, pack, judged } = context
  const { bodyNeedLitres } = judged
  if (bodyNeedLitres === 0) return []
  const ratio = pack.bodyLitres / bodyNeedLitres
  return [
    told({
      title: 'Main body for each litre asked for',
      says: 'The main body by the litres this trip asks for; beyond the threshold there is more pack than needed.',
      inputs: [
        { label: 'Main body', value: formats.litres(pack.bodyLitres), path: packPath(context, 'bodyLitres') },
        { label: 'Asked for', value: formats.litres(bodyNeedLitres) },
        settingInput(context, 'roomyRatio', value => `${numberText(value, 2)} times`),
      ],
      result: { value: ratio, text: `${ratio.toFixed(1)} times as much` },
    }),
  ]
}

function pockets(context: SetupContext): Explanation[] {
  const { reckoning, formats, pack, missing } = context
  const { outsideLitres } = reckoning.need
  if (pack.outsideLitres === null || outsideLitres === 0) return []
  return [
    sumOf({
      title: 'Pockets',
      says: 'The pockets less what is meant to go in them, which stands under Need.',
      kind: 'volume',
      system: formats.system,
      show: formats.litres,
      text: spareText(
        pack.outsideLitres - outsideLitres,
        value => marginText(value, formats.litres),
        missing.litres.length > 0,
      ),
      parts: [
        { label: 'pockets of the pack', value: pack.outsideLitres, path: packPath(context, 'outsideLitres') },
        { label: 'items meant for them', value: -outsideLitres },
      ],
    }),
  ]
}

/** The longest and the widest rigid thing against the inner measures that are known. */
function innerSizes(context: SetupContext): Explanation[] {
  const { reckoning, formats, pack } = context
  const { longestCm, widestCm } = reckoning.need
  const rows = [
    ['Height inside', longestCm, 'innerHeightCm'],
    ['Width inside', widestCm, 'innerWidthCm'],
    ['Depth inside', widestCm, 'innerDepthCm'],
  ] as const
  return rows.flatMap(([title, thing, field]) => {
    const inner = pack[field]
    if (thing === null || inner === null) return []
    return [
      sumOf({
        title,
        says: 'The inner measure of the pack less the largest rigid item.',
        kind: 'length',
        system: formats.system,
        show: formats.cm,
        text: spareText(inner - thing, value => marginText(value, formats.cm), false),
        parts: [
          { label: 'inside', value: inner, path: packPath(context, field) },
          { label: 'largest rigid item', value: -thing },
        ],
      }),
    ]
  })
}
