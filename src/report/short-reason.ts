// Why a set-up is what it is for the trip, as short as a list of many can say it: "3.5 L too small, 7.5 kg over".

import { isTripsDoing, type SetupReckoning, type VerdictCode } from '../reckon'
import { withoutText } from './missing'
import { type Context, least, type OnSetup, onSetup } from './verdict-words'
import { weightOf } from './verdicts'

/** More would not be read in a list. */
const MOST = 2

const over = (on: OnSetup) =>
  `${least(on, 'mass', on.setup.ratedAgainstKg - (on.setup.loadLimitKg ?? 0))} over`

/** Null: it holds, and is not worth a word here. */
const SHORT: Readonly<Record<VerdictCode, (on: OnSetup) => string | null>> = {
  // With its collar it is large enough, and that is what there is to say.
  undersized: on =>
    on.setup.verdicts.includes('fits-with-collar')
      ? null
      : `${least(on, 'litres', on.setup.bodyMarginLitres)} too small`,
  tight: () => 'tight',
  'fits-with-collar': () => 'fits with its collar',
  roomy: () => null,
  overloaded: over,
  'near-rating': () => 'near its rating',
  'frameless-overloaded': over,
  'outgrows-its-support': () => 'overloaded when full',
  'rating-unknown': () => 'no rating',
  'outside-short': () => 'pockets too small',
  'too-long': () => 'an item is too long',
  'too-wide': () => 'an item is too wide',
  'heavy-for-carrier': ({ plan, reckoning }) => (isTripsDoing(plan, reckoning.need) ? null : 'heavy for you'),
}

/** Empty of a set-up that does, of which there is nothing to say. `tells`: whether a code may be told. */
export function shortReason(
  setup: SetupReckoning,
  context: Context,
  tells: (code: VerdictCode) => boolean = () => true,
): string {
  const on = onSetup(setup, context)
  const weight = { 'does-not': 'fails', 'with-care': 'warns', 'cannot-tell': 'leaves-open', does: null }[
    setup.answer
  ]
  const told = setup.verdicts
    .filter(code => weightOf(code, setup) === weight && tells(code))
    .flatMap(code => SHORT[code](on) ?? [])
  const open = setup.answer === 'cannot-tell' ? openReasons(on) : []
  return [...new Set([...open, ...told])].slice(0, MOST).join(', ')
}

/** What nobody has said and the answer waits for. */
const openReasons = ({ missing }: OnSetup): string[] =>
  missing.gear
    ? ['no gear yet']
    : [withoutText(missing, 'litres'), withoutText(missing, 'mass')].filter(Boolean)
