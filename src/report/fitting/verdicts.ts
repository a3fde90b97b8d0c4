// What the fit of rigid things adds to the verdicts of a set-up: the words of the engine's two codes for things too
// large, and a word on what goes in but does not stand. It changes no code and no number.

import { fitRoom } from '../../equations'
import { itemName, type Pack, type Plan } from '../../plan'
import type { Need, TooLarge } from '../../reckon'
import { capital } from '../../units'
import type { Formats } from '../formats'
import { given } from '../given'
import { type Fitted, fittingOf, type Way } from './judge'
import { fitWords, pairWords } from './words'

interface Words {
  lead: string
  rest: string
}

export interface FitVerdict extends Words {
  code: 'fitting' | 'fitting-pair'
  weight: 'warns' | 'says'
}

interface Judged {
  plan: Plan
  pack: Pack
  need: Need
  formats: Formats
}

/** The words of `too-long` and `too-wide`: the thing, its size against the pack's, and whether it goes in any way. */
export function tooLargeWords(code: TooLarge, judged: Judged): Words {
  const { plan, pack, formats } = judged
  const { cm } = formats
  const lead = code === 'too-long' ? 'Something is too long:' : 'Something is too wide:'
  const [longest, ...others] = fittingOf(plan, pack)
    .fitted.filter(({ counted }) => counted.includes(code))
    .map(worst => ({ worst, longCm: given(fitRoom(worst.piece, worst.inner)).longCm }))
    .sort((a, b) => b.longCm - a.longCm)
  if (!longest) return { lead, rest: plainWords(code, judged) }
  const { worst, longCm } = longest
  const also =
    others.length > 0
      ? ` So ${others.length === 1 ? 'is 1 other item' : `are ${others.length} other items`}.`
      : ''
  const size =
    code === 'too-long'
      ? `${cm(longCm)} in a main body that is ${cm(pack.innerHeightCm ?? 0)} high.`
      : widthWords(worst, pack, formats)
  return { lead, rest: ` ${itemName(worst.item)}, ${size}${ASIDE[worst.way]}${also}` }
}

const ASIDE: Record<Way, string> = {
  upright: '',
  lying: ' It would go in only lying.',
  aslant: ' It would go in only aslant, with nothing else in its way.',
  deforms: ' It would go in only by rounding the pack out against your back.',
  'does-not-fit': ' It goes in no other way either.',
}

function widthWords({ piece }: Fitted, { innerWidthCm, innerDepthCm }: Pack, { cm }: Formats): string {
  const gives = Math.min(innerWidthCm ?? 0, innerDepthCm ?? 0)
  if (piece.shape === 'cylinder')
    return `${cm(piece.diameterCm)} across, where the main body gives ${cm(gives)}.`
  const sides = [piece.lengthCm, piece.widthCm, piece.depthCm].map(cm).join(' × ')
  return `${sides}, in a section of ${cm(innerWidthCm ?? 0)} × ${cm(innerDepthCm ?? 0)}.`
}

/** Where not every size is known: what the engine held against each other. */
function plainWords(code: TooLarge, { pack, need, formats: { cm } }: Judged): string {
  if (code === 'too-long')
    return ` the longest rigid item inside is ${cm(need.longestCm ?? 0)}; the main body is ${cm(pack.innerHeightCm ?? 0)} high.`
  const inner = Math.min(pack.innerWidthCm ?? Infinity, pack.innerDepthCm ?? Infinity)
  return ` the widest rigid item inside is ${cm(need.widestCm ?? 0)} across; the main body gives ${cm(inner)}.`
}

/** What goes in but does not stand, and what does not go in together; what the engine's codes tell is left to them. */
export function fittingVerdicts(plan: Plan, pack: Pack, formats: Formats): FitVerdict[] {
  const { fitted, pairs } = fittingOf(plan, pack)
  const apart = pairs.filter(({ how }) => how === 'not-both')
  const said: FitVerdict[] = apart.length
    ? [
        {
          code: 'fitting-pair',
          weight: 'warns',
          lead: 'Not both:',
          rest: ` ${apart.map(pair => pairWords(pair, formats)).join(' ')}`,
        },
      ]
    : []
  const uneasy = fitted.filter(({ way, counted }) => way !== 'upright' && counted.length === 0)
  const [first, ...others] = uneasy
  if (!first) return said
  const { way, because } = fitWords(first, formats)
  const lead = `${capital(way)}:`
  const also = others.length
    ? ` Not upright either: ${others.map(({ item }) => itemName(item)).join(', ')}.`
    : ''
  const weight = uneasy.every(one => one.way === 'lying') ? 'says' : 'warns'
  return [{ code: 'fitting', weight, lead, rest: ` ${itemName(first.item)}, ${because}${also}` }, ...said]
}
