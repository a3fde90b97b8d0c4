// Each verdict as a sentence with its number and reason, and one headline a set-up.

import { type Answer, type SetupReckoning, VERDICTS, type VerdictCode } from '../reckon'
import { capital, listText } from '../units'
import { fittingVerdicts } from './fitting'
import { withoutText } from './missing'
import {
  bearsWords,
  brimWords,
  CODE_WORDS,
  type Context,
  fitWords,
  kindOfVerdict,
  type OnSetup,
  onSetup,
  said,
  type ToldCode,
  type Words,
} from './verdict-words'

export interface Verdict extends Words {
  code: ToldCode
  /** How it bears on the answer. */
  weight: Weight
}

type Weight = 'fails' | 'leaves-open' | 'warns' | 'says'

export interface SetupInWords {
  answer: Answer
  /** The verdict that decides, first; then the others. */
  verdicts: [Verdict, ...Verdict[]]
}

const ORDER: Weight[] = ['fails', 'leaves-open', 'warns', 'says']

export function setupInWords(setup: SetupReckoning, context: Context): SetupInWords {
  const on = onSetup(setup, context)
  const { answer } = setup
  const verdicts = openWords(on)
  for (const code of setup.verdicts) {
    const words = CODE_WORDS[code](on)
    if (words) verdicts.push({ code, weight: weightOf(code, setup), ...words })
  }
  // Without gear only what fails already can be said: more gear makes none of it better.
  if (on.missing.gear)
    return inOrder(answer, [
      ...verdicts.filter(({ weight }) => ['fails', 'leaves-open'].includes(weight)),
      ...(setup.suffices ? brimVerdict(on) : []),
    ])
  const fits = !setup.verdicts.some(code => ['undersized', 'tight', 'roomy'].includes(code))
  if (fits && answer !== 'cannot-tell') verdicts.push({ code: 'fits', weight: 'says', ...fitWords(on) })
  if (!setup.verdicts.some(code => kindOfVerdict(code).about === 'load'))
    verdicts.push({ code: 'bears-load', weight: 'says', ...bearsWords(on) })
  verdicts.push(...ownWords(on))
  verdicts.push(...fittingVerdicts(context.plan, on.pack, context.formats))
  return inOrder(answer, verdicts)
}

/** Apart from any gear: what the pack would be when full of things as heavy as usual. */
function brimVerdict(on: OnSetup): Verdict[] {
  const words = brimWords(on)
  return words ? [{ code: 'brim', weight: 'says', ...words }] : []
}

function inOrder(answer: Answer, verdicts: Verdict[]): SetupInWords {
  const [first, ...rest] = verdicts.sort((a, b) => ORDER.indexOf(a.weight) - ORDER.indexOf(b.weight))
  // A size verdict, the fit or what leaves it open is always there.
  return { answer, verdicts: [first!, ...rest] }
}

/** A collar lifts what is too small; without any limit the load cannot be judged. */
export function weightOf(code: VerdictCode, setup: Pick<SetupReckoning, 'verdicts' | 'loadLimitKg'>): Weight {
  if (code === 'undersized' && setup.verdicts.includes('fits-with-collar')) return 'warns'
  if (code === 'rating-unknown' && setup.loadLimitKg === null) return 'leaves-open'
  return VERDICTS[code].weight
}

/** What nobody has said, and what that leaves open. */
function openWords({ setup, missing }: OnSetup): Verdict[] {
  if (missing.gear) {
    const words = said('No gear yet:', 'No gear yet: add what you carry.')
    return [{ code: 'nothing-taken', weight: 'leaves-open', ...words }]
  }
  const { answer, loadLimitKg } = setup
  const [noLitres, noMass] = [withoutText(missing, 'litres'), withoutText(missing, 'mass')]
  if (!noLitres && !noMass) return []
  const { code, open, sure } = noLitres && noMass ? OPEN.both : noLitres ? OPEN.litres : OPEN.mass
  const lead = `${capital(listText([noLitres, noMass].filter(Boolean)))}:`
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
    open: ' if large, the pack would be too small.',
    sure: ' even if large, it does.',
  },
  mass: {
    code: 'mass-missing',
    open: ' if heavy, the pack would be overloaded.',
    sure: ' even if heavy, it does.',
  },
  both: {
    code: 'both-missing',
    open: ' if large or heavy, the pack may be too small or overloaded.',
    sure: ' even if large and heavy, it does.',
  },
} as const

/** What the hiker's own thresholds say, where they have any. */
function ownWords({ setup, plan, missing, formats }: OnSetup): Verdict[] {
  const { lightGramsPerLitre, headroomLitres } = plan.settings
  const verdicts: Verdict[] = []
  if (headroomLitres !== null && setup.bodyMarginLitres >= 0 && setup.bodyMarginLitres < headroomLitres) {
    const [spare, asked] = [formats.litres(setup.bodyMarginLitres), formats.litres(headroomLitres)]
    const words = said(
      'Less headroom than you want:',
      `Less headroom than you want: ${missing.litres.length > 0 ? 'at most ' : ''}${spare} to spare of the ${asked} you ask for.`,
    )
    verdicts.push({ code: 'own-headroom', weight: 'warns', ...words })
  }
  if (lightGramsPerLitre !== null) {
    const [has, yours] = [
      formats.gramsPerLitre(setup.gramsPerLitre),
      formats.gramsPerLitre(lightGramsPerLitre),
    ]
    const words =
      setup.gramsPerLitre <= lightGramsPerLitre
        ? said('Light by your measure:', `Light by your measure: ${has}, where yours is ${yours}.`)
        : said('Not light by your measure:', `Not light by your measure: ${has}, where yours is ${yours}.`)
    verdicts.push({ code: 'own-light', weight: 'says', ...words })
  }
  return verdicts
}
