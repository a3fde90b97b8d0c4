// The litres of the main body, where only those of the whole pack are told.

import type { PackDocument } from './fields'

export type MainBody =
  | { ok: true; litres: number }
  | { ok: false; reason: 'no-total' | 'no-pockets' | 'pockets-too-large' }

/** The main body where the tag gives only a total: what is left of it once the pockets are taken off, L. */
export function mainBodyOf(total: number | undefined, pockets: number | undefined): MainBody {
  if (total === undefined) return { ok: false, reason: 'no-total' }
  if (pockets === undefined) return { ok: false, reason: 'no-pockets' }
  if (pockets >= total) return { ok: false, reason: 'pockets-too-large' }
  return { ok: true, litres: total - pockets }
}

/** The main body's part of litres told with the pockets, where the pockets are not known: our estimate. */
const SHARE_OF_TOTAL = 0.85

/** The pack by its main body alone: the total less the pockets, or where those are not known a share of it, a guess. */
export function withMainBody(
  pack: PackDocument,
): Omit<PackDocument, 'bodyLitres' | 'totalLitres'> & { bodyLitres: number } {
  const { totalLitres = 0, bodyLitres, ...rest } = pack
  if (bodyLitres !== undefined) return { ...rest, bodyLitres }
  if (pack.outsideLitres !== undefined) return { ...rest, bodyLitres: totalLitres - pack.outsideLitres }
  return { ...rest, bodyLitres: SHARE_OF_TOTAL * totalLitres, bodyFrom: 'guess' }
}
