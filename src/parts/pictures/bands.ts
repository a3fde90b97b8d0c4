// What the pictures are made of: the shares of a moment, bottom to top, with the word for each.
// The order is the same in the load line, the cutaway, their keys and their tables.

import type { Shares } from '../../reckon'

export type Band = keyof Shares

export const BANDS: readonly { band: Band; word: string }[] = [
  { band: 'kept', word: 'Gear' },
  { band: 'spread', word: 'Used-up things' },
  { band: 'nightly', word: 'Fuel' },
  { band: 'daily', word: 'Food' },
  { band: 'rubbish', word: 'Rubbish' },
  { band: 'water', word: 'Water' },
]

/** The bands as a key lists them: top band first. */
export const TOP_DOWN = [...BANDS].reverse()

/** The lower edge of each band and, last, the upper edge of the top one; in the unit of the shares. */
export function edgesOf(shares: Shares): number[] {
  const edges = [0]
  for (const { band } of BANDS) edges.push(edges.at(-1)! + Math.max(0, shares[band]))
  return edges
}

/**
 * Main-body litres by band, from litres before packing losses: scaled so that their sum is `bodyLitres`, which
 * spreads the gaps through all layers. Nothing aboard: all zero.
 */
export function layersOf(litres: Shares, bodyLitres: number): Shares {
  const sum = edgesOf(litres).at(-1)!
  const factor = sum > 0 ? bodyLitres / sum : 0
  const layers = { ...litres }
  for (const { band } of BANDS) layers[band] = Math.max(0, litres[band]) * factor
  return layers
}

/** The bands that hold anything in one of the shares, bottom to top. */
export const bandsIn = (all: readonly Shares[]): Band[] =>
  BANDS.filter(({ band }) => all.some(shares => shares[band] > 0)).map(({ band }) => band)
