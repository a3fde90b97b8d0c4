// The hiker's own packings, as far as a reckoning can use them, and whether a trip reckons with them.

import { CAPS, type Draft, isWithin, PACKING_FACTOR, type PackingDocument } from '../../plan'
import { type Packing, same } from '../../plan/shelf'

export interface OwnPackings {
  /** As a plan holds them, the oldest first; the latest where there are more than a plan takes. */
  packings: PackingDocument[]
  /** How many do not say what was along, and so tell no trip anything. */
  older: number
}

export function ownPackings(kept: readonly Packing[]): OwnPackings {
  const told = kept.flatMap(packing => documentOf(packing) ?? [])
  return { packings: told.slice(-CAPS.packings), older: kept.length - told.length }
}

/** Whether a packing on the shelf says all that a reckoning needs; what came from a file may hold anything. */
export const isCounted = (packing: Packing): boolean => documentOf(packing) !== null

function documentOf({ at, pack, bodyLitres, said, reckonedLitresAtFactor1: W, factor, list }: Packing) {
  if (!list || !isWithin(factor, PACKING_FACTOR) || !(W > 0)) return null
  return {
    date: dayOf(at),
    ...fullness(said),
    // A carton is measured anew each time.
    ...(said.how !== 'box' && pack && { pack }),
    packLitres: bodyLitres,
    packFrom: list.packFrom,
    W,
    d: list.d,
    things: list.things,
  } satisfies PackingDocument
}

const fullness = (said: Packing['said']) => {
  if (said.how === 'full') return { p: said.fullness }
  return said.how === 'over' ? { overLitres: said.overLitres } : { p: 1 }
}

function dayOf(at: number): string {
  const day = new Date(at)
  const two = (number: number) => String(number).padStart(2, '0')
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`
}

/** The trip with one packing more: with all that are kept, or where it came with others, with those and the new one. */
export function withNewPacking(draft: Draft, before: OwnPackings, own: OwnPackings): Draft {
  const { packings = [] } = draft
  const isOurs = packings.every(packing => before.packings.some(kept => same(kept, packing)))
  if (isOurs) return reckonWith(draft, own)
  return reckonWith(draft, { packings: [...packings, ...own.packings.slice(-1)].slice(-CAPS.packings) })
}

/** Whether the list of this trip was packed, and how full the pack was is still known. */
export const isMeasured = ({ log, packings = [] }: Draft, kept: readonly Packing[]): boolean =>
  packings.length > 0 && kept.some(({ id }) => id === log?.packing)

/** Whether a trip reckons with just these packings. */
export const reckonsWith = ({ packings = [] }: Pick<Draft, 'packings'>, own: OwnPackings): boolean =>
  packings.length > 0 && same(packings, own.packings)

/** The trip set to reckon with the packings, which a factor set before gives way to; none: with the general model. */
export function reckonWith(draft: Draft, { packings }: Pick<OwnPackings, 'packings'>): Draft {
  const { packings: _packings, ...others } = draft
  const { personalFactor: _factor, personalFactorSpread: _spread, ...settings } = draft.settings ?? {}
  return {
    ...others,
    ...(draft.settings && { settings }),
    ...(packings.length > 0 && { packings }),
  }
}

/** Further than this share from the others, or from the general model where there are none, something may be amiss. */
const ODD = 0.3

/** What to look at where a factor lies far from the others; null where it does not. */
export function oddText(factor: number, others: readonly number[]): string | null {
  const mean = others.length ? others.reduce((sum, other) => sum + other, 0) / others.length : 1
  const off = factor / mean - 1
  if (Math.abs(off) <= ODD) return null
  const than =
    others.length === 0
      ? 'the general model'
      : others.length === 1
        ? 'your other packing'
        : 'your other packings'
  return `${percent(off)} ${off > 0 ? 'more' : 'less'} than by ${than}. Were just these items along? Are the litres of the pack right? It counts as it is.`
}

const percent = (share: number) => `${Math.round(Math.abs(share) * 100)}\u00a0%`

/** "8 % more than reckoned". */
export function effectText(factor: number): string {
  if (Math.round(Math.abs(factor - 1) * 100) === 0) return 'as much as calculated'
  return `${percent(factor - 1)} ${factor > 1 ? 'more' : 'less'} than calculated`
}
