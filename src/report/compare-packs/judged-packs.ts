// What each pack of a list is for the trip: the best answer of its set-ups, those that lack a figure among them, and why
// in a few words.

import type { DraftPack, DraftSetup, Plan } from '../../plan'
import type { Answer, Reckoning } from '../../reckon'
import { ANSWERS } from '../answers'
import type { Formats } from '../formats'
import { shortReason } from '../short-reason'
import type { Comparison } from './compare'
import { type KnownPack, partlyAnswer, partlyShort, tried } from './known-pack'

export interface JudgedPack {
  /** Null: nothing of it can be judged. */
  answer: Answer | null
  /** Its set-ups, by their ids. */
  setups: ReadonlyMap<string, SetupAnswer>
  /** Of the set-ups that the answer is of: a figure told or sorted by beside it is one of theirs. */
  comparisons: Comparison[]
  /** Why, as short as a list can say it; empty where there is nothing to add to the answer. */
  short: (formats: Formats) => string
}

export interface SetupAnswer {
  answer: Answer
  /** Its place in `reckoning.packs`; null where it lacks its mass, or the pack its litres. */
  at: number | null
  short: (formats: Formats) => string
}

interface Judgement {
  plan: Plan
  /** The draft's id of each pack of the plan. */
  packIds: readonly string[]
  reckoning: Reckoning
  /** Of each of `reckoning.packs`. */
  comparisons: readonly Comparison[]
}

/** A set-up judged, by the id that the draft has for it. */
interface JudgedSetup extends SetupAnswer {
  id: string
  comparison: Comparison | null
  /** How much speaks against it, to tell the better of two with one answer. */
  verdicts: number
}

const BEST_FIRST = Object.keys(ANSWERS) as Answer[]

/** How good an answer is among all: less is better; what is not judged comes last. */
export const rankOf = (answer: Answer | null | undefined): number =>
  answer ? BEST_FIRST.indexOf(answer) : BEST_FIRST.length

/** The set-ups of a pack that the plan had to leave out, as they lack their mass, or the pack its litres. */
export const partlyKnown = ({ bodyLitres, setups }: DraftPack): DraftSetup[] =>
  bodyLitres === undefined ? setups : setups.filter(({ massKg }) => massKg === undefined)

/** One of those as it is judged by itself. */
export function knownPack(
  { id: _pack, setups: _setups, ...figures }: DraftPack,
  setup: DraftSetup,
): KnownPack {
  const { id: _setup, ...own } = setup
  return { ...figures, setup: own }
}

/** The packs by their ids. */
export function judgedPacks(drafts: readonly DraftPack[], judgement: Judgement): Map<string, JudgedPack> {
  const setups = new Map<string, JudgedSetup[]>()
  const add = (pack: string, setup: JudgedSetup) => {
    const those = setups.get(pack)
    if (those) those.push(setup)
    else setups.set(pack, [setup])
  }
  for (const [pack, setup] of known(drafts, judgement)) add(pack, setup)
  for (const [pack, setup] of partly(drafts, judgement)) add(pack, setup)
  return new Map(drafts.map(({ id }) => [id, asOne(setups.get(id) ?? [])]))
}

function known(drafts: readonly DraftPack[], judgement: Judgement): [string, JudgedSetup][] {
  const { packIds, reckoning, comparisons } = judgement
  const byId = new Map(drafts.map(pack => [pack.id, pack]))
  return reckoning.packs.flatMap((setup, i): [string, JudgedSetup][] => {
    const pack = byId.get(packIds[setup.pack] ?? '')
    // The plan has those alone of which the mass is known.
    const own = pack?.setups.filter(({ massKg }) => massKg !== undefined)[setup.index]
    if (!pack || !own) return []
    const { answer, verdicts } = setup
    const short = (formats: Formats) => shortReason(setup, { ...judgement, formats })
    const comparison = comparisons[i]!
    return [[pack.id, { id: own.id, at: i, answer, short, comparison, verdicts: verdicts.length }]]
  })
}

function partly(drafts: readonly DraftPack[], { plan }: Judgement): [string, JudgedSetup][] {
  const open = drafts.flatMap(pack =>
    partlyKnown(pack).map(setup => ({ pack: pack.id, id: setup.id, known: knownPack(pack, setup) })),
  )
  const together =
    open.length > 0
      ? tried(
          plan,
          open.map(({ known }) => known),
        )
      : null
  if (!together) return []
  return open.map(({ pack, id, known }, i) => {
    const setup = together.reckoning.packs[i]!
    const short = (formats: Formats) => partlyShort(setup, known, { ...together, formats })
    const answer = partlyAnswer(setup, known)
    return [pack, { id, at: null, answer, comparison: null, verdicts: setup.verdicts.length, short }]
  })
}

function asOne(setups: readonly JudgedSetup[]): JudgedPack {
  return new AsOne(setups)
}

/** What only some ask of a few packs is worked out when they do. */
class AsOne implements JudgedPack {
  readonly answer: Answer | null
  readonly #setups: readonly JudgedSetup[]
  #byId: ReadonlyMap<string, SetupAnswer> | null = null
  #comparisons: Comparison[] | null = null

  constructor(setups: readonly JudgedSetup[]) {
    this.#setups = setups
    let best: Answer | null = null
    for (const { answer } of setups) if (rankOf(answer) < rankOf(best)) best = answer
    this.answer = best
  }

  get setups() {
    this.#byId ??= new Map(this.#setups.map(setup => [setup.id, setup]))
    return this.#byId
  }

  get comparisons() {
    this.#comparisons ??= this.#best().flatMap(({ comparison }) => comparison ?? [])
    return this.#comparisons
  }

  short(formats: Formats) {
    const [told] = this.#best().sort((a, b) => a.verdicts - b.verdicts)
    return told?.short(formats) ?? ''
  }

  #best() {
    return this.#setups.filter(({ answer }) => answer === this.answer)
  }
}
