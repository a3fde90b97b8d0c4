// The list in the order in which it goes into the pack: the main body from the bottom up, then pockets, what is strapped
// on, and what is worn. What is heavy for its size rides close to the back, as the placing of the load has it; what is
// bulky, soft and light goes below, and the rest on top. Judgement of ours.

import type { Item, Plan } from '../../plan'
import { type Heap, type Reckoning, ridingAt } from '../../reckon'
import { type PackedPlace, type PackedRow, packedByPlace } from './by-place'

export type PackingPart = Pick<PackedPlace, 'title' | 'rows'>

const LAYERS = ['bottom', 'back', 'top'] as const
type Layer = (typeof LAYERS)[number]

const TITLES: Record<Layer, string> = {
  bottom: 'At the bottom',
  back: 'Close to the back',
  top: 'Around and on top',
}

/** Every item that is taken, once, in the order of packing. `reckoning` must be what `reckon(plan)` gave; null: there is none. */
export function inPackingOrder(plan: Plan, reckoning: Reckoning | null): PackingPart[] {
  const places = packedByPlace(plan.gear.filter(({ atHome }) => !atHome))
  if (!reckoning) return places
  const heaps = ridingAt(plan, reckoning, 0)
  const heapOf = new Map(heaps.map(heap => [heap.item?.id, heap]))
  const sum = (of: (heap: Heap) => number) => heaps.reduce((total, heap) => total + of(heap), 0)
  const kgPerLitre =
    sum(({ kg }) => kg) /
    Math.max(
      sum(({ litres }) => litres),
      Number.MIN_VALUE,
    )
  return places.flatMap(place =>
    place.stow === 'main-body' ? layered(place.rows, item => heapOf.get(item.id), kgPerLitre) : [place],
  )
}

/** A container with what is in it. */
interface Block {
  heap: Heap | undefined
  rows: PackedRow[]
  layer: Layer
}

function layered(
  rows: readonly PackedRow[],
  heapOf: (item: Item) => Heap | undefined,
  kgPerLitre: number,
): PackingPart[] {
  const blocks: Block[] = []
  for (const row of rows) {
    if (row.within) blocks.at(-1)!.rows.push(row)
    else {
      const heap = heapOf(row.item)
      blocks.push({ heap, rows: [row], layer: layerOf(row.item, heap, kgPerLitre) })
    }
  }
  return LAYERS.flatMap(layer => {
    const mine = blocks.filter(block => block.layer === layer)
    const most = (block: Block) => (layer === 'back' ? block.heap?.kg : block.heap?.litres) ?? 0
    mine.sort((a, b) => most(b) - most(a))
    return mine.length > 0 ? [{ title: TITLES[layer], rows: mine.flatMap(block => block.rows) }] : []
  })
}

function layerOf(item: Item, heap: Heap | undefined, kgPerLitre: number): Layer {
  // A full bottle is heavy for its size, whatever it weighs by itself.
  if (item.holdsWaterLitres > 0) return 'back'
  if (!heap || heap.litres === 0) return 'top'
  if (heap.kg > heap.litres * kgPerLitre) return 'back'
  const isSoft = item.build === 'soft' && item.holdsLitres === null
  return isSoft && item.use === 'kept' ? 'bottom' : 'top'
}
