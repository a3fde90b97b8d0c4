// How each rigid thing goes into a pack, and two of them beside each other. Held with 1 cm of clearance first; what then
// does not stand is tried without it, so that nothing is said against a thing that the engine lets pass.

import { type Fit, fitOf, type PackInner, type RigidPiece } from '../../equations'
import type { Item, Pack, Plan } from '../../plan'
import { type TooLarge, tooLargeIn } from '../../reckon'
import { given } from '../given'
import { type Pair, pairsOf } from './pairs'
import { insideOf, shapeOf, sizedThings } from './pieces'

export type Way = 'upright' | 'lying' | 'aslant' | 'deforms' | 'does-not-fit'

export interface Fitted {
  item: Item
  piece: RigidPiece
  way: Way
  fit: Fit
  /** The inside it was held in: without the clearance where it goes in better so. */
  inner: PackInner
  /** Less than the clearance is left. */
  snug: boolean
  /** What the engine counts it as, whatever way it might go in. */
  counted: readonly TooLarge[]
}

/** A thing of which sizes are missing, in words. */
interface Unjudged {
  item: Item
  missing: string[]
}

export interface Fitting {
  /** Inner measures of the pack that are not known; nothing is judged then. */
  missing: string[]
  /** How many rigid things with a size there are. */
  things: number
  fitted: Fitted[]
  unjudged: Unjudged[]
  pairs: Pair[]
}

const KEPT = new WeakMap<Pack, { gear: Plan['gear']; fitting: Fitting }>()

/**
 * Every rigid thing of the plan with a size, in the plan's order, as it goes into the pack. Asked several times for each
 * set-up, worked out once.
 */
export function fittingOf({ gear }: Plan, pack: Pack): Fitting {
  const kept = KEPT.get(pack)
  if (kept?.gear === gear) return kept.fitting
  const fitting = fittingIn(pack, sizedThings(gear))
  KEPT.set(pack, { gear, fitting })
  return fitting
}

function fittingIn(pack: Pack, all: Item[]): Fitting {
  const things = all.length
  const inside = insideOf(pack)
  if ('missing' in inside) return { missing: inside.missing, things, fitted: [], unjudged: [], pairs: [] }
  const fitted: Fitted[] = []
  const unjudged: Unjudged[] = []
  for (const item of all) {
    const shape = shapeOf(item)
    if ('missing' in shape) unjudged.push({ item, missing: shape.missing })
    else fitted.push(fittedIn(item, shape.piece, { pack, inner: inside.inner }))
  }
  return { missing: [], things, fitted, unjudged, pairs: pairsOf(fitted, inside.inner) }
}

const BEST_FIRST: readonly Way[] = ['upright', 'lying', 'aslant', 'deforms', 'does-not-fit']

function fittedIn(item: Item, piece: RigidPiece, { pack, inner }: { pack: Pack; inner: PackInner }): Fitted {
  const easy = heldIn(piece, inner)
  const close = easy.way === 'upright' ? easy : heldIn(piece, { ...inner, clearanceCm: 0 })
  const snug = BEST_FIRST.indexOf(close.way) < BEST_FIRST.indexOf(easy.way)
  // What goes in no way is told by what the engine goes by: the whole inside.
  const held = snug || close.way === 'does-not-fit' ? close : easy
  return { item, piece, snug, ...held, counted: tooLargeIn(pack, item) }
}

function heldIn(piece: RigidPiece, inner: PackInner) {
  const fit = given(fitOf(piece, inner))
  return { fit, inner, way: wayOf(fit) }
}

function wayOf(fit: Fit): Way {
  switch (fit.verdict) {
    case 'upright':
    case 'deforms':
      return fit.verdict
    case 'only-lying':
      return fit.how === 'across' ? 'lying' : 'aslant'
    case 'too-long':
    case 'does-not-fit':
      return 'does-not-fit'
  }
}
