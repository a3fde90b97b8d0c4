// What the pictures are made of: the shares of a moment, bottom to top, with the word for each.
// The order is the same in the load line, the cutaway, their keys and their tables.

import type { Shares } from '../../reckon'

/** The shares of a load, and the water wanted that no container holds. */
export type Layers = Shares & { wanted?: number }
export type LoadBand = keyof Layers

/** The fills of the gear by its groups, so many as there are layers of it: the first is that of all gear. */
const GEAR_BANDS = ['kept', 'kept1', 'kept2', 'kept3'] as const
export type Band = LoadBand | (typeof GEAR_BANDS)[number]

/** The fill of a part of the load; of gear that of its group. */
export const bandOf = (share: LoadBand, nth: number): Band =>
  share === 'kept' ? GEAR_BANDS[Math.min(nth, GEAR_BANDS.length - 1)]! : share

/** What is aboard. */
export const BANDS: readonly { band: keyof Shares; word: string }[] = [
  { band: 'kept', word: 'Gear' },
  { band: 'spread', word: 'Used up' },
  { band: 'nightly', word: 'Fuel' },
  { band: 'daily', word: 'Food' },
  { band: 'rubbish', word: 'Rubbish' },
  { band: 'water', word: 'Water' },
]

/** What a load is told by: what is aboard, and above it what is wanted. */
export const LOAD_BANDS: readonly { band: LoadBand; word: string }[] = [
  ...BANDS,
  { band: 'wanted', word: 'Water short' },
]

/** The bands as a key lists them: top band first. */
export const TOP_DOWN = [...LOAD_BANDS].reverse()

/** The lower edge of each band and, last, the upper edge of the top one; in the unit of the shares. */
export function edgesOf(shares: Layers): number[] {
  const edges = [0]
  for (const { band } of LOAD_BANDS) edges.push(edges.at(-1)! + Math.max(0, shares[band] ?? 0))
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
export const bandsIn = (all: readonly Layers[]): LoadBand[] =>
  LOAD_BANDS.filter(({ band }) => all.some(shares => (shares[band] ?? 0) > 0)).map(({ band }) => band)
