// The fewest things to move outside or leave at home so that a set-up does and fits nine times in ten. Exact: what a
// thing takes of the main body, the pockets and the load does not depend on the others, and "the litres keep under a
// line" is two straight rows a moment. Water held apart: where it rides does depend on its containers, so those that
// may move are tried in every way.

import type { Parts } from './need'
import { withItems } from './remedies-apply'
import { type Candidate, judgedIn, mends, tried } from './remedies-candidate'
import { type Line, lineAsItStands, surestLine, touchingLine } from './remedies-line'
import { choiceOf, type MovableItem, movableOf, type Ways } from './remedies-movable'
import { partsOf } from './remedies-parts'
import { rowsOf } from './remedies-rows'
import { leastChoice } from './remedies-solve'
import type { ItemChoice } from './remedies-types'
import { packingTerms } from './room'

export interface Found {
  choice: ItemChoice
  proven: boolean
  after: Candidate
}

/** Choices between the line and the curve that the full reckoning may refuse before the line is taken as it stands. */
const MOST_REFUSED = 24

/**
 * The choice that mends the candidate with the fewest things; among those the one that leaves least mass behind (whole
 * grams), then moves fewest litres (hundredths). Null when none does. Mass and litres are the most ever aboard.
 *
 * Exact where rations and water rates are fixed. Where they follow the load, leaving things lightens the food as
 * well: the choice then is enough, but a smaller one may be (`proven` false). So too where packings of one's own set
 * the factor, which is another for other things, and where pockets spill. How sure the litres are makes their limit a
 * curve: the search takes the line outside it and asks the full reckoning about each better choice.
 */
export function fewestItems(candidate: Candidate, ways: Ways): Found | null {
  const parts = partsOf(candidate.plan, candidate.reckoning)
  const { things, bottles: movable, whole } = movableOf(candidate, parts, ways)
  if (isHopeless(candidate, parts, [...things, ...movable])) return null
  let best: (Found & { key: number[] }) | null = null
  let proven = whole
  let mostRefused = MOST_REFUSED
  for (const bottles of subsetsOf(movable)) {
    const start = bottles.length ? tried(candidate, withItems(candidate.plan, choiceOf(bottles))) : candidate
    const solved = start && solve({ candidate, start, bottles, things, mostRefused })
    proven &&= solved?.proven ?? true
    mostRefused -= solved?.refused ?? 0
    if (solved?.found && (!best || isLess(solved.found.key, best.key))) best = solved.found
  }
  return best && { ...best, proven: best.proven && proven }
}

/** Whether even taking everything, with all the water out of the main body, would mend some shortfall too little. */
function isHopeless(candidate: Candidate, parts: Parts, all: MovableItem[]): boolean {
  const { softBulk } = packingTerms(parts.packing)
  const waterLitres = candidate.reckoning.need.waterCarryLitres * softBulk.perSoftLitre
  const line = surestLine(candidate)
  const drier = { ...line, capacityLitres: line.capacityLitres + waterLitres }
  return rowsOf(
    candidate,
    parts,
    all,
    drier,
  )(all.length).some(
    ({ need, gives }) => need > gives.reduce((sum, give) => sum + Math.max(0, give), 0) + 1e-9,
  )
}

interface Solving {
  candidate: Candidate
  /** The candidate with the bottles moved. */
  start: Candidate
  bottles: MovableItem[]
  things: MovableItem[]
  mostRefused: number
}

function solve({ candidate, start, bottles, things, mostRefused }: Solving) {
  const all = (chosen: number[]) => [...bottles, ...chosen.map(i => things[i]!)]
  let refused = 0
  const after = (chosen: number[]) => tried(candidate, withItems(candidate.plan, choiceOf(all(chosen))))
  const accepts = (chosen: number[]) => {
    const does = mends(candidate, after(chosen))
    if (!does) refused++
    return does
  }
  const scale = 1 + sumOf(things, centilitresOf)
  const choices = things.map(it => ({ group: it.at, cost: gramsOf(it) * scale + centilitresOf(it) }))
  const isCalibrated = candidate.plan.packings.length > 0
  const parts = partsOf(start.plan, start.reckoning)
  const within = (line: Line, known: number[] | null) =>
    leastChoice(
      { choices, rows: rowsOf(start, parts, things, line) },
      { fewestFirst: true, mostRefused, accepts, known },
    )

  // The line as it stands is close to the curve: what it finds is near the least there is, which the search for better
  // ones then needs to look at only where a line touches the curve there. With packings of one's own the curve is
  // another for each choice.
  const near = within(lineAsItStands(start), null)
  const chosen = near.chosen?.map(i => things[i]!) ?? things
  const touching = () => touchingLine(start, parts, { things, chosen, mostOut: chosen.length })
  const answer = isCalibrated ? near : within(touching(), near.chosen)
  const { proven } = answer
  const then = answer.chosen && after(answer.chosen)
  if (!answer.chosen || !mends(candidate, then)) return { proven, refused, found: null }
  const taken = all(answer.chosen)
  const found = {
    choice: choiceOf(taken),
    proven:
      !isCalibrated && !spills(start) && !(followsTheLoad(candidate) && taken.some(it => it.way === 'leave')),
    after: then,
    key: [taken.length, sumOf(taken, gramsOf), sumOf(taken, centilitresOf)],
  }
  return { proven, refused, found }
}

const gramsOf = ({ way, mostKg }: MovableItem) => (way === 'leave' ? Math.round(1000 * mostKg) : 0)
const centilitresOf = ({ way, mostLitres }: MovableItem) =>
  way === 'move' ? Math.round(100 * mostLitres) : 0
const sumOf = (them: MovableItem[], figure: (it: MovableItem) => number) =>
  them.reduce((sum, it) => sum + figure(it), 0)

/** What the pockets cannot take rides inside: a choice may change that, which the rows do not see. */
const spills = ({ reckoning }: Candidate): boolean =>
  judgedIn({ reckoning }).bodyNeedLitres > reckoning.need.bodyLitres

function followsTheLoad({ plan: { trip } }: Candidate): boolean {
  return trip.meals.ration === 'energy' || trip.water.litresPerHour === 'from-heat'
}

function subsetsOf<T>(all: T[]): T[][] {
  return Array.from({ length: 1 << all.length }, (_, bits) => all.filter((_, i) => bits & (1 << i)))
}

function isLess(a: number[], b: number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i])
  return at >= 0 && a[at]! < b[at]!
}
