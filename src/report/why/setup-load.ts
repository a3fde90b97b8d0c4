// Why a set-up bears or does not bear the load: what is carried, its rating, the limit without a frame, what it would
// come to when full, and the carrier's own limit. Source keys: frameless-ceiling, our-judgement.

import { marginText, percentOver } from '../formats'
import { framelessLimit, limitWithoutFrame } from '../limit-names'
import { momentAt, placeText } from '../places'
import { settingInput } from './origins'
import { type SetupContext, setupPath, spareText } from './setup-words'
import { commonShare, shareLimit } from './share-limit'
import { sumOf, told, type Unshown } from './sum'
import type { Explanation } from './types'

export function whyLoad(context: SetupContext): Explanation[] {
  return [carried(context), ...limits(context), ...brim(context), share(context)]
}

/** What is carried at the heaviest, and its share of body mass. */
export const whyBodyShare = (context: SetupContext): Explanation[] => [carried(context), share(context)]

const massOf = ({ formats: { system, kg } }: SetupContext) => ({ kind: 'mass', system, show: kg }) as const

/** What the pack itself adds, where it counts. */
function ownParts(context: SetupContext, withPack: boolean): Unshown[] {
  const { formats, setup, judged } = context
  const { gear } = formats
  const own = { value: setup.massKg, path: setupPath(context, 'massKg') }
  return [
    ...(withPack ? [{ label: `the pack, ${gear(setup.massKg)}`, ...own }] : []),
    { label: `a liner, ${gear(judged.linerKg)}`, value: judged.linerKg, path: 'settings/linerKg' },
  ]
}

function carried(context: SetupContext): Explanation {
  const { reckoning, judged, formats } = context
  const { need, moments } = reckoning
  return sumOf({
    ...massOf(context),
    title: `Heaviest load, ${placeText(need.peakFullWaterAt, moments)}`,
    says: 'The heaviest load of Need, with the pack. A liner is added where rain is likely and the pack not sealed.',
    parts: [{ label: 'contents', value: need.peakLoadFullWaterKg }, ...ownParts(context, true)],
    inputs: judged.linerKg > 0 ? [settingInput(context, 'linerKg', formats.gear)] : [],
  })
}

/** Against its rating, and against the hiker's limit where it has no frame. */
function limits(context: SetupContext): Explanation[] {
  const { setup, judged, plan, formats, missing } = context
  const { ratedKg, frame, ratingCovers } = setup
  const withPack = ratingCovers !== 'contents'
  const covers = withPack ? 'contents and pack' : 'contents alone'
  const against = (title: string, says: string, limit: Unshown, ceiling: boolean) =>
    sumOf({
      ...massOf(context),
      title,
      says,
      text: spareText(
        limit.value - judged.ratedAgainstKg,
        value => marginText(value, formats.kg),
        missing.mass.length > 0,
      ),
      parts: [
        limit,
        { label: `carried, ${covers}`, value: -judged.ratedAgainstKg, of: taken(context, withPack) },
      ],
      inputs: ceiling ? [settingInput(context, 'framelessCeilingKg', formats.kg)] : [],
      sourceKeys: ceiling ? ['frameless-ceiling'] : ['our-judgement'],
    })
  const rated =
    ratedKg === null
      ? []
      : [
          against(
            'Against its rating',
            `The maker’s rating, for ${covers}, less what is carried. From 90 % of it the load counts as near it (our judgement).`,
            { label: 'its rating', value: ratedKg, path: setupPath(context, 'ratedKg') },
            false,
          ),
        ]
  const { framelessCeilingKg } = plan.settings
  const ceiling = frame === 'frameless' && (ratedKg === null || framelessCeilingKg < ratedKg)
  if (!ceiling) return rated
  const path = 'settings/framelessCeilingKg'
  return [
    ...rated,
    against(
      `Against ${limitWithoutFrame(plan)}`,
      `Without a frame the shoulders carry it all: the lower of rating and ${framelessLimit(plan)} counts.`,
      { label: framelessLimit(plan), value: framelessCeilingKg, path },
      true,
    ),
  ]
}

/** The parts of what is held against a limit, taken off. */
function taken(context: SetupContext, withPack: boolean) {
  const { reckoning, formats } = context
  const parts: Unshown[] = [
    { label: 'contents', value: reckoning.need.peakLoadFullWaterKg },
    ...ownParts(context, withPack),
  ]
  return parts
    .filter(part => part.value !== 0)
    .map(part => ({ ...part, value: -part.value, text: `− ${formats.kg(part.value)}` }))
}

function brim(context: SetupContext): Explanation[] {
  const { reckoning, judged, pack, setup, formats } = context
  const { packedDensity, bodyAt } = reckoning.need
  if (judged.brimLoadKg === null || packedDensity === null) return []
  const full = momentAt(reckoning, bodyAt)
  const limit =
    judged.loadLimitKg === null ? [] : [{ label: 'It can carry', value: formats.kg(judged.loadLimitKg) }]
  return [
    sumOf({
      ...massOf(context),
      title: 'Filled to the brim',
      says: 'The load if the main body were filled with items as dense as these: room that must stay empty shows here.',
      parts: [
        {
          label: `${formats.litres(pack.bodyLitres)} at ${formats.density(packedDensity)}`,
          value: pack.bodyLitres * packedDensity,
        },
        { label: 'outside the main body', value: full.kg.total - full.bodyKg },
        ...ownParts(context, setup.ratingCovers !== 'contents'),
      ],
      inputs: limit,
    }),
  ]
}

function share(context: SetupContext): Explanation {
  const { judged, plan, formats } = context
  const { bodyMassShare, carriedKg } = judged
  return told({
    title: 'Share of body mass, with the pack',
    says: 'The heaviest load by the body mass of who carries it. A rule of thumb, not medical advice.',
    inputs: [
      { label: 'Carried', value: formats.kg(carriedKg) },
      { label: 'Body mass', value: formats.kg(plan.carrier.massKg), path: 'carrier/massKg' },
      shareLimit(context),
      ...commonShare(context),
    ],
    result: { value: bodyMassShare, text: percentOver(bodyMassShare, plan.carrier.loadShareLimit, formats) },
  })
}
