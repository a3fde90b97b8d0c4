// What is told of a set-up, a row a verdict: the engine's codes, and those that only the words have. Each sentence
// stands whole; its first words, which stand out, are given once more before it, and the compiler holds them to it.

import type { Pack, Plan, Setup } from '../plan'
import {
  apartFigures,
  isTripsDoing,
  type Reckoning,
  type SetupReckoning,
  VERDICTS,
  type VerdictAbout,
  type VerdictCode,
  type VerdictKind,
} from '../reckon'
import { tooLargeWords } from './fitting'
import { type Formats, marginText, percentOver } from './formats'
import { limitWithoutFrame, shareLimitName } from './limit-names'
import { type Figure, leastText, type Missing, missingOf, toldChance } from './missing'
import { placeText } from './places'

/** Codes that only the words have, by what each is about and what of the pack it stands on. */
const TOLD_ONLY = {
  fits: { about: 'room', needs: ['body'] },
  'bears-load': { about: 'load', needs: ['mass'] },
  brim: { about: 'load', needs: ['body', 'mass'] },
  'own-headroom': { about: 'own', needs: ['body'] },
  'own-light': { about: 'own', needs: ['body', 'mass'] },
  'nothing-taken': { about: 'missing' },
  'litres-missing': { about: 'missing' },
  'mass-missing': { about: 'missing-mass' },
  'both-missing': { about: 'missing' },
  fitting: { about: 'size' },
  'fitting-pair': { about: 'size' },
} as const

export type ToldCode = VerdictCode | keyof typeof TOLD_ONLY

export interface ToldKind extends Pick<VerdictKind, 'needs'> {
  about: VerdictAbout | 'own' | 'missing' | 'missing-mass'
}

const KINDS: Readonly<Record<ToldCode, ToldKind>> = { ...VERDICTS, ...TOLD_ONLY }
/** All of them, the engine's first, in the order in which they are told. */
export const TOLD_CODES = Object.keys(KINDS) as readonly ToldCode[]
export const kindOfVerdict = (code: ToldCode): ToldKind => KINDS[code]

/** The verdict in a few words; with `rest`, the reason and its numbers, it is the whole sentence. */
export interface Words {
  lead: string
  rest: string
}

export const said = <Lead extends string>(lead: Lead, text: `${Lead}${string}`): Words => ({
  lead,
  rest: text.slice(lead.length),
})

export interface Context {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
  /** Nobody has said what the pack weighs: a load that it counts in is that at least. */
  lacksOwnMass?: boolean
}

/** One set-up with all that is told of it. */
export interface OnSetup extends Context {
  setup: SetupReckoning
  pack: Pack
  chosen: Setup
  missing: Missing
}

export const onSetup = (setup: SetupReckoning, context: Context): OnSetup => {
  const pack = context.plan.packs[setup.pack]!
  return { ...context, setup, pack, chosen: pack.setups[setup.index]!, missing: missingOf(context.plan) }
}

/** Null: the code holds, and is not worth a word here. */
export const CODE_WORDS: Readonly<Record<VerdictCode, (on: OnSetup) => Words | null>> = {
  undersized: on => {
    const by = least(on, 'litres', on.setup.bodyMarginLitres)
    return said('Too small', `Too small by ${by} ${fullAt(on)}: ${bodyForNeed(on)}${fitChance(on)}.`)
  },
  tight: on => said('Tight', `Tight ${fullAt(on)}: ${bodyForNeed(on)}${fitChance(on)}.`),
  'fits-with-collar': on => {
    const { setup, pack, formats } = on
    if (setup.answer === 'cannot-tell') return null
    const all = formats.litres(pack.bodyLitres + pack.collarLitres)
    const chance = chanceWords(setup.fitChanceWithCollar, on)
    return said('Fits with its collar:', `Fits with its collar: ${all} in all${chance}.`)
  },
  roomy: on => {
    const { setup, pack, missing, formats } = on
    // Of a need that may be larger nothing can be called more than needed.
    if (setup.answer === 'cannot-tell' || missing.litres.length > 0) return null
    const times = (pack.bodyLitres / setup.bodyNeedLitres).toFixed(1)
    const much = setup.bodyNeedLitres > 0 ? `: ${times} times as much` : ''
    const { litres } = formats
    return said(
      'More than needed:',
      `More than needed: ${litres(pack.bodyLitres)} of main body where ${litres(setup.bodyNeedLitres)} is asked for${much}${fitChance(on)}.`,
    )
  },
  overloaded: on => {
    const by = least(on, 'mass', on.setup.ratedMarginKg ?? 0)
    return said('Overloaded', `Overloaded by ${by} ${heavyAt(on)}: ${loadAgainstRating(on)}.`)
  },
  'near-rating': on => {
    const { missing, setup, formats } = on
    const by = marginText(setup.ratedMarginKg ?? 0, formats.kg)
    // Of a load that may be larger the margin is the most there is.
    const within = missing.mass.length > 0 ? `at most ${by} from it` : `within ${by}`
    return said('Near its rating,', `Near its rating, ${within} ${heavyAt(on)}: ${loadAgainstRating(on)}.`)
  },
  'frameless-overloaded': on => {
    const { setup, chosen, formats } = on
    const limitKg = setup.loadLimitKg ?? 0
    const by = least(on, 'mass', setup.ratedAgainstKg - limitKg)
    const limit = `${formats.kg(limitKg)}, ${limitKg === chosen.ratedKg ? 'its rating' : limitWithoutFrame(on.plan)}`
    return said(
      'Too heavy without a frame',
      `Too heavy without a frame by ${by} ${heavyAt(on)}: ${loadText(on)} against ${limit}.`,
    )
  },
  'outgrows-its-support': ({ setup, chosen, plan, formats: { kg } }) => {
    const limit =
      setup.loadLimitKg === chosen.ratedKg
        ? `its rating of ${kg(chosen.ratedKg ?? 0)}`
        : `${kg(setup.loadLimitKg ?? 0)}, ${limitWithoutFrame(plan)}`
    return said(
      'Full, it would be overloaded:',
      `Full, it would be overloaded: filled to the brim with items like these it comes to ${kg(setup.brimLoadKg ?? 0)}, over ${limit}: leave room empty.`,
    )
  },
  'rating-unknown': on => {
    const { loadLimitKg } = on.setup
    return said(
      'Rating unknown:',
      loadLimitKg === null
        ? `Rating unknown: ask its maker whether it can carry ${ratedLoad(on)}.`
        : `Rating unknown: ${ratedLoad(on)}, held to ${limitWithoutFrame(on.plan)}, ${on.formats.kg(loadLimitKg)}.`,
    )
  },
  'outside-short': on => {
    const { pack, missing, reckoning, formats } = on
    const { outsideLitres } = reckoning.need
    const { litres } = formats
    const holds = pack.outsideLitres ?? 0
    const by = least(on, 'litres', outsideLitres - holds)
    return said(
      'Pockets too small',
      `Pockets too small by ${by}: ${litres(holds)} for ${leastText(missing, 'litres', litres(outsideLitres))} of items meant for them. The rest is counted inside.`,
    )
  },
  'too-long': on => tooLargeWords('too-long', { ...on, need: on.reckoning.need }),
  'too-wide': on => tooLargeWords('too-wide', { ...on, need: on.reckoning.need }),
  'heavy-for-carrier': on => {
    const { setup, plan, formats } = on
    // Too much without any pack is the trip's doing: said once, and not of every pack.
    if (isTripsDoing(plan, on.reckoning.need)) return null
    const { loadShareLimit } = plan.carrier
    const share = percentOver(setup.bodyMassShare, loadShareLimit, formats)
    return said(
      'Heavy for you:',
      `Heavy for you: ${leastText(on.missing, 'mass', formats.kg(setup.carriedKg))} with the pack ${heavyAt(on)} is ${leastText(on.missing, 'mass', share)} of your body mass; ${shareLimitName(plan)} is ${formats.percent(loadShareLimit)}.`,
    )
  },
}

export function fitWords(on: OnSetup): Words {
  const { setup, pack, missing, formats } = on
  const [has, need] = [formats.litres(pack.bodyLitres), formats.litres(setup.bodyNeedLitres)]
  return missing.litres.length > 0
    ? said('Fits so far:', `Fits so far: ${has} for the ${need} counted.`)
    : said('Fits:', `Fits: ${has} for the ${need} this trip asks for${fitChance(on)}.`)
}

export function bearsWords(on: OnSetup): Words {
  const { setup, chosen, missing, formats } = on
  const limit =
    chosen.ratedKg !== null && setup.loadLimitKg === chosen.ratedKg
      ? `a rating of ${formats.kg(chosen.ratedKg)}`
      : `${formats.kg(setup.loadLimitKg ?? 0)}, ${limitWithoutFrame(on.plan)}`
  const against = `${ratedLoad(on)} against ${limit}`
  return missing.mass.length > 0
    ? said('Carries the load so far:', `Carries the load so far: ${against}.`)
    : said('Carries the load:', `Carries the load: ${against}.`)
}

/** What a full main body comes to where no gear is told; null where no limit is known. */
export function brimWords({ plan, pack, chosen, formats: { kg, density } }: OnSetup): Words | null {
  const { brimLoadKg, brimLimitKg, outgrows } = apartFigures(pack, chosen, plan.settings)
  if (brimLimitKg === null) return null
  const whose = brimLimitKg === chosen.ratedKg ? 'its rating' : limitWithoutFrame(plan)
  const full = `about ${kg(brimLoadKg)} at ${density(plan.settings.brimKgPerLitre)}`
  return outgrows
    ? said(
        'Full, more than it can carry:',
        `Full, more than it can carry: ${full}, over ${kg(brimLimitKg)}, ${whose}.`,
      )
    : said(
        'Full, it can be carried:',
        `Full, it can be carried: ${full}, within ${kg(brimLimitKg)}, ${whose}.`,
      )
}

const fullAt = ({ reckoning: { need, moments } }: OnSetup) => placeText(need.bodyAt, moments)
const heavyAt = ({ reckoning: { need, moments } }: OnSetup) => placeText(need.peakFullWaterAt, moments)

const bodyForNeed = ({ setup, pack, missing, formats: { litres } }: OnSetup) =>
  `${litres(pack.bodyLitres)} of main body for ${leastText(missing, 'litres', litres(setup.bodyNeedLitres))}`

/** How far beyond, which what is missing can only raise. */
export function least(on: OnSetup, of: Figure, margin: number): string {
  const { missing, formats } = on
  const format = of === 'litres' ? formats.litres : formats.kg
  const isLeast = of === 'mass' ? isLoadOpen(on) : missing.litres.length > 0
  const text = marginText(margin, format)
  if (!isLeast) return text
  return format(Math.abs(margin)) === format(0) ? 'at least a little' : `at least ${text}`
}

/** What nobody has said could make the load against its limit larger. */
const isLoadOpen = ({ missing, chosen, lacksOwnMass = false }: OnSetup): boolean =>
  missing.mass.length > 0 || (lacksOwnMass && chosen.ratingCovers !== 'contents')

const loadText = (on: OnSetup) =>
  `${isLoadOpen(on) ? 'at least ' : ''}${on.formats.kg(on.setup.ratedAgainstKg)}`

const ratedLoad = (on: OnSetup) =>
  `${loadText(on)} of ${on.chosen.ratingCovers === 'contents' ? 'contents' : 'contents and pack'}`

const loadAgainstRating = (on: OnSetup) =>
  `${ratedLoad(on)} against a rating of ${on.formats.kg(on.chosen.ratedKg ?? 0)}`

const fitChance = (on: OnSetup) => chanceWords(on.setup.fitChance, on)

/** "; about 9 chances in 10 that it fits", where that can be told. */
function chanceWords(chance: number, { setup: { answer }, missing }: OnSetup): string {
  const told = toldChance(chance, { missing, answer })
  return told === null ? '' : `; ${told} that it fits`
}
