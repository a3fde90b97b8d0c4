// What would make a set-up do, and fit nine times in ten: the smallest changes to gear or trip, each reckoned in full
// before it is offered, the least inconvenient first. The order is a judgement of ours.

import type { Plan } from '../plan/types'
import { withItems, withTrip } from './remedies-apply'
import {
  afterOf,
  type Candidate,
  candidateOf,
  isMended,
  judgedIn,
  mends,
  type Reckon,
  tried,
} from './remedies-candidate'
import { type Found, fewestItems } from './remedies-items'
import { fewestSwaps } from './remedies-swaps'
import { mostSpare, spared, told, tripChanges } from './remedies-trip'
import type { Change, Remedy, Replacement, TripChange } from './remedies-types'
import type { Reckoning, SetupReckoning } from './types'

/** Spare rations that may be done without before other changes are looked at first. */
const SPARE_EASILY_LEFT = 0.5
/** Trip changes to try together with a choice of things, where no change alone helps. */
const MOST_PAIRED = 12
/** Of one kind, and of pairs, so many are offered: those with the lightest pack. */
const MOST_OF_A_KIND = 3

/**
 * Changes that make the set-up at `setupIndex` of `reckoning.packs` do and fit nine times in ten; none when it does.
 * `swaps`: what the hiker may take in the place of items.
 */
export function remediesBy(
  reckon: Reckon,
  asked: { plan: Plan; reckoning: Reckoning; setupIndex: number; swaps?: readonly Replacement[] },
): Remedy[] {
  const candidate = candidateOf(reckon, asked)
  const before = judgedIn(candidate)
  if (isMended(before)) return []
  const attempts = tripChanges(candidate).map(change => ({
    change,
    after: tried(candidate, withTrip(candidate.plan, change)),
  }))
  const moved = fewestItems(candidate, { move: true, leave: 'none' })
  const gentle = [
    ...otherSetups(asked, before),
    ...moves(candidate, moved),
    ...swapped(candidate, asked.swaps ?? []),
    ...tripRemedies(candidate, attempts),
  ]
  const marked = leaves(candidate, 'optional', moved)
  const single = [...gentle, ...marked]
  const made = single.length ? single : pairs(candidate, attempts, 'optional')
  // What is not marked as optional is named only where nothing marked would do.
  const unmarked = marked.length ? [] : leaves(candidate, 'any', moved)
  const remedies = [...made, ...unmarked]
  return (remedies.length ? remedies : pairs(candidate, attempts, 'any')).sort((a, b) => rank(a) - rank(b))
}

function otherSetups(
  { reckoning, setupIndex }: { reckoning: Reckoning; setupIndex: number },
  before: SetupReckoning,
): Remedy[] {
  const { pack } = reckoning.packs[setupIndex]!
  // One that does is worth naming where this one does not, sure to fit or not: both have the same main body.
  const helps = (setup: SetupReckoning) => setup.pack === pack && setup.suffices && !before.suffices
  return reckoning.packs.flatMap((setup, i): Remedy[] =>
    helps(setup) ? [{ kind: 'other-setup', setup: i, after: afterOf(before, reckoning, setup) }] : [],
  )
}

function moves(candidate: Candidate, found: Found | null): Remedy[] {
  if (!found) return []
  const { choice, proven, after } = found
  return [remedyOf(candidate, { kind: 'move-outside', move: choice.move, proven }, after)]
}

function swapped(candidate: Candidate, swaps: readonly Replacement[]): Remedy[] {
  const found = fewestSwaps(candidate, swaps)
  return lightest(
    found.map(({ choice, after }) => remedyOf(candidate, { kind: 'swap', swaps: choice }, after)),
  )
}

/** Things left at home, alone and together with things moved outside where that means fewer of them. */
function leaves(candidate: Candidate, leave: 'optional' | 'any', moved: Found | null): Remedy[] {
  const left = fewestItems(candidate, { move: false, leave })
  const isOneEnough = moved?.choice.move.length === 1 || left?.choice.leave.length === 1
  const both = isOneEnough ? null : fewestItems(candidate, { move: true, leave })
  const isMixed = both !== null && both.choice.move.length > 0 && both.choice.leave.length > 0
  return [
    ...(left
      ? [remedyOf(candidate, { kind: 'leave', leave: left.choice.leave, proven: left.proven }, left.after)]
      : []),
    ...(isMixed
      ? [remedyOf(candidate, { kind: 'move-and-leave', ...both.choice, proven: both.proven }, both.after)]
      : []),
  ]
}

interface Attempt {
  change: TripChange
  after: Candidate | null
}

function tripRemedies(candidate: Candidate, attempts: Attempt[]): Remedy[] {
  const spare = mostSpare(candidate)
  const others = attempts.flatMap(({ change, after }): Remedy[] =>
    mends(candidate, after) ? [remedyOf(candidate, told(change, after), after)] : [],
  )
  return [
    ...(spare ? [remedyOf(candidate, spare.change, spare.after)] : []),
    ...(['trust-doubtful', 'camp-at-water'] as const).flatMap(kind =>
      lightest(others.filter(remedy => remedy.kind === kind)),
    ),
    ...lightest(atShops(others.filter(remedy => remedy.kind === 'resupply'))),
  ]
}

/** Where a shop is known to be, that is where to buy. */
function atShops(remedies: Remedy[]): Remedy[] {
  const known = remedies.filter(remedy => remedy.kind === 'resupply' && remedy.shop)
  return known.length ? known : remedies
}

/** One change of the trip and a choice of things, where neither is enough alone. */
function pairs(candidate: Candidate, attempts: Attempt[], leave: 'optional' | 'any'): Remedy[] {
  const { spareDays } = candidate.plan.trip.meals
  const spares = [Math.max(0, spareDays - SPARE_EASILY_LEFT), 0]
    .filter((spare, i, all) => spare < spareDays && all.indexOf(spare) === i)
    .map(spare => spared(spareDays, spare))
    .map(change => ({ change, after: tried(candidate, withTrip(candidate.plan, change)) }))
  const found = [...spares, ...attempts]
    .slice(0, MOST_PAIRED)
    .flatMap(({ change, after: start }): Remedy[] => {
      const items = start && fewestItems(start, { move: true, leave })
      if (!items || !mends(candidate, items.after)) return []
      const more =
        change.kind === 'fewer-spare-rations'
          ? mostSpare(candidate, plan => withItems(plan, items.choice))
          : null
      const after = more?.after ?? items.after
      const trip = more?.change ?? told(change, after)
      return [remedyOf(candidate, { kind: 'combined', items: items.choice, trip }, after)]
    })
  // The spare rations are tried twice; the choice with fewer things to part with is kept.
  const [spare, ...rest] = found.filter(isSpare)
  const fewer = rest.find(other => things(other) < things(spare!)) ?? spare
  return [...(fewer ? [fewer] : []), ...lightest(found.filter(remedy => !isSpare(remedy)))].slice(
    0,
    MOST_OF_A_KIND,
  )
}

const isSpare = (remedy: Remedy) => remedy.kind === 'combined' && remedy.trip.kind === 'fewer-spare-rations'
const things = (remedy: Remedy) =>
  remedy.kind === 'combined' ? remedy.items.move.length + remedy.items.leave.length : 0

function remedyOf(candidate: Candidate, change: Change, after: Candidate): Remedy {
  return { ...change, after: afterOf(judgedIn(candidate), after.reckoning, judgedIn(after)) }
}

function lightest(remedies: Remedy[]): Remedy[] {
  return [...remedies].sort((a, b) => a.after.carriedKg - b.after.carriedKg).slice(0, MOST_OF_A_KIND)
}

/** Leaving things at home comes last: what it costs is known to the hiker alone. */
const ORDER = [
  'other-setup',
  'move-outside',
  'swap',
  'spare',
  'trust-doubtful',
  'camp-at-water',
  'resupply',
  'no-spare',
  'combined',
  'leave',
  'move-and-leave',
]

function rank(change: Change): number {
  if (change.kind === 'combined') {
    const leaves = change.items.leave.length > 0
    return ORDER.indexOf(leaves ? 'move-and-leave' : 'combined') + rank(change.trip) / 100
  }
  if (change.kind !== 'fewer-spare-rations') return ORDER.indexOf(change.kind)
  return ORDER.indexOf(change.lessDays <= SPARE_EASILY_LEFT + 1e-9 ? 'spare' : 'no-spare')
}
