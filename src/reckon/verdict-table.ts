// Each verdict on a set-up in one row: what it is about, how it bears on the answer, which of the pack's own figures it
// stands on, and when it holds. In the order in which the codes are told.

import type { Pack, Setup } from '../plan/types'
import type { TooLarge } from './box-fit'
import { SURE } from './normal'
import type { Need, SetupReckoning, VerdictCode } from './types'

/** From this share of the rating up, a load is near it. */
const NEAR = 0.9

/** `brim`: the pack filled to it; `body`: who carries. */
export type VerdictAbout = 'room' | 'load' | 'brim' | 'pockets' | 'size' | 'body'

export interface VerdictKind {
  about: VerdictAbout
  /** `fails`: the set-up does not do; `warns`: with care. */
  weight: 'fails' | 'warns' | 'says'
  /** Figures of the pack itself without which it cannot be said. At no mass a load is the least it can be. */
  needs?: readonly ('body' | 'mass')[]
}

/** What a verdict is given on. */
export interface Judged
  extends Pick<
    SetupReckoning,
    | 'fitChance'
    | 'fitChanceWithCollar'
    | 'bodyNeedLitres'
    | 'carriedKg'
    | 'ratedAgainstKg'
    | 'loadLimitKg'
    | 'brimLoadKg'
  > {
  pack: Pack
  setup: Setup
  need: Need
  /** The hiker's own: times the need; and the most to be carried. */
  roomyRatio: number
  mostKg: number
  tooLarge: ReadonlySet<TooLarge>
}

interface VerdictRow extends VerdictKind {
  holds: (on: Judged) => boolean
}

const isOverloaded = ({ setup: { ratedKg }, ratedAgainstKg }: Judged) =>
  ratedKg !== null && ratedAgainstKg > ratedKg
const isOverCeiling = ({ setup: { frame }, ratedAgainstKg, loadLimitKg }: Judged) =>
  frame === 'frameless' && ratedAgainstKg > loadLimitKg!

export const VERDICTS: Readonly<Record<VerdictCode, VerdictRow>> = {
  undersized: { about: 'room', weight: 'fails', needs: ['body'], holds: ({ fitChance }) => fitChance < 0.5 },
  tight: {
    about: 'room',
    weight: 'warns',
    needs: ['body'],
    holds: ({ fitChance }) => fitChance >= 0.5 && fitChance < SURE,
  },
  'fits-with-collar': {
    about: 'room',
    weight: 'warns',
    needs: ['body'],
    holds: ({ fitChance, fitChanceWithCollar }) => fitChance < SURE && fitChanceWithCollar >= SURE,
  },
  roomy: {
    about: 'room',
    weight: 'says',
    needs: ['body'],
    holds: ({ pack, roomyRatio, bodyNeedLitres }) => pack.bodyLitres > roomyRatio * bodyNeedLitres,
  },
  overloaded: { about: 'load', weight: 'fails', holds: isOverloaded },
  'near-rating': {
    about: 'load',
    weight: 'warns',
    needs: ['mass'],
    holds: on =>
      on.setup.ratedKg !== null && !isOverloaded(on) && on.ratedAgainstKg > NEAR * on.setup.ratedKg,
  },
  'frameless-overloaded': { about: 'load', weight: 'fails', holds: isOverCeiling },
  'outgrows-its-support': {
    about: 'brim',
    weight: 'warns',
    needs: ['body'],
    holds: on =>
      !isOverloaded(on) &&
      !isOverCeiling(on) &&
      on.loadLimitKg !== null &&
      on.brimLoadKg !== null &&
      on.brimLoadKg > on.loadLimitKg,
  },
  'rating-unknown': { about: 'load', weight: 'says', holds: ({ setup }) => setup.ratedKg === null },
  'outside-short': {
    about: 'pockets',
    weight: 'warns',
    holds: ({ pack, need }) => pack.outsideLitres !== null && need.outsideLitres > pack.outsideLitres,
  },
  'too-long': { about: 'size', weight: 'fails', holds: ({ tooLarge }) => tooLarge.has('too-long') },
  'too-wide': { about: 'size', weight: 'fails', holds: ({ tooLarge }) => tooLarge.has('too-wide') },
  'heavy-for-carrier': {
    about: 'body',
    weight: 'warns',
    needs: ['mass'],
    holds: ({ carriedKg, mostKg }) => carriedKg > mostKg,
  },
}

const CODES = Object.keys(VERDICTS) as VerdictCode[]

export const verdictsOn = (judged: Judged): VerdictCode[] =>
  CODES.filter(code => VERDICTS[code].holds(judged))
