// A pack of which only part is known, judged as far as that goes: a figure that is missing gets a stand-in, and every
// verdict that would rest on the stand-in is dropped.

import { defaults, type Pack, type Plan, type Setup } from '../../plan'
import { type Answer, reckon } from '../../reckon'
import { basisFor, basisOf } from '../confidence'
import type { Formats } from '../formats'
import { missingOf } from '../missing'
import { kindOfVerdict } from '../verdict-words'
import { setupInWords, type Verdict } from '../verdicts'

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

/** The pack judged for a plan that reckons; null where the plan does not settle. */
export function partlyJudged(plan: Plan, known: KnownPack, formats: Formats): Partly | null {
  const { setup } = known
  const hasBody = known.bodyLitres !== undefined
  const hasMass = setup.massKg !== undefined
  const tried = { ...plan, packs: [wholePack(known)] }
  const reckoned = reckon(tried)
  if (!reckoned.ok) return null
  const { reckoning } = reckoned
  const words = setupInWords(reckoning.packs[0]!, { plan: tried, reckoning, formats })
  const isKnown = { body: hasBody, mass: hasMass }
  const verdicts = words.verdicts.filter(({ code }) =>
    (kindOfVerdict(code).needs ?? []).every(figure => isKnown[figure]),
  )
  const fails = verdicts.some(verdict => verdict.weight === 'fails')
  const { gear: noGear } = missingOf(plan)
  const missing = lackingWords({ hasBody, hasMass, noGear, fails })
  const [first] = verdicts
  const basis = first && !noGear ? basisFor(first.code, basisOf({ plan: tried, reckoning, formats })) : null
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
