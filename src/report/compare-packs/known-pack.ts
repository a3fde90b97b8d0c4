// A pack of which only part is known, judged as far as that goes: a figure that is missing gets a stand-in, and every
// verdict that would rest on the stand-in is dropped.

import { defaults, type Pack, type Plan, type Setup } from '../../plan'
import { type Answer, type Reckoning, reckon, type SetupReckoning } from '../../reckon'
import { basisFor, basisOf } from '../confidence'
import type { Formats } from '../formats'
import { missingOf } from '../missing'
import { shortReason } from '../short-reason'
import { kindOfVerdict, type ToldCode } from '../verdict-words'
import { setupInWords, type Verdict, weightOf } from '../verdicts'

/** A pack's figures as far as they are known, with the one set-up to judge. */
export type KnownPack = Known<Omit<Pack, 'setups'>> & { setup: Known<Setup> }
type Known<T> = { [K in keyof T]?: T[K] | undefined }

export interface Partly {
  /** `cannot-tell` while something is missing and nothing that is known speaks against it. */
  answer: Answer
  /** The verdict that decides, first. Empty while nothing can be judged. */
  verdicts: Verdict[]
  /** What could not be judged and what that takes, a sentence each. */
  missing: string[]
  /** What the deciding verdict rests on; null where there is none. */
  basis: string | null
}

/** Packs of which only part is known, reckoned together with stand-ins: a set-up each, in their order. */
export interface Tried {
  plan: Plan
  reckoning: Reckoning
}

/** Null where the plan does not settle. */
export function tried(plan: Plan, known: readonly KnownPack[]): Tried | null {
  const withPacks = { ...plan, packs: known.map(wholePack) }
  const reckoned = reckon(withPacks)
  return reckoned.ok ? { plan: withPacks, reckoning: reckoned.reckoning } : null
}

const tellsOf =
  ({ bodyLitres, setup: { massKg } }: KnownPack) =>
  (code: ToldCode): boolean =>
    (kindOfVerdict(code).needs ?? []).every(
      figure => ({ body: bodyLitres, mass: massKg })[figure] !== undefined,
    )

/** The answer of a set-up that lacks its mass or litres: what is missing can only speak against it. */
export function partlyAnswer(setup: SetupReckoning, known: KnownPack): Answer {
  const tells = tellsOf(known)
  return setup.verdicts.some(code => weightOf(code, setup) === 'fails' && tells(code))
    ? 'does-not'
    : 'cannot-tell'
}

/** Why, as short as a list can say it: "3.5 L too small", or what is missing. */
export function partlyShort(
  setup: SetupReckoning,
  known: KnownPack,
  context: Tried & { formats: Formats },
): string {
  const answer = partlyAnswer(setup, known)
  const lacksOwnMass = known.setup.massKg === undefined
  if (answer === 'does-not')
    return shortReason({ ...setup, answer }, { ...context, lacksOwnMass }, tellsOf(known))
  return [known.bodyLitres === undefined ? 'no litres' : '', lacksOwnMass ? 'no mass' : '']
    .filter(Boolean)
    .join(', ')
}

/** The pack judged for a plan that reckons; null where the plan does not settle. */
export function partlyJudged(plan: Plan, known: KnownPack, formats: Formats): Partly | null {
  const { setup } = known
  const hasBody = known.bodyLitres !== undefined
  const hasMass = setup.massKg !== undefined
  const context = tried(plan, [known])
  if (!context) return null
  const words = setupInWords(context.reckoning.packs[0]!, { ...context, formats, lacksOwnMass: !hasMass })
  const tells = tellsOf(known)
  const verdicts = words.verdicts.filter(({ code }) => tells(code))
  const fails = verdicts.some(verdict => verdict.weight === 'fails')
  const { gear: noGear } = missingOf(plan)
  const missing = lackingWords({ hasBody, hasMass, noGear, fails })
  const [first] = verdicts
  const basis = first && !noGear ? basisFor(first.code, basisOf({ ...context, formats })) : null
  if (missing.length === 0) return { answer: words.answer, verdicts, missing, basis }
  return { answer: fails ? 'does-not' : 'cannot-tell', verdicts, missing, basis }
}

/** The pack with a stand-in for each figure that is not known: what rests on one must not be told. */
export function wholePack({ setup, ...figures }: KnownPack): Pack {
  return {
    ...defaults.PACK,
    name: '',
    bodyLitres: 1,
    ...said(figures),
    setups: [{ ...defaults.SETUP, name: '', massKg: 0, frame: 'framed', ...said(setup) }],
  }
}

interface Lacking {
  hasBody: boolean
  hasMass: boolean
  /** Nothing is taken: neither room nor load is judged, whatever is known of the pack. */
  noGear: boolean
  fails: boolean
}

function lackingWords({ hasBody, hasMass, noGear, fails }: Lacking): string[] {
  const body = noGear
    ? 'Its main body litres are missing.'
    : 'Room not judged: its main body litres are missing.'
  const mass = noGear
    ? 'Its mass is missing.'
    : fails
      ? 'Its mass is missing: the load is judged as if the pack weighed nothing.'
      : 'Load judged without the pack itself: its mass is missing.'
  return [...(hasBody ? [] : [body]), ...(hasMass ? [] : [mass])]
}

/** Without what is there but unknown, which would hide its default. */
function said<T extends object>(figures: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}
