// An item taken as one of a kind: what the table knows fills what the item leaves open, and the litres become a range.
// Source: data/item-kinds.json; nothing here is measured, and the item says so by `litresFrom: 'kind'`.

import type { Draft, DraftItem } from '../draft'
import { changeItem, litresByMass, withRange } from '../litres'
import type { LitresRange } from '../types'
import { buildOf, type Kind, placeOf } from './table'

/** What tells how large one of a kind is. */
export type Known = Pick<DraftItem, 'massKg' | 'massFrom' | 'count' | 'holdsWaterLitres' | 'holdsLitres'>

/** Whether a mass tells the litres: it is soft, and weighed or stated. A guess is no better known than the litres. */
export const isByMass = ({ litresPerKg }: Kind, { massKg, massFrom }: Known): boolean =>
  Boolean(litresPerKg && massKg && massFrom !== 'guess')

/**
 * The litres of one piece, L: by its mass where the kind is soft and the mass is known. Else those of the kind: of the
 * whole row, or its part where the item is plainly weighed by the piece, and as much larger as what it holds.
 */
export function litresOfKind(kind: Kind, item: Known): LitresRange {
  if (isByMass(kind, item)) return litresByMass(item.massKg!, kind.litresPerKg!)
  const { litres, pieces = 1, massLowG } = kind
  const { massKg, count = 1 } = item
  const byPiece = massKg === undefined ? count > 1 : massKg * 1000 < massLowG
  return litresByMass((byPiece ? 1 / pieces : 1) * sizeOf(kind, item), litres)
}

/** How many times larger than the kind's a hard vessel or container is, by what it holds. */
function sizeOf(kind: Kind, item: Known): number {
  if (buildOf(kind) === 'soft') return 1
  const ratio = (holds: number | undefined, usual: number | undefined) => (holds && usual ? holds / usual : 1)
  return ratio(item.holdsWaterLitres, kind.holdsWaterLitres) * ratio(item.holdsLitres, kind.holdsLitres)
}

/** Whether a mass lies outside what the kind usually weighs; an item without one does not. */
export function oddMass(
  { massLowG, massHighG, pieces = 1 }: Kind,
  massKg: number | undefined,
): 'light' | 'heavy' | null {
  if (massKg === undefined) return null
  const g = massKg * 1000
  if (g > massHighG) return 'heavy'
  return g < massLowG && !(g * pieces >= massLowG && g * pieces <= massHighG) ? 'light' : null
}

/** The item with the kind's litres, which follow its mass from then on where the kind is soft. */
export const withKindsLitres = (item: DraftItem, kind: Kind): DraftItem => ({
  ...withRange(item, litresOfKind(kind, item)),
  ...(kind.litresPerKg && !item.fuel ? { litresPerKg: litresByMass(1, kind.litresPerKg) } : {}),
})

/** The item with the kind's litres, build and place, and its mass and group where it has none. */
export function itemOfKind(item: DraftItem, kind: Kind): DraftItem {
  const { massKg, fuel, group, holdsWaterLitres, holdsLitres, inside, use } = item
  const pieces = massKg === undefined && (item.count ?? 1) > 1 ? (kind.pieces ?? 1) : 1
  return {
    ...withKindsLitres(item, kind),
    ...(massKg === undefined && !fuel
      ? { massKg: kind.massG / 1000 / pieces, massFrom: 'guess' as const }
      : {}),
    build: buildOf(kind),
    ...placeOf(kind),
    ...(group ? {} : { group: kind.group }),
    ...(kind.holdsWaterLitres && holdsWaterLitres === undefined
      ? { holdsWaterLitres: kind.holdsWaterLitres }
      : {}),
    // A container cannot ride in a container.
    ...(kind.holdsLitres && holdsLitres === undefined && inside === undefined
      ? { holdsLitres: kind.holdsLitres }
      : {}),
    ...(kind.use === 'daily' && use === undefined ? { use: 'daily' as const } : {}),
  }
}

export const applyKind = (draft: Draft, id: string, kind: Kind): Draft =>
  changeItem(draft, id, item => itemOfKind(item, kind))
