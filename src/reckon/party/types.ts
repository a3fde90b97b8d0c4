// What comes out for a party: each person's reckoning, and how what can be handed on was shared out.

import type { DayReckoning, LegReckoning, Moment, Need, Notice, SetupReckoning, WaterCarry } from '../types'

export interface PersonReckoning {
  id: string
  name: string
  /** Ids of what they carry, in the plan's order. */
  carries: string[]
  need: Need
  moments: Moment[]
  /** With their set-up and all the water wanted; without a pack the contents alone. */
  carriedKg: number
  /** What is shared out by: `carriedKg` as a share of their own limit, or where masses are shared `carriedKg`, kg. */
  strain: number
  /** `carriedKg` as a share of their own limit, whatever is shared out by. */
  limitShare: number
  /** The set-up with its figures and verdicts; null: they have none. */
  pack: SetupReckoning | null
  legs: LegReckoning[]
  days: DayReckoning[]
  rationRounds: number
  waterCarries: WaterCarry[]
  notices: Notice[]
}

export interface SplitReckoning {
  /** People under 18 who carry more than their limit. */
  youngOver: number
  /** People whose set-up does not suffice. */
  fails: number
  worstStrain: number
  /** Pieces that somebody else than their owner carries. */
  moved: number
  /** No better choice exists. */
  proven: boolean
  /** No choice with as few over their limit and as few set-ups failing has a smaller worst strain. */
  boundStrain: number
}

export interface PartyReckoning {
  people: PersonReckoning[]
  split: SplitReckoning
  /** Paths of the figures nobody has said, as `gear[3].litres`. */
  missing: string[]
}
