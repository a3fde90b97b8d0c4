// The litres of an item from one source in place of another: a number measured, or a range. One source at a time counts,
// so the other is taken away.

import type { Draft, DraftItem } from '../draft'
import { mapId } from '../lists'
import type { Item, LitresFrom, LitresRange } from '../types'

/** The item with a number of litres, each, and where it is from; it is then no longer of a kind. */
export function withLitres(
  item: DraftItem,
  litres: number,
  litresFrom: Exclude<LitresFrom, 'kind'>,
): DraftItem {
  const { litresRange: _range, litresPerKg: _perKg, ...rest } = item
  return { ...rest, litres: Number(litres.toFixed(2)), litresFrom }
}

/** The item with the sizes of one shape, to the millimetre, in place of those it had; as it was without any. */
export function withSizes(item: DraftItem, sizes: Sizes | undefined): DraftItem {
  if (!sizes) return item
  const { lengthCm: _l, diameterCm: _d, widthCm: _w, depthCm: _h, ...rest } = item
  const known = Object.entries(sizes).filter(([, cm]) => cm !== null)
  return {
    ...rest,
    ...Object.fromEntries(known.map(([field, cm]) => [field, Number(Number(cm).toFixed(1))])),
  }
}

type Sizes = Partial<Pick<Item, 'lengthCm' | 'diameterCm' | 'widthCm' | 'depthCm'>>

/** The item with a range of litres, each: the ends and the mode of a triangular distribution. */
export function withRange(item: DraftItem, range: LitresRange): DraftItem {
  const { litres: _litres, litresPerKg: _perKg, ...rest } = item
  return { ...rest, litresFrom: 'kind', litresRange: short(range) }
}

const short = ({ low, typical, high }: LitresRange): LitresRange => {
  const digits = (litres: number) => Number(litres.toPrecision(3))
  return { low: digits(low), typical: digits(typical), high: digits(high) }
}

/** What a mass takes by a range of L/kg, L. */
export const litresByMass = (massKg: number, { low, typical, high }: LitresRange): LitresRange => ({
  low: low * massKg,
  typical: typical * massKg,
  high: high * massKg,
})

/**
 * The item after its field was changed: a range that follows the mass does so, until litres are given in another way. An
 * empty mass leaves the range as it is.
 */
export function followingMass(item: DraftItem, changed: string): DraftItem {
  const { litresPerKg, ...rest } = item
  if (!litresPerKg) return item
  if (['litres', 'litresRange', 'litresFrom'].includes(changed)) return rest
  return changed === 'massKg' && item.massKg
    ? { ...item, litresRange: short(litresByMass(item.massKg, litresPerKg)) }
    : item
}

/** The item without its range: its litres are open again. */
export function withoutRange(item: DraftItem): DraftItem {
  const { litresRange: _range, litresPerKg: _perKg, litresFrom, ...rest } = item
  return litresFrom === undefined || litresFrom === 'kind' ? rest : { ...rest, litresFrom }
}

/** The draft with one item changed. */
export const changeItem = (draft: Draft, id: string, change: (item: DraftItem) => DraftItem): Draft => ({
  ...draft,
  gear: mapId(draft.gear, id, change),
})
