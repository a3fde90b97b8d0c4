// Each verdict as a sentence with its number and reason, and one headline a set-up.

import type { Plan, Setup } from '../plan'
import { type Answer, isTripsDoing, type Reckoning, type SetupReckoning, type VerdictCode } from '../reckon'
import { capital } from '../units'
import { type FitVerdict, fittingVerdicts, tooLargeWords } from './fitting'
import { type Formats, marginText, percentOver } from './formats'
import { type Missing, missingOf, takesNothing, toldChance, withoutText } from './missing'
import { placeText } from './places'

export interface Verdict {
  code:
    | VerdictCode
    | FitVerdict['code']
    | 'fits'
    | 'bears-load'
    | 'nothing-taken'
    | 'litres-missing'
    | 'mass-missing'
    | 'both-missing'
    | 'own-headroom'
    | 'own-light'
  /** The verdict in a few words; with `rest` it is the whole sentence. */
  lead: string
  /** The reason, with its numbers. */
  rest: string
  /** How it bears on the answer. */
  weight: Weight
}

type Weight = 'fails' | 'leaves-open' | 'warns' | 'says'

export interface SetupInWords {
  answer: Answer
  /** The verdict that decides, first; then the others. */
  verdicts: [Verdict, ...Verdict[]]
}

interface Context {
  plan: Plan
  reckoning: Reckoning
  shown: Formats
}

const WEIGHT: Record<VerdictCode, Weight> = {
  undersized: 'fails',
  tight: 'warns',
  'fits-with-collar': 'warns',
  roomy: 'says',
  overloaded: 'fails',
  'near-rating': 'warns',
  'frameless-overloaded': 'fails',
  'outgrows-its-support': 'warns',
  'rating-unknown': 'says',
  'outside-short': 'warns',
  'too-long': 'fails',
  'too-wide': 'fails',
  'heavy-for-carrier': 'warns',
}
/** What is said of the rating; where none of these is, the load is borne. */
const OF_RATING: VerdictCode[] = ['overloaded', 'near-rating', 'frameless-overloaded', 'rating-unknown']
const ORDER: Weight[] = ['fails', 'leaves-open', 'warns', 'says']

export function setupInWords(setup: SetupReckoning, context: Context): SetupInWords {
  const { plan, shown } = context
  const { answer } = setup
  const missing = missingOf(plan)
  const verdicts = openWords(setup, context, missing)
  for (const code of setup.verdicts) {
    // Of a need that may be larger nothing can be called more than needed, or a fit.
    if (code === 'roomy' && (answer === 'cannot-tell' || missing.litres.length > 0)) continue
    if (code === 'fits-with-collar' && answer === 'cannot-tell') continue
    // A load that is too much without any pack is the trip's doing: said once, and not of every pack.
    if (code === 'heavy-for-carrier' && isTripsDoing(plan, context.reckoning.need)) continue
    verdicts.push({ code, weight: weightOf(code, setup), ...worded(code, setup, context) })
  }
  const fits = !setup.verdicts.some(code => ['undersized', 'tight', 'roomy'].includes(code))
  if (fits && answer !== 'cannot-tell')
    verdicts.push({ code: 'fits', weight: 'says', ...fitWords(setup, context, missing) })
  if (!setup.verdicts.some(code => OF_RATING.includes(code)))
    verdicts.push({ code: 'bears-load', weight: 'says', ...bearsWords(setup, context, missing) })
  verdicts.push(...ownWords(setup, context))
  verdicts.push(...fittingVerdicts(plan, plan.packs[setup.pack]!, shown))
  const [first, ...rest] = verdicts.sort((a, b) => ORDER.indexOf(a.weight) - ORDER.indexOf(b.weight))
  // A size verdict, the fit or what leaves it open is always there.
  return { answer, verdicts: [first!, ...rest] }
}

/** A collar lifts what is too small; without any limit the load cannot be judged. */
function weightOf(code: VerdictCode, setup: SetupReckoning): Weight {
  if (code === 'undersized' && setup.verdicts.includes('fits-with-collar')) return 'warns'
  if (code === 'rating-unknown' && setup.loadLimitKg === null) return 'leaves-open'
  return WEIGHT[code]
}

type Words = Pick<Verdict, 'lead' | 'rest'>

const YOUR_LIMIT = 'your limit without a frame'

/** What nobody has said, and what that leaves open. */
function openWords(setup: SetupReckoning, { plan }: Context, missing: Missing): Verdict[] {
  if (takesNothing(plan))
    return [
      { code: 'nothing-taken', weight: 'leaves-open', lead: 'No gear yet:', rest: ' add what you carry.' },
    ]
  const { answer, loadLimitKg } = setup
  const [noLitres, noMass] = [withoutText(missing, 'litres'), withoutText(missing, 'mass')]
  if (!noLitres && !noMass) return []
  const { code, open, sure } = noLitres && noMass ? OPEN.both : noLitres ? OPEN.litres : OPEN.mass
  const lead = `${capital([noLitres, noMass].filter(Boolean).join(' and '))}:`
  if (answer === 'does-not') return [{ code, weight: 'says', lead, rest: ' not counted.' }]
  // Where no limit is known, that alone leaves it open.
  if (answer === 'cannot-tell')
    return [{ code, weight: 'leaves-open', lead, rest: loadLimitKg === null ? ' not counted.' : open }]
  return [{ code, weight: 'says', lead, rest: sure }]
}

/** What is said of a set-up that missing figures leave open, and of one that does whatever they are. */
const OPEN = {
  litres: {
    code: 'litres-missing',
    open: ' if large, it would not do.',
    sure: ' even if large, it does.',
  },
  mass: { code: 'mass-missing', open: ' if heavy, it would not do.', sure: ' even if heavy, it does.' },
  both: {
    code: 'both-missing',
    open: ' if large or heavy, it may not do.',
    sure: ' even if large and heavy, it does.',
  },
} as const

function fitWords(setup: SetupReckoning, context: Context, missing: Missing): Words {
  const { plan, shown } = context
  const { bodyLitres } = plan.packs[setup.pack]!
  const need = shown.litres(setup.bodyNeedLitres)
  return missing.litres.length
    ? { lead: 'Fits so far:', rest: ` ${shown.litres(bodyLitres)} for the ${need} counted.` }
    : {
        lead: 'Fits:',
        rest: ` ${shown.litres(bodyLitres)} for the ${need} this trip asks for${chanceWords(setup.fitChance, setup, context)}.`,
      }
}

/** "; it fits in about 9 of 10 cases", where that can be told. */
function chanceWords(chance: number, { answer }: SetupReckoning, { plan }: Context): string {
  const told = toldChance(chance, { missing: missingOf(plan), answer })
  return told === null ? '' : `; it fits ${told}`
}

function bearsWords(setup: SetupReckoning, { plan, shown }: Context, missing: Missing): Words {
  const chosen = plan.packs[setup.pack]!.setups[setup.index]!
  const load = `${shown.kg(setup.ratedAgainstKg)} of ${ratedOf(chosen)}`
  const limit =
    chosen.ratedKg !== null && setup.loadLimitKg === chosen.ratedKg
      ? `a rating of ${shown.kg(chosen.ratedKg)}`
      : `${shown.kg(setup.loadLimitKg ?? 0)}, ${YOUR_LIMIT}`
  return {
    lead: missing.mass.length ? 'Bears the load so far:' : 'Bears the load:',
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
  const heavyAt = placeText(need.peakFullWaterAt, moments)
  const against = `of ${ratedOf(chosen)} against a rating of ${kg(ratedKg ?? 0)}`

  switch (code) {
    case 'undersized':
      return {
        lead: 'Too small',
        rest: ` by ${marginText(setup.bodyMarginLitres, litres)} ${fullAt}: ${litres(pack.bodyLitres)} of main body for ${litres(setup.bodyNeedLitres)}${chanceWords(setup.fitChance, setup, context)}.`,
      }
    case 'tight':
      return {
        lead: 'Tight',
        rest: ` ${fullAt}: ${litres(pack.bodyLitres)} of main body for ${litres(setup.bodyNeedLitres)}${chanceWords(setup.fitChance, setup, context)}.`,
      }
    case 'fits-with-collar':
      return {
        lead: 'Fits with its collar:',
        rest: ` ${litres(pack.bodyLitres + pack.collarLitres)} in all${chanceWords(setup.fitChanceWithCollar, setup, context)}.`,
      }
    case 'roomy':
      return {
        lead: 'More than needed:',
        rest: ` ${litres(pack.bodyLitres)} of main body where ${litres(setup.bodyNeedLitres)} is asked for${setup.bodyNeedLitres > 0 ? `: ${(pack.bodyLitres / setup.bodyNeedLitres).toFixed(1)} times as much` : ''}${chanceWords(setup.fitChance, setup, context)}.`,
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
        rest: ` by ${marginText(setup.ratedAgainstKg - (setup.loadLimitKg ?? 0), kg)} ${heavyAt}: ${kg(setup.ratedAgainstKg)} against ${kg(setup.loadLimitKg ?? 0)}, ${setup.loadLimitKg === ratedKg ? 'its rating' : YOUR_LIMIT}.`,
      }
    case 'outgrows-its-support':
      return {
        lead: 'More space than support:',
        rest: ` filled to the brim with things like these it would come to ${kg(setup.brimLoadKg ?? 0)}, over ${setup.loadLimitKg === ratedKg ? `its rating of ${kg(ratedKg ?? 0)}` : `${kg(setup.loadLimitKg ?? 0)}, ${YOUR_LIMIT}`}: leave room empty.`,
      }
    case 'rating-unknown':
      return {
        lead: 'Rating unknown:',
        rest:
          setup.loadLimitKg === null
            ? ` ask its maker whether it bears ${kg(setup.ratedAgainstKg)} of ${ratedOf(chosen)}.`
            : ` ${kg(setup.ratedAgainstKg)} of ${ratedOf(chosen)}, held to ${YOUR_LIMIT}, ${kg(setup.loadLimitKg)}.`,
      }
    case 'outside-short':
      return {
        lead: 'Pockets too small',
        rest: ` by ${marginText(need.outsideLitres - (pack.outsideLitres ?? 0), litres)}: ${litres(pack.outsideLitres ?? 0)} for ${litres(need.outsideLitres)} of things meant for them. The rest is counted inside.`,
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
