// Why a rigid thing goes into a pack as it does: the geometry that decides, with its sizes and the pack's.
// Source keys: elementary-geometry, ramanujan-1914, our-judgement.

import { fitRoom, usualClearanceCm } from '../../equations'
import { fieldPath, itemName, type Pack } from '../../plan'
import { fittingOf, fitWords } from '../fitting'
import { given } from '../given'
import { told } from './sum'
import type { Explanation, WhyContext, WhyInput, WhyOther } from './types'

const SECTION = { ellipse: 'oval', rectangle: 'with corners' } as const

const RULES = {
  cylinder:
    'Upright while its width across is at most the lesser of width and depth. Lying while (h/2a)² + (d/2b)² ≤ 1 in an oval, h its length, d its width, a and b half of width and depth; while h and d are within width and depth in a section with corners.',
  box: 'Standing on an end of w × d while (w/2a)² + (d/2b)² ≤ 1 in an oval, a and b half of width and depth; while both are within width and depth in a section with corners. Its longest side up is upright, any other lying.',
} as const

/** None where a size is missing. */
export function whyFit(
  context: WhyContext,
  { pack: index, item: id }: { pack: number; item: string },
): Explanation[] {
  const { plan, formats } = context
  const pack = plan.packs[index]
  const fitted = pack && fittingOf(plan, pack).fitted.find(one => one.item.id === id)
  if (!fitted) return []
  const { item, piece, inner, snug } = fitted
  const { cm } = formats
  const words = fitWords(fitted, formats)
  const room = given(fitRoom(piece, inner))
  const thing = (label: string, field: 'lengthCm' | 'diameterCm' | 'widthCm' | 'depthCm'): WhyInput => ({
    label,
    value: cm(item[field] ?? 0),
    path: fieldPath('gear', id, field),
  })
  const packId = context.packIds?.[index]?.id
  const inside = (label: string, value: string, field: keyof Pack): WhyInput => ({
    label,
    value,
    path: packId === undefined ? undefined : fieldPath('packs', packId, field),
  })
  const other = (label: string, value: number, sourceKeys: string[] = []): WhyOther => ({
    label,
    value,
    text: value > 0 ? cm(value) : 'no room',
    sourceKeys,
  })
  const isRound = piece.shape === 'cylinder'
  return [
    told({
      title: `${itemName(item)} in ${pack.name}`,
      equation: 'Plane geometry of the section',
      says: `${RULES[piece.shape]} Aslant while a slab as thick as it finds room corner to corner. Rounding the pack out while its girth is within the section’s perimeter.`,
      inputs: [
        thing('Its length', 'lengthCm'),
        ...(isRound
          ? [thing('Its width across', 'diameterCm')]
          : [thing('Its width', 'widthCm'), thing('Its depth', 'depthCm')]),
        inside('Height inside', cm(inner.innerHeightCm), 'innerHeightCm'),
        inside('Width inside', cm(inner.innerWidthCm), 'innerWidthCm'),
        inside('Depth inside', cm(inner.innerDepthCm), 'innerDepthCm'),
        inside('Section', SECTION[inner.section], 'section'),
        {
          label: 'Room left each way',
          value: snug
            ? `${cm(0)}: with ${cm(usualClearanceCm)} it goes in worse`
            : inner.clearanceCm === 0
              ? `${cm(0)}: it goes in no way even so`
              : `${cm(usualClearanceCm)}, our judgement`,
        },
      ],
      result: { value: room.endCm, text: words.way },
      sourceKeys: ['elementary-geometry', 'ramanujan-1914', 'our-judgement'],
      ignores: 'a narrow bottom, a frame or rolled top in the way, all else packed; litres are judged apart.',
      others: {
        title: 'Room in this pack, the clearance taken off, and what the item asks for',
        list: [
          other('upright, high', room.heightCm),
          other(isRound ? 'upright, across' : 'upright, long side of its end', room.endRoomCm),
          other('lying, long', room.lyingRoomCm),
          other('aslant, long', room.slantRoomCm),
          other('around the section', room.roundCm, ['ramanujan-1914']),
          other('around the item', room.girthCm),
          other('high enough to take it upright', room.longCm + usualClearanceCm),
          ...(isRound ? [other('wide and deep enough', room.endCm + usualClearanceCm)] : []),
        ],
        note: [words.because, words.change].filter(Boolean).join(' '),
      },
    }),
  ]
}
