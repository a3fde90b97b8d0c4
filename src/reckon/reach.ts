// How far a pack reaches: the most full rations it can hold and bear at the first departure, with the largest water
// carry of the plan and everything else as planned. Exact: litres and load are piecewise linear in the days. What the
// days add to the heap is worked out once a plan; a set-up only looks up where it ends.

import { insideLitres } from './containers'
import { type Ledger, totalAt } from './ledger'
import type { Parts } from './need'
import { type Stock, unitsOf } from './provisions'
import { packingTerms, spillLitres, type Term } from './room'
import { waterAboard, waterRoomOf } from './water'

export interface Limits {
  bodyLitres: number
  /** Room in the pockets; null: nobody says, and they are not judged. */
  outsideLitres: number | null
  /** The most the contents may weigh; null when no limit is known. */
  contentsKg: number | null
}

/**
 * Asked once a plan, with the water (L, ≥ 0) to be carried. What comes back tells the days to which any set-up reaches:
 * 0 when even none fits; null when nothing is eaten daily or nothing sets a limit.
 */
export function reachOf(waterLitres: number, parts: Parts): (limits: Limits) => number | null {
  if (!parts.gear.some(item => item.use === 'daily' && item.count > 0)) return () => null
  const heap = growthOf(parts)
  const waterRoom = waterRoomOf(parts.gear, parts.stowOf)
  const { softBodyLitres } = waterAboard(waterLitres, waterLitres, waterRoom)
  const lines = Object.values(packingTerms(parts.packing)).map(term =>
    bodyLine(heap, term).map(straight => ({
      ...straight,
      start: straight.start + softBodyLitres * term.perSoftLitre,
    })),
  )
  return limits => {
    const days = Math.min(
      daysBorne(limits, heap.kg, waterLitres),
      ...lines.map(line => daysHeld(limits, line, heap.pocketLitres, parts)),
    )
    return days === Number.POSITIVE_INFINITY ? null : Math.max(0, days)
  }
}

/** The first departure's stock with `days` full rations, and as many nights where fuel is bought with the food. */
function stockFor(days: number, { stocks, spareRations }: Pick<Parts, 'stocks' | 'spareRations'>): Stock {
  const first = stocks[0]!
  const rations = days + spareRations
  const full = ({ left, used }: Stock): Stock => ({
    left: { ...left, dailyAgain: rations, dailyOnce: rations, nightlyAgain: days },
    used,
  })
  if (!first.of) return full(first)
  return { ...full(first), of: new Map([...first.of].map(([id, stock]) => [id, full(stock)])) }
}

/** A figure that grows evenly: so much at the start, and so much more each day. */
export interface Line {
  start: number
  perDay: number
}

/** A line that holds from a day on, its start being the figure on that day. */
export interface Straight extends Line {
  fromDay: number
}

/** The heap of the first departure, without water, as days of food are added to it; kg and L. */
export interface Growth {
  kg: Line
  rigidLitres: Line
  pocketLitres: Line
  /** In the main body; straight from day 0 and from each day on which a container is full, in order. */
  softLitres: Straight[]
}

/** The same for every set-up. */
export function growthOf(parts: Pick<Parts, 'ledger' | 'stocks' | 'spareRations'>): Growth {
  const units = [0, 1].map(days => unitsOf(stockFor(days, parts))) as [number[], number[]]
  const [none, one] = [totalAt(parts.ledger, units[0]), totalAt(parts.ledger, units[1])]
  const line = (start: number, then: number): Line => ({ start, perDay: then - start })
  return {
    kg: line(none.kg, one.kg),
    rigidLitres: line(none.rigidLitres, one.rigidLitres),
    pocketLitres: line(none.pocketLitres, one.pocketLitres),
    softLitres: withOverflow(line(none.softLitres, one.softLitres), parts.ledger, units),
  }
}

/** Each container adds nothing to the soft things about it until it is full, and all that comes from then on. */
function withOverflow(loose: Line, { containers }: Ledger, [none, one]: [number[], number[]]): Straight[] {
  const now: Straight = { fromDay: 0, ...loose }
  const filling: { day: number; perDay: number }[] = []
  for (const container of containers.values()) {
    const inside = insideLitres(container, none)
    const perDay = insideLitres(container, one) - inside
    const over = inside - container.roomLitres
    if (over >= 0) {
      now.start += over
      now.perDay += perDay
    } else if (perDay > 0) filling.push({ day: -over / perDay, perDay })
  }
  const straights = [now]
  for (const { day, perDay } of filling.sort((a, b) => a.day - b.day)) {
    const before = straights.at(-1)!
    straights.push({ fromDay: day, start: valueAt(before, day), perDay: before.perDay + perDay })
  }
  return straights
}

/** What an even growth has come to on a day. */
export const onDay = ({ start, perDay }: Line, day: number): number => start + day * perDay

const valueAt = ({ fromDay, start, perDay }: Straight, day: number): number =>
  start + (day - fromDay) * perDay

/** Main-body litres of the heap by one term of the packing model, without what spills from the pockets. */
export function bodyLine({ rigidLitres: rigid, softLitres }: Growth, term: Term): Straight[] {
  return softLitres.map(soft => ({
    fromDay: soft.fromDay,
    start: onDay(rigid, soft.fromDay) * term.perRigidLitre + soft.start * term.perSoftLitre,
    perDay: rigid.perDay * term.perRigidLitre + soft.perDay * term.perSoftLitre,
  }))
}

/** The litres of such a line on a day ≥ 0. */
export function litresOn(line: Straight[], day: number): number {
  return valueAt(line[lastIndexThat(line, ({ fromDay }) => fromDay <= day)]!, day)
}

function daysBorne({ contentsKg }: Limits, kg: Line, waterLitres: number): number {
  if (contentsKg === null) return Number.POSITIVE_INFINITY
  const start = kg.start + waterLitres
  return start > contentsKg ? Number.NEGATIVE_INFINITY : daysUntil({ start, perDay: kg.perDay }, contentsKg)
}

/** The days the main body holds by one term of the packing model, whose litres never fall as days are added. */
function daysHeld(
  { bodyLitres, outsideLitres }: Limits,
  line: Straight[],
  pocketLitres: Line,
  { packing }: Parts,
): number {
  // A hair of room, so that an exact fit is not lost to rounding.
  const room = bodyLitres * (1 + 1e-12)
  // The last straight that still fits where it begins is the one to follow.
  const last = lastIndexThat(line, straight => litresWithSpill(straight) <= room)
  const { fromDay, start, perDay } = line[last]!
  if (litresWithSpill(line[last]!) > room) return Number.NEGATIVE_INFINITY
  const withPocketRoom = daysUntil({ start, perDay }, room)
  if (outsideLitres === null) return fromDay + withPocketRoom
  // As if the pockets spilled at once: while they have room, this line lies under the other and limits nothing.
  const perPocketLitre = packing.factor / packing.softPacking
  const withSpill = daysUntil(
    {
      start: start + (onDay(pocketLitres, fromDay) - outsideLitres) * perPocketLitre,
      perDay: perDay + pocketLitres.perDay * perPocketLitre,
    },
    room,
  )
  return fromDay + Math.min(withPocketRoom, withSpill)

  function litresWithSpill(straight: Straight): number {
    return straight.start + spillLitres(onDay(pocketLitres, straight.fromDay), outsideLitres, packing)
  }
}

/** Index of the last value that passes, when all after the first that fails do too; 0 when none passes. */
function lastIndexThat<T>(values: T[], passes: (value: T) => boolean): number {
  let low = 0
  let high = values.length - 1
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (passes(values[middle]!)) low = middle
    else high = middle - 1
  }
  return low
}

/** The days until a line that is not over the limit yet gets there; +∞ when it never does. */
function daysUntil({ start, perDay }: Line, limit: number): number {
  return perDay > 0 ? Math.max(0, limit - start) / perDay : Number.POSITIVE_INFINITY
}
