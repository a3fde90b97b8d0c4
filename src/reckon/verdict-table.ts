// Each verdict on a set-up in one row: what it is about, how it bears on the answer, which of the pack's own figures it
// stands on, and when it holds. In the order in which the codes are told.

import type { Pack, Plan, Setup } from '../plan/types'
import type { TooLarge } from './box-fit'
import { SURE } from './normal'
import type { Need, SetupReckoning, VerdictCode } from './types'

/** From this share of the rating up, a load is near it. */
export const NEAR_RATING = 0.9

/** `brim`: the pack filled to it; `body`: who carries. */
export type VerdictAbout = 'room' | 'load' | 'brim' | 'pockets' | 'size' | 'body'

export interface VerdictKind {
  about: VerdictAbout
  /** `fails`: the set-up does not do; `warns`: with care. */
  weight: 'fails' | 'warns' | 'says'
  /** Figures of the pack itself without which it cannot be said. At no mass a load is the least it can be. */
  needs?: readonly ('body' | 'mass')[]
}

/** The figures of a set-up that a verdict is given on. */
type Figures = Pick<
  SetupReckoning,
  | 'fitChance'
  | 'fitChanceWithCollar'
  | 'bodyNeedLitres'
  | 'carriedKg'
  | 'ratedAgainstKg'
  | 'loadLimitKg'
  | 'brimLoadKg'
>

/** The set-up itself, and what it is held against. */
interface Judged {
  pack: Pack
  setup: Setup
  need: Need
  parts: { plan: Pick<Plan, 'carrier' | 'settings'> }
  tooLarge: ReadonlySet<TooLarge>
}

interface VerdictRow extends VerdictKind {
  holds: (figures: Figures, judged: Judged) => boolean
}

const isOverloaded = ({ ratedAgainstKg }: Figures, { setup: { ratedKg } }: Judged) =>
  ratedKg !== null && ratedAgainstKg > ratedKg
const isOverCeiling = ({ ratedAgainstKg, loadLimitKg }: Figures, { setup: { frame } }: Judged) =>
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
    holds: ({ bodyNeedLitres }, { pack, parts: { plan } }) =>
      pack.bodyLitres > plan.settings.roomyRatio * bodyNeedLitres,
  },
  overloaded: { about: 'load', weight: 'fails', holds: isOverloaded },
  'near-rating': {
    about: 'load',
    weight: 'warns',
    needs: ['mass'],
    holds: (figures, judged) => {
      const { ratedKg } = judged.setup
      return (
        ratedKg !== null && !isOverloaded(figures, judged) && figures.ratedAgainstKg > NEAR_RATING * ratedKg
      )
    },
  },
  'frameless-overloaded': { about: 'load', weight: 'fails', holds: isOverCeiling },
  'outgrows-its-support': {
    about: 'brim',
    weight: 'warns',
    needs: ['body'],
    holds: (figures, judged) =>
      !isOverloaded(figures, judged) &&
      !isOverCeiling(figures, judged) &&
      figures.loadLimitKg !== null &&
      figures.brimLoadKg !== null &&
      figures.brimLoadKg > figures.loadLimitKg,
  },
  'rating-unknown': { about: 'load', weight: 'says', holds: (_, { setup }) => setup.ratedKg === null },
  'outside-short': {
    about: 'pockets',
    weight: 'warns',
    holds: (_, { pack, need }) => pack.outsideLitres !== null && need.outsideLitres > pack.outsideLitres,
  },
  'too-long': { about: 'size', weight: 'fails', holds: (_, { tooLarge }) => tooLarge.has('too-long') },
  'too-wide': { about: 'size', weight: 'fails', holds: (_, { tooLarge }) => tooLarge.has('too-wide') },
  'heavy-for-carrier': {
    about: 'body',
    weight: 'warns',
    needs: ['mass'],
    holds: (
      { carriedKg },
      {
        parts: {
          plan: { carrier },
        },
      },
    ) => carriedKg > carrier.loadShareLimit * carrier.massKg,
  },
}

const CODES = Object.keys(VERDICTS) as VerdictCode[]

export const verdictsOn = (figures: Figures, judged: Judged): VerdictCode[] =>
  CODES.filter(code => VERDICTS[code].holds(figures, judged))
