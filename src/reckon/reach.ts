// How far a pack reaches: the most full rations it can hold and bear at the first departure, with the largest water
// carry of the plan and everything else as planned. Exact: litres and load are piecewise linear in the days.

import { insideLitres, overflowOf, total } from './ledger'
import type { Parts } from './need'
import type { Stock } from './provisions'
import { packingTerms, spillLitres, type Term } from './room'
import { waterAboard, waterRoomOf } from './water'

export interface Limits {
  bodyLitres: number
  /** Room in the pockets; null: nobody says, and they are not judged. */
  outsideLitres: number | null
  /** The most the contents may weigh; null when no limit is known. */
  contentsKg: number | null
}

/** Days, 0 when even none fits; null when nothing is eaten daily or nothing sets a limit. */
export function reachDaysOf(limits: Limits, waterLitres: number, parts: Parts): number | null {
  if (!parts.gear.some(item => item.use === 'daily' && item.count > 0)) return null
  const days = Math.min(daysHeld(limits, waterLitres, parts), daysBorne(limits, waterLitres, parts))
  return days === Number.POSITIVE_INFINITY ? null : Math.max(0, days)
}

/** The first departure's stock with `days` full rations, and as many nights where fuel is bought with the food. */
export function stockFor(days: number, { stocks, spareRations }: Parts): Stock {
  const first = stocks[0]!
  const rations = days + spareRations
  return {
    left: { ...first.left, dailyAgain: rations, dailyOnce: rations, nightlyAgain: days },
    used: first.used,
  }
}

function daysBorne({ contentsKg }: Limits, waterLitres: number, parts: Parts): number {
  if (contentsKg === null) return Number.POSITIVE_INFINITY
  const loadKg = (days: number) => total(parts.ledger, stockFor(days, parts), 'kg') + waterLitres
  return lastDayUnder(loadKg(0), loadKg(1) - loadKg(0), contentsKg)
}

function daysHeld({ bodyLitres, outsideLitres }: Limits, waterLitres: number, parts: Parts): number {
  const waterSoftLitres = waterAboard(
    waterLitres,
    waterLitres,
    waterRoomOf(parts.gear, parts.stowOf),
  ).softBodyLitres
  const litresFor = (days: number) => {
    const stock = stockFor(days, parts)
    return {
      rigid: total(parts.ledger, stock, 'rigidLitres'),
      soft:
        total(parts.ledger, stock, 'softLitres') +
        overflowOf(parts.ledger, stock).overflowLitres +
        waterSoftLitres,
      spill: spillLitres(total(parts.ledger, stock, 'pocketLitres'), outsideLitres, parts.packing),
    }
  }
  // A hair of room, so that an exact fit is not lost to rounding.
  const room = bodyLitres * (1 + 1e-12)
  const fits = (days: number) => daysWithin(room, litresFor(days), { rigid: 0, soft: 0, spill: 0 }, parts) > 0
  // Litres never fall as days are added: between the days at which a container or the pockets fill up they are
  // straight lines, so the last of these days that still fits begins the line to follow.
  const starts = [0, ...fillingDays(parts, outsideLitres)]
  const last = lastIndexThat(starts, fits)
  const start = starts[last]!
  const end = starts[last + 1] ?? start + 1
  const at = litresFor(start)
  const then = litresFor(end)
  const slope = {
    rigid: (then.rigid - at.rigid) / (end - start),
    soft: (then.soft - at.soft) / (end - start),
    spill: (then.spill - at.spill) / (end - start),
  }
  return start + daysWithin(room, at, slope, parts)
}

/** Index of the last value that passes, when all after the first that fails do too; 0 when none passes. */
function lastIndexThat(values: number[], passes: (value: number) => boolean): number {
  let low = 0
  let high = values.length - 1
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (passes(values[middle]!)) low = middle
    else high = middle - 1
  }
  return low
}

interface Heap {
  rigid: number
  soft: number
  /** Main-body litres of what the pockets cannot take. */
  spill: number
}

/** How long a heap growing by `slope` a day stays within the litres, by each of the packing model's two terms. */
function daysWithin(bodyLitres: number, at: Heap, slope: Heap, { packing }: Parts): number {
  const { skeleton, softBulk } = packingTerms(packing)
  const litres = (heap: Heap, term: Term) =>
    heap.rigid * term.perRigidLitre + heap.soft * term.perSoftLitre + heap.spill
  const daysBy = (term: Term) => lastDayUnder(litres(at, term), litres(slope, term), bodyLitres)
  return Math.min(daysBy(skeleton), daysBy(softBulk))
}

/** The largest day on which start + slope × day ≤ limit; −∞ when already over it, +∞ when it never gets there. */
function lastDayUnder(start: number, slope: number, limit: number): number {
  if (start > limit) return Number.NEGATIVE_INFINITY
  return slope > 0 ? (limit - start) / slope : Number.POSITIVE_INFINITY
}

/** The days, above 0 and in order, at which a container or the pockets become full. */
export function fillingDays(parts: Parts, outsideLitres: number | null): number[] {
  const insideAt = (days: number) => {
    const stock = stockFor(days, parts)
    return [
      ...[...parts.ledger.containers.values()].map(
        ({ contents, roomLitres }) => insideLitres(contents, stock) - roomLitres,
      ),
      ...(outsideLitres === null ? [] : [total(parts.ledger, stock, 'pocketLitres') - outsideLitres]),
    ]
  }
  const now = insideAt(0)
  const then = insideAt(1)
  return now
    .flatMap((over, i) => {
      const day = lastDayUnder(over, then[i]! - over, 0)
      return day > 0 && Number.isFinite(day) ? [day] : []
    })
    .sort((a, b) => a - b)
    .filter((day, i, days) => day !== days[i - 1])
}
