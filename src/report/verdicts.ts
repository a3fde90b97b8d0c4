// Each verdict as a sentence with its number and reason, and one headline a set-up.

import type { Plan, Setup } from '../plan'
import type { Reckoning, SetupReckoning, VerdictCode } from '../reckon'
import { type FitVerdict, fittingVerdicts, tooLargeWords } from './fitting'
import { type Missing, NOTHING_MISSING, verbFor, withoutText } from './missing'
import { placeText } from './places'
import { chanceText, marginText, percentOver, type Shown } from './shown'

export interface Verdict {
  code:
    | VerdictCode
    | FitVerdict['code']
    | 'fits'
    | 'bears-load'
    | 'litres-missing'
    | 'mass-missing'
    | 'own-headroom'
    | 'own-light'
  /** The verdict in a few words; with `rest` it is the whole sentence. */
  lead: string
  /** The reason, with its numbers. */
  rest: string
  /** How it bears on the answer. */
  weight: 'fails' | 'warns' | 'says'
}

export interface SetupInWords {
  /** The answer for this set-up; "so far" while the litres or the mass of a thing are not known. */
  answer: 'Will do' | 'Will do, with care' | 'So far it will do' | 'Will not do'
  /** The verdict that decides, first; then the others. */
  verdicts: [Verdict, ...Verdict[]]
}

interface Context {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
  /** The things that the plan counts as nothing; absent: none. */
  missing?: Missing
}

const WEIGHT: Record<VerdictCode, Verdict['weight']> = {
  undersized: 'fails',
  tight: 'warns',
  'fits-with-collar': 'warns',
  roomy: 'says',
  overloaded: 'fails',
  'near-rating': 'warns',
  'frameless-overloaded': 'fails',
  'outgrows-its-support': 'warns',
  'rating-unknown': 'warns',
  'outside-short': 'fails',
  'too-long': 'fails',
  'too-wide': 'fails',
  'heavy-for-carrier': 'warns',
}
/** What is said of the rating; where none of these is, the load is borne. */
const OF_RATING: VerdictCode[] = ['overloaded', 'near-rating', 'frameless-overloaded', 'rating-unknown']
const ORDER: Verdict['weight'][] = ['fails', 'warns', 'says']

export function setupInWords(setup: SetupReckoning, context: Context): SetupInWords {
  const missing = context.missing ?? NOTHING_MISSING
  const collarLifts = setup.verdicts.includes('fits-with-collar')
  const verdicts = missingWords(missing)
  for (const code of setup.verdicts) {
    const weight = code === 'undersized' && collarLifts ? 'warns' : WEIGHT[code]
    verdicts.push({ code, weight, ...worded(code, setup, context) })
  }
  const fits = !setup.verdicts.some(code => ['undersized', 'tight', 'roomy'].includes(code))
  if (fits) verdicts.push({ code: 'fits', weight: 'says', ...fitWords(setup, context) })
  if (!setup.verdicts.some(code => OF_RATING.includes(code)))
    verdicts.push({ code: 'bears-load', weight: 'says', ...bearsWords(setup, context) })
  verdicts.push(...ownWords(setup, context))
  verdicts.push(...fittingVerdicts(context.plan, context.plan.packs[setup.pack]!, context.shown))
  const [first, ...rest] = verdicts.sort((a, b) => ORDER.indexOf(a.weight) - ORDER.indexOf(b.weight))
  const cares = verdicts.some(v => v.weight === 'warns')
  const will = cares ? 'Will do, with care' : 'Will do'
  const known = missing.litres.length + missing.mass.length === 0
  return {
    answer: !setup.suffices ? 'Will not do' : known ? will : 'So far it will do',
    // Either a size verdict or the fit is always there.
    verdicts: [first!, ...rest],
  }
}

type Words = Pick<Verdict, 'lead' | 'rest'>

/** What is not counted, before all else: the other sentences hold for the rest only. */
function missingWords(missing: Missing): Verdict[] {
  const told = (code: 'litres-missing' | 'mass-missing', of: keyof Missing, rest: string): Verdict[] =>
    missing[of].length === 0
      ? []
      : [
          {
            code,
            weight: 'warns',
            lead: `${withoutText(missing, of)} ${verbFor(missing, of)} not counted:`,
            rest,
          },
        ]
  return [
    ...told('litres-missing', 'litres', ' the room is judged without them, and no chance can be told.'),
    ...told('mass-missing', 'mass', ' the load is judged without them.'),
  ]
}

function fitWords(setup: SetupReckoning, context: Context): Words {
  const { plan, reckoning, shown, missing } = context
  const { bodyLitres } = plan.packs[setup.pack]!
  const need = shown.litres(reckoning.need.bodyLitres)
  return missing?.litres.length
    ? { lead: 'Fits so far:', rest: ` ${shown.litres(bodyLitres)} for the ${need} counted.` }
    : {
        lead: 'Fits:',
        rest: ` ${shown.litres(bodyLitres)} for the ${need} this trip asks for${chanceWords(setup.fitChance, context)}.`,
      }
}

/** "; it fits in about 9 of 10 cases"; nothing while litres are missing. */
const chanceWords = (chance: number, { missing }: Context): string =>
  missing?.litres.length ? '' : `; it fits ${chanceText(chance)}`

function bearsWords(setup: SetupReckoning, context: Context): Words {
  const { plan, shown, missing } = context
  const chosen = plan.packs[setup.pack]!.setups[setup.index]!
  const load = `${shown.kg(setup.ratedAgainstKg)} of ${ratedOf(chosen)}`
  const limit =
    chosen.ratedKg !== null && setup.loadLimitKg === chosen.ratedKg
      ? `a rating of ${shown.kg(chosen.ratedKg)}`
      : `${shown.kg(setup.loadLimitKg ?? 0)}, your ceiling without a frame`
  return {
    lead: missing?.mass.length ? 'Bears the load so far:' : 'Bears the load:',
    rest: ` ${load} against ${limit}.`,
  }
}

const ratedOf = ({ ratingCovers }: Setup) => (ratingCovers === 'contents' ? 'contents' : 'contents and pack')

/** What the hiker's own thresholds say, where they have any. */
function ownWords(setup: SetupReckoning, { plan, shown }: Context): Verdict[] {
  const { lightGramsPerLitre, headroomLitres } = plan.settings
  const said: Verdict[] = []
  if (headroomLitres !== null && setup.bodyMarginLitres >= 0 && setup.bodyMarginLitres < headroomLitres)
    said.push({
      code: 'own-headroom',
      weight: 'warns',
      lead: 'Less headroom than you want:',
      rest: ` ${shown.litres(setup.bodyMarginLitres)} to spare of the ${shown.litres(headroomLitres)} you ask for.`,
    })
  if (lightGramsPerLitre !== null)
    said.push({
      code: 'own-light',
      weight: 'says',
      lead:
        setup.gramsPerLitre <= lightGramsPerLitre ? 'Light by your measure:' : 'Not light by your measure:',
      rest: ` ${shown.gramsPerLitre(setup.gramsPerLitre)}, where yours is ${shown.gramsPerLitre(lightGramsPerLitre)}.`,
    })
  return said
}

function worded(code: VerdictCode, setup: SetupReckoning, context: Context): Words {
  const { plan, reckoning, shown } = context
  const { need, moments } = reckoning
  const { kg, litres, percent } = shown
  const pack = plan.packs[setup.pack]!
  const chosen = pack.setups[setup.index]!
  const { ratedKg } = chosen
  const fullAt = placeText(need.bodyAt, moments)
  const heavyAt = placeText(need.peakAt, moments)
  const against = `of ${ratedOf(chosen)} against a rating of ${kg(ratedKg ?? 0)}`

  switch (code) {
    case 'undersized':
      return {
        lead: 'Too small',
        rest: ` by ${marginText(setup.bodyMarginLitres, litres)} ${fullAt}: ${litres(pack.bodyLitres)} of main body for ${litres(need.bodyLitres)}${chanceWords(setup.fitChance, context)}.`,
      }
    case 'tight':
      return {
        lead: 'Tight',
        rest: ` ${fullAt}: ${litres(pack.bodyLitres)} of main body for ${litres(need.bodyLitres)}${chanceWords(setup.fitChance, context)}.`,
      }
    case 'fits-with-collar':
      return {
        lead: 'Fits with its collar:',
        rest: ` ${litres(pack.bodyLitres + pack.collarLitres)} in all${context.missing?.litres.length ? '' : `, ${chanceText(setup.fitChanceWithCollar)}`}.`,
      }
    case 'roomy':
      return {
        lead: 'More than needed:',
        rest: ` ${litres(pack.bodyLitres)} of main body where ${litres(need.bodyLitres)} is asked for${need.bodyLitres > 0 ? `: ${(pack.bodyLitres / need.bodyLitres).toFixed(1)} times as much` : ''}${chanceWords(setup.fitChance, context)}.`,
      }
    case 'overloaded':
      return {
        lead: 'Overloaded',
        rest: ` by ${marginText(setup.ratedMarginKg ?? 0, kg)} ${heavyAt}: ${kg(setup.ratedAgainstKg)} ${against}.`,
      }
    case 'near-rating':
      return {
        lead: 'Near its rating,',
        rest: ` within ${marginText(setup.ratedMarginKg ?? 0, kg)} ${heavyAt}: ${kg(setup.ratedAgainstKg)} ${against}.`,
      }
    case 'frameless-overloaded':
      return {
        lead: 'Too heavy without a frame',
        rest: ` by ${marginText(setup.ratedAgainstKg - (setup.loadLimitKg ?? 0), kg)} ${heavyAt}: ${kg(setup.ratedAgainstKg)} against ${kg(setup.loadLimitKg ?? 0)}, ${setup.loadLimitKg === ratedKg ? 'its rating' : 'your ceiling without a frame'}.`,
      }
    case 'outgrows-its-support':
      return {
        lead: 'More space than support:',
        rest: ` filled to the brim with things like these it would come to ${kg(setup.brimLoadKg ?? 0)}, over the ${kg(setup.loadLimitKg ?? 0)} it can bear: leave room empty.`,
      }
    case 'rating-unknown':
      return {
        lead: 'Rating unknown:',
        rest:
          setup.loadLimitKg === null
            ? ` ask its maker whether it bears ${kg(setup.ratedAgainstKg)} of ${ratedOf(chosen)}.`
            : ` ${kg(setup.ratedAgainstKg)} of ${ratedOf(chosen)}, held to your ceiling without a frame, ${kg(setup.loadLimitKg)}.`,
      }
    case 'outside-short':
      return {
        lead: 'Pockets too small',
        rest: ` by ${marginText(need.outsideLitres - (pack.outsideLitres ?? 0), litres)}: ${litres(pack.outsideLitres ?? 0)} for ${litres(need.outsideLitres)} of things meant for them.`,
      }
    case 'too-long':
    case 'too-wide':
      return tooLargeWords(code, { plan, pack, need, shown })
    case 'heavy-for-carrier':
      return {
        lead: 'Heavy for you:',
        rest: ` ${kg(setup.carriedKg)} with the pack ${heavyAt} is ${percentOver(setup.bodyMassShare, plan.carrier.loadShareLimit, shown)} of your body mass; your limit is ${percent(plan.carrier.loadShareLimit)}.`,
      }
  }
}
