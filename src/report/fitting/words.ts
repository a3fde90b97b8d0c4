// How a rigid thing goes into a pack, in words: the way, the number that decides it, and what would change it.
// The rules are those of equations/fit.ts; the clearance of 1 cm is our judgement.

import { type FitRoom, fitRoom, usualClearanceCm } from '../../equations'
import { itemName } from '../../plan'
import type { TooLarge } from '../../reckon'
import { listText } from '../../units'
import type { Formats } from '../formats'
import { given } from '../given'
import type { Fitted } from './judge'
import type { Pair } from './pairs'

interface FitWords {
  /** "fits upright": follows the thing's name. */
  way: string
  /** The number that decides, as sentences. */
  because: string
  /** What to change where it does not stand; null where it does. */
  change: string | null
}

export function fitWords(fitted: Fitted, formats: Formats): FitWords {
  const { cm } = formats
  const { way, snug, counted, fit } = fitted
  const room = given(fitRoom(fitted.piece, fitted.inner))
  const end = endText(fitted, room, formats)
  const stand = standsIn(fitted, room, formats)
  const all = counted[0]
    ? `It is counted as ${listText(counted.map(code => COUNTED[code]))} all the same.`
    : null
  const close = snug ? `Less than ${cm(usualClearanceCm)} is to spare.` : null
  const sentences = (...parts: (string | null)[]) => parts.filter(Boolean).join(' ')
  switch (way) {
    case 'upright':
      return {
        way: 'fits upright',
        because: sentences(
          `${end}, ${cm(room.longCm)} high where there is room for ${cm(room.heightCm)}.`,
          close,
        ),
        change: null,
      }
    case 'lying':
      return {
        way: 'fits only lying',
        because: sentences(
          `${cm(fitted.piece.shape === 'cylinder' ? fitted.piece.lengthCm : room.longCm)} lie across where there is room for ${cm(room.lyingRoomCm)}.`,
          close,
          all,
        ),
        change: stand,
      }
    case 'aslant':
      return {
        way: 'fits only aslant',
        because: sentences(
          `${cm(room.longCm)} in a height of ${cm(room.heightCm)}; leaning, up to ${cm(room.slantRoomCm)} goes in where nothing is in its way.`,
          close,
          all,
        ),
        change: `${stand} Or carry it outside.`,
      }
    case 'deforms':
      return {
        way: 'bulges the pack’s back panel',
        because: sentences(
          `${end}. ${cm(room.girthCm)} around it goes into the ${cm(room.roundCm)} around the section only by rounding it out, which presses on the back.`,
          all,
        ),
        change: `${stand} Or carry it outside.`,
      }
    case 'does-not-fit':
      return {
        way: 'does not fit',
        because:
          fit.verdict === 'too-long'
            ? `${cm(room.longCm)} long; even aslant there is room for only ${cm(Math.max(room.heightCm, room.slantRoomCm))}.`
            : `${cm(room.girthCm)} around it, more than the ${cm(room.roundCm)} around the section.`,
        change: `${stand} Or carry it outside.`,
      }
  }
}

const COUNTED: Record<TooLarge, string> = { 'too-long': 'too long', 'too-wide': 'too wide' }

/** "21 cm across where there is room for 23 cm"; of a box the longer side of its end. */
function endText({ piece }: Fitted, { endCm, endRoomCm }: FitRoom, { cm }: Formats): string {
  if (piece.shape === 'cylinder') return `${cm(endCm)} across where there is room for ${cm(endRoomCm)}`
  const short = Math.min(piece.lengthCm, piece.widthCm, piece.depthCm)
  const beside = `an end of ${cm(endCm)} × ${cm(short)}`
  return endRoomCm === 0
    ? `${beside}, wider than the section`
    : `${beside} where there is room for ${cm(endRoomCm)} beside its ${cm(short)}`
}

/** What pack would take it standing. */
function standsIn(
  { piece }: Fitted,
  { longCm, heightCm, endCm, endRoomCm }: FitRoom,
  { cm }: Formats,
): string {
  const height = longCm > heightCm ? [`${cm(longCm + usualClearanceCm)} of height inside`] : []
  const wider =
    piece.shape === 'cylinder'
      ? `${cm(endCm + usualClearanceCm)} of width and depth inside`
      : 'a wider or squarer section'
  const asked = [...height, ...(endCm > endRoomCm ? [wider] : [])]
  return `It would stand with ${listText(asked)}.`
}

export function pairWords({ items: [one, other], how, snug }: Pair, { cm }: Formats): string {
  const two = one === other ? `Two of ${itemName(one)}` : `${itemName(one)} and ${itemName(other)}`
  const close = snug ? `, with less than ${cm(usualClearanceCm)} to spare` : ''
  switch (how) {
    case 'side-by-side':
      return `${two} stand side by side${close}.`
    case 'stacked':
      return `${two} go in only one above the other${close}: side by side they are too wide.`
    case 'not-both':
      return `${two} do not go in together: too wide side by side, too high one above the other. Carry one outside.`
  }
}
