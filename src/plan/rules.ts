// What a plan must keep beyond the shape of each field: how its parts refer to each other.

import { CAPS } from './caps'
import { fullnessNotClosing } from './complete'
import { MEALS } from './defaults'
import {
  type ItemDocument,
  isWithin,
  LIMITS,
  PACKING_FACTOR,
  type PackDocument,
  type PackingDocument,
  type WrittenPlan,
} from './fields'
import { withMainBody } from './main-body'
import { checkParty, givesEnergy } from './party-rules'
import { type Problem, problem } from './problem'

export function checkRules(plan: WrittenPlan): Problem[] {
  return [
    ...checkParty(plan),
    ...checkStops(plan),
    ...checkMeals(plan),
    ...checkGear(plan.gear ?? []),
    ...checkPacks(plan.packs ?? []),
    ...checkPackings(plan.packings ?? []),
  ]
}

function checkStops({ trip: { stops } }: WrittenPlan): Problem[] {
  const problems: Problem[] = []
  const last = stops.length - 1
  stops.forEach((stop, i) => {
    const at = (...rest: string[]) => ['trip', 'stops', i, ...rest]
    if (i === 0 && stop.leg) problems.push(problem(at('leg'), 'the start has no leg: remove it'))
    if (i > 0 && !stop.leg)
      problems.push(problem(at('leg'), 'is missing: give the leg that leads here, at least its km'))
    if (i === 0 && stop.nights)
      problems.push(problem(at('nights'), 'nights before setting out are not part of the trip: write 0'))
    if (i === last && stop.nights)
      problems.push(problem(at('nights'), 'the trip ends here: write 0, or add the stop that follows'))
    if (i === last && stop.resupply)
      problems.push(
        problem(
          at('resupply'),
          'the trip ends here: write false, or add the stop that follows',
          'the trip ends here: take it away, or add the stop that follows',
        ),
      )
  })
  return [...problems, ...checkNights(stops)]
}

/** The stops with more nights than are left of the trip's; without theirs the rest is within the cap. */
function checkNights(stops: WrittenPlan['trip']['stops']): Problem[] {
  let sum = 0
  return stops.flatMap(({ nights = 0 }, i) => {
    const before = sum
    if (before + nights <= CAPS.nights) {
      sum += nights
      return []
    }
    const message = `makes ${before + nights} with the nights before it, and a trip has at most ${CAPS.nights}: write fewer, or make two trips of it`
    return [problem(['trip', 'stops', i, 'nights'], message)]
  })
}

function checkMeals({ trip, gear, carrier, people }: WrittenPlan): Problem[] {
  const problems: Problem[] = []
  const { breakfast, trail, supper } = { ...MEALS, ...trip.meals }
  const sum = breakfast + trail + supper
  if (Math.abs(sum - 1) > 0.01)
    problems.push(
      problem(
        ['trip', 'meals'],
        `breakfast, trail and supper add up to ${+sum.toFixed(3)}: change them so that they make 1`,
      ),
    )
  // Children under 14 years eat rations of 1, whatever else is said.
  const child = (people ?? [carrier]).every(hiker => (hiker?.ageYears ?? 14) < 14)
  const hasEnergy = gear?.some(givesEnergy)
  if (trip.meals?.ration === 'energy' && !child && !hasEnergy)
    problems.push(
      problem(
        ['trip', 'meals', 'ration'],
        '"energy" needs a daily item with kcalPerKg: give one its kcalPerKg, or write "fixed"',
        'no food says its energy: give it, or eat the same each day',
      ),
    )
  return problems
}

function checkGear(gear: readonly ItemDocument[]): Problem[] {
  const problems: Problem[] = []
  const byId = new Map<string, ItemDocument>()
  gear.forEach((item, i) => {
    if (byId.has(item.id))
      problems.push(
        problem(
          ['gear', i, 'id'],
          `"${item.id}" is used twice: give each item its own id`,
          'another item has the same one: give each its own',
        ),
      )
    else byId.set(item.id, item)
  })
  gear.forEach((item, i) => {
    const at = (field: string) => ['gear', i, field]
    const use = item.use ?? 'kept'
    if (item.resupplied && use !== 'daily' && use !== 'nightly')
      problems.push(
        problem(
          at('resupplied'),
          'only daily and nightly items are bought again: write false',
          'only what is used daily or nightly is bought again: take it away',
        ),
      )
    if (item.fuel && use !== 'nightly')
      problems.push(
        problem(
          at('fuel'),
          'belongs to a nightly item: set use to "nightly", or remove it',
          'only what is used nightly is fuel: say so, or remove it',
        ),
      )
    problems.push(...rangeProblems(item, at))
    const why = containerProblem(item, byId)
    if (why) problems.push(problem(at('inside'), ...why))
  })
  return problems
}

/** The range of a kind and `litresFrom: "kind"` go together; what `litres` says is then set aside, not refused. */
function rangeProblems({ litresFrom, litresRange }: ItemDocument, at: (field: string) => Problem['path']) {
  if (litresFrom === 'kind' && !litresRange)
    return [
      problem(
        at('litresFrom'),
        '"kind" needs litresRange: give its low, typical and high litres, or write another source of the litres',
        'the litres of its kind are missing: choose the kind anew, or give litres',
      ),
    ]
  if (!litresRange) return []
  const { low, typical, high } = litresRange
  if (litresFrom !== 'kind')
    return [
      problem(
        at('litresRange'),
        'belongs to litresFrom "kind": write that, or remove the range',
        'belongs to litres of a kind: choose the kind anew, or remove the range',
      ),
    ]
  if (low <= typical && typical <= high) return []
  const order = `low, typical and high are ${low}, ${typical} and ${high} L`
  return [problem(at('litresRange'), `${order}: order them from the least to the most`)]
}

/** What is wrong with where an item rides, for who writes the file and for who sees none. */
function containerProblem(item: ItemDocument, byId: Map<string, ItemDocument>): [string, string?] | null {
  if (item.inside === undefined) return null
  if (item.inside === item.id) return ['an item cannot be inside itself: name another container']
  const container = byId.get(item.inside)
  if (!container)
    return [
      `there is no item with the id "${item.inside}": name a container in this gear list`,
      'its container is not in the list: choose another',
    ]
  if (container.holdsLitres === undefined)
    return [
      `"${item.inside}" has no holdsLitres: give it its inner room, or name another container`,
      'its container has no room inside: give it some, or choose another',
    ]
  if (container.inside !== undefined || item.holdsLitres !== undefined)
    return ['a container cannot go into a container: take one of them out']
  return null
}

/** The litres of the whole pack stand in for those of the main body, and must come to as many as one may have. */
function checkPacks(packs: readonly PackDocument[]): Problem[] {
  const { min, max } = LIMITS.pack.bodyLitres
  return packs.flatMap((pack, i) => {
    if (pack.totalLitres === undefined) return []
    const at = ['packs', i, 'totalLitres']
    if (pack.bodyLitres !== undefined)
      return [problem(at, 'stands in for bodyLitres, which is given as well: remove one of the two')]
    const { bodyLitres } = withMainBody(pack)
    if (isWithin(bodyLitres, LIMITS.pack.bodyLitres)) return []
    const litres = +bodyLitres.toFixed(1)
    return [
      problem(at, `leaves ${litres} L of main body, outside ${min} to ${max} L: mend it or outsideLitres`),
    ]
  })
}

function checkPackings(packings: readonly PackingDocument[]): Problem[] {
  return packings.flatMap((packing, i) => {
    const at = (...rest: Problem['path']) => ['packings', i, ...rest]
    const problems = fullnessProblems(packing).map(({ path, message }) => problem(at(...path), message))
    if (packing.W <= 0) problems.push(problem(at('W'), 'nothing was packed: give the litres the items took'))
    const seen = new Set<string>()
    packing.things.forEach(({ id }, thing) => {
      if (seen.has(id))
        problems.push(problem(at('things', thing, 'id'), `"${id}" is in this packing twice: name it once`))
      seen.add(id)
    })
    return problems
  })
}

/** How full the pack was is said once, and in reason: by itself, and against what the things were reckoned to take. */
function fullnessProblems({ p, overLitres, packLitres, W }: PackingDocument): Problem[] {
  if (p !== undefined && overLitres !== undefined)
    return [problem(['overLitres'], 'says once more how full it was: remove one of the two')]
  if (p === undefined && overLitres === undefined)
    return [
      problem(['p'], `missing: write how full the pack was, 1 to the brim, or how many litres were too much`),
    ]
  const full = p ?? fullnessNotClosing(packLitres, overLitres ?? 0)
  const told = (value: number) => +value.toPrecision(3)
  const { p: fullness } = LIMITS.packing
  const factor = PACKING_FACTOR
  if (!isWithin(full, fullness))
    return [
      problem(
        ['overLitres'],
        `makes the pack ${told(full)} times full, over ${fullness.max}: mend it or packLitres`,
      ),
    ]
  const F = (full * packLitres) / W
  if (W <= 0 || isWithin(F, factor)) return []
  return [
    problem(
      ['W'],
      `the items took ${told(F)} times what W says, outside ${factor.min} to ${factor.max}: one of p, packLitres and W is wrong`,
    ),
  ]
}
