// Each verdict as a sentence with its number and reason, and one headline a set-up.

import type { Plan, Setup } from '../plan'
import type { Reckoning, SetupReckoning, VerdictCode } from '../reckon'
import { type FitVerdict, fittingVerdicts, tooLargeWords } from './fitting'
import { placeText } from './places'
import { chanceText, marginText, percentOver, type Shown } from './shown'

export interface Verdict {
  code: VerdictCode | FitVerdict['code'] | 'fits' | 'own-headroom' | 'own-light'
  /** The verdict in a few words; with `rest` it is the whole sentence. */
  lead: string
  /** The reason, with its numbers. */
  rest: string
  /** How it bears on the answer. */
  weight: 'fails' | 'warns' | 'says'
}

export interface SetupInWords {
  /** The answer for this set-up. */
  answer: 'Will do' | 'Will do, with care' | 'Will not do'
  /** The verdict that decides, first; then the others. */
  verdicts: [Verdict, ...Verdict[]]
}

interface Context {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
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
  'rating-unknown': 'says',
  'outside-short': 'fails',
  'too-long': 'fails',
  'too-wide': 'fails',
  'heavy-for-carrier': 'warns',
}
const ORDER: Verdict['weight'][] = ['fails', 'warns', 'says']

export function setupInWords(setup: SetupReckoning, context: Context): SetupInWords {
  const collarLifts = setup.verdicts.includes('fits-with-collar')
  const verdicts = setup.verdicts.map((code): Verdict => {
    const weight = code === 'undersized' && collarLifts ? 'warns' : WEIGHT[code]
    return { code, weight, ...worded(code, setup, context) }
  })
  const fits = !setup.verdicts.some(code => ['undersized', 'tight', 'roomy'].includes(code))
  if (fits) verdicts.push({ code: 'fits', weight: 'says', ...fitWords(setup, context) })
  verdicts.push(...ownWords(setup, context))
  verdicts.push(...fittingVerdicts(context.plan, context.plan.packs[setup.pack]!, context.shown))
  const [first, ...rest] = verdicts.sort((a, b) => ORDER.indexOf(a.weight) - ORDER.indexOf(b.weight))
  const cares = verdicts.some(v => v.weight === 'warns')
  return {
    answer: !setup.suffices ? 'Will not do' : cares ? 'Will do, with care' : 'Will do',
    // Either a size verdict or the fit is always there.
    verdicts: [first!, ...rest],
  }
}

type Words = Pick<Verdict, 'lead' | 'rest'>

function fitWords(setup: SetupReckoning, { plan, reckoning, shown }: Context): Words {
  const { bodyLitres } = plan.packs[setup.pack]!
  return {
    lead: 'Fits:',
    rest: ` ${shown.litres(bodyLitres)} for the ${shown.litres(reckoning.need.bodyLitres)} this trip asks for; it fits ${chanceText(setup.fitChance)}.`,
  }
}

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
  const { ratedKg } = pack.setups[setup.index]!
  const fullAt = placeText(need.bodyAt, moments)
  const heavyAt = placeText(need.peakAt, moments)
  const against = ratingWords(pack.setups[setup.index]!)

  switch (code) {
    case 'undersized':
      return {
        lead: 'Too small',
        rest: ` by ${marginText(setup.bodyMarginLitres, litres)} ${fullAt}: ${litres(pack.bodyLitres)} of main body for ${litres(need.bodyLitres)}; it fits ${chanceText(setup.fitChance)}.`,
      }
    case 'tight':
      return {
        lead: 'Tight',
        rest: ` ${fullAt}: ${litres(pack.bodyLitres)} of main body for ${litres(need.bodyLitres)}; it fits ${chanceText(setup.fitChance)}.`,
      }
    case 'fits-with-collar':
      return {
        lead: 'Fits with its collar:',
        rest: ` ${litres(pack.bodyLitres + pack.collarLitres)} in all, ${chanceText(setup.fitChanceWithCollar)}.`,
      }
    case 'roomy':
      return {
        lead: 'More than needed:',
        rest: ` ${litres(pack.bodyLitres)} of main body where ${litres(need.bodyLitres)} is asked for${need.bodyLitres > 0 ? `: ${(pack.bodyLitres / need.bodyLitres).toFixed(1)} times as much` : ''}; it fits ${chanceText(setup.fitChance)}.`,
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
            ? ' ask its maker whether it bears this load.'
            : ` held to your ceiling without a frame, ${kg(setup.loadLimitKg)}.`,
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

  function ratingWords({ ratingCovers }: Setup): string {
    const what = ratingCovers === 'contents' ? 'contents' : 'contents and pack'
    return `of ${what} against a rating of ${kg(ratedKg ?? 0)}`
  }
}
