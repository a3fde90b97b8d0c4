// What would make a set-up do that does not: the smallest changes to gear or trip, each reckoned in full before it
// is offered, the least inconvenient first. The order is a judgement of ours.

import type { Plan } from '../plan/types'
import { withItems, withTrip } from './remedies-apply'
import { type Found, fewestItems } from './remedies-items'
import { afterOf, judgedIn, mends, type Reckon, type Trial, trialOf, tried } from './remedies-trial'
import { mostSpare, spared, told, tripChanges } from './remedies-trip'
import type { Change, Remedy, TripChange } from './remedies-types'
import type { Reckoning, SetupReckoning } from './types'

/** Spare rations that may be done without before other changes are looked at first. */
const SPARE_EASILY_LEFT = 0.5
/** Trip changes to try together with a choice of things, where no change alone helps. */
const MOST_PAIRED = 12
/** Of one kind, and of pairs, so many are offered: those with the lightest pack. */
const MOST_OF_A_KIND = 3

/** Changes that make the set-up at `setupIndex` of `reckoning.packs` do; none when it does already. */
export function remediesBy(
  reckon: Reckon,
  asked: { plan: Plan; reckoning: Reckoning; setupIndex: number },
): Remedy[] {
  const trial = trialOf(reckon, asked)
  const before = judgedIn(trial)
  if (before.suffices) return []
  const attempts = tripChanges(trial).map(change => ({
    change,
    after: tried(trial, withTrip(trial.plan, change)),
  }))
  const single = [...otherSetups(asked, before), ...itemRemedies(trial), ...tripRemedies(trial, attempts)]
  const remedies = single.length ? single : pairs(trial, attempts)
  return remedies.sort((a, b) => rank(a) - rank(b))
}

function otherSetups(
  { reckoning, setupIndex }: { reckoning: Reckoning; setupIndex: number },
  before: SetupReckoning,
): Remedy[] {
  const { pack } = reckoning.packs[setupIndex]!
  return reckoning.packs.flatMap((setup, i): Remedy[] =>
    setup.pack === pack && setup.suffices
      ? [{ kind: 'other-setup', setup: i, after: afterOf(before, reckoning, setup) }]
      : [],
  )
}

function itemRemedies(trial: Trial): Remedy[] {
  const moved = fewestItems(trial, { move: true, leave: false })
  const left = fewestItems(trial, { move: false, leave: true })
  const both = fewestItems(trial, { move: true, leave: true })
  const mixed = both && both.choice.move.length > 0 && both.choice.leave.length > 0 ? both : null
  return [
    ...offer(moved, ({ choice: { move }, proven }) => ({ kind: 'move-outside', move, proven })),
    ...offer(left, ({ choice: { leave }, proven }) => ({ kind: 'leave', leave, proven })),
    ...offer(mixed, ({ choice, proven }) => ({ kind: 'move-and-leave', ...choice, proven })),
  ]

  function offer(found: Found | null, change: (found: Found) => Change): Remedy[] {
    return found ? [remedyOf(trial, change(found), found.after)] : []
  }
}

interface Attempt {
  change: TripChange
  after: Trial | null
}

function tripRemedies(trial: Trial, attempts: Attempt[]): Remedy[] {
  const spare = mostSpare(trial)
  const others = attempts.flatMap(({ change, after }): Remedy[] =>
    mends(trial, after) ? [remedyOf(trial, told(change, after), after)] : [],
  )
  return [
    ...(spare ? [remedyOf(trial, spare.change, spare.after)] : []),
    ...(['trust-doubtful', 'camp-at-water', 'resupply'] as const).flatMap(kind =>
      lightest(others.filter(remedy => remedy.kind === kind)),
    ),
  ]
}

/** One change of the trip and a choice of things, where neither is enough alone. */
function pairs(trial: Trial, attempts: Attempt[]): Remedy[] {
  const { spareDays } = trial.plan.trip.meals
  const spares = [Math.max(0, spareDays - SPARE_EASILY_LEFT), 0]
    .filter((spare, i, all) => spare < spareDays && all.indexOf(spare) === i)
    .map(spare => spared(spareDays, spare))
    .map(change => ({ change, after: tried(trial, withTrip(trial.plan, change)) }))
  const found = [...spares, ...attempts]
    .slice(0, MOST_PAIRED)
    .flatMap(({ change, after: start }): Remedy[] => {
      const items = start && fewestItems(start, { move: true, leave: true })
      if (!items || !mends(trial, items.after)) return []
      const more =
        change.kind === 'fewer-spare-rations' ? mostSpare(trial, plan => withItems(plan, items.choice)) : null
      const after = more?.after ?? items.after
      const trip = more?.change ?? told(change, after)
      return [remedyOf(trial, { kind: 'combined', items: items.choice, trip }, after)]
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

function remedyOf(trial: Trial, change: Change, after: Trial): Remedy {
  return { ...change, after: afterOf(judgedIn(trial), after.reckoning, judgedIn(after)) }
}

function lightest(remedies: Remedy[]): Remedy[] {
  return [...remedies].sort((a, b) => a.after.carriedKg - b.after.carriedKg).slice(0, MOST_OF_A_KIND)
}

const ORDER = ['other-setup', 'move-outside', 'spare', 'leave', 'trust-doubtful', 'camp-at-water', 'resupply']

function rank(change: Change): number {
  if (change.kind === 'move-and-leave') return ORDER.length + 1
  if (change.kind === 'combined') return ORDER.length + 2 + rank(change.trip) / 100
  if (change.kind !== 'fewer-spare-rations') return ORDER.indexOf(change.kind)
  return change.lessDays <= SPARE_EASILY_LEFT + 1e-9 ? ORDER.indexOf('spare') : ORDER.length
}
