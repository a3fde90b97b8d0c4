// An item taken as one of a kind: what the table knows fills what the item leaves open, and the litres become a range.
// Source: data/item-kinds.json; nothing here is measured, and the item says so by `litresFrom: 'kind'`.

import type { Draft, DraftItem } from '../draft'
import { changeItem, withRange } from '../litres'
import { buildOf, type Kind, placeOf } from './table'

type Known = Pick<DraftItem, 'massKg' | 'count'>

/** The litres of one piece, L: of the whole row, or its part where the item is plainly weighed by the piece. */
export function litresOfKind({ litres, pieces = 1, massLowG }: Kind, { massKg, count = 1 }: Known) {
  const byPiece = massKg === undefined ? count > 1 : massKg * 1000 < massLowG
  const per = byPiece ? pieces : 1
  return { low: litres.low / per, typical: litres.typical / per, high: litres.high / per }
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

/** The item with the kind's litres, build and place, and its mass and group where it has none. */
export function itemOfKind(item: DraftItem, kind: Kind): DraftItem {
  const { massKg, fuel, group, holdsWaterLitres, use } = item
  const pieces = massKg === undefined && (item.count ?? 1) > 1 ? (kind.pieces ?? 1) : 1
  return {
    ...withRange(item, litresOfKind(kind, item)),
    ...(massKg === undefined && !fuel
      ? { massKg: kind.massG / 1000 / pieces, massFrom: 'guess' as const }
      : {}),
    build: buildOf(kind),
    ...placeOf(kind),
    ...(group ? {} : { group: kind.group }),
    ...(kind.holdsWaterLitres && holdsWaterLitres === undefined
      ? { holdsWaterLitres: kind.holdsWaterLitres }
      : {}),
    ...(kind.use === 'daily' && use === undefined ? { use: 'daily' as const } : {}),
  }
}

export const applyKind = (draft: Draft, id: string, kind: Kind): Draft =>
  changeItem(draft, id, item => itemOfKind(item, kind))
