// Terrain factors η: how much more the walking part of the power costs on a ground than on a hard floor.
// Published factors are per surface (soule-goldman-1972, as listed in herzog-2020: third-party copy);
// which of them stands for which ground of ours is a judgement.

import type { Range } from './outcome'

export type Ground = 'paved' | 'trail' | 'rough' | 'brush' | 'sand'

export interface TerrainFactor {
  readonly factor: number
  readonly source: string
  readonly standing: string
}

/** The published surface each ground leans on, said in `standing`. */
export const terrainFactors: Readonly<Record<Ground, TerrainFactor>> = {
  paved: {
    factor: 1.0,
    source: 'soule-goldman-1972',
    standing: 'third-party copy: treadmill, asphalt, blacktop',
  },
  trail: {
    factor: 1.1,
    source: 'soule-goldman-1972',
    standing: 'judgement of ours: a kept path as dirt road or grass (third-party copy)',
  },
  rough: {
    factor: 1.2,
    source: 'our-judgement',
    standing:
      'judgement of ours: a rough mountain path, at the value that third-party copies give for light brush',
  },
  brush: {
    factor: 1.5,
    source: 'soule-goldman-1972',
    standing: 'judgement of ours: off the path as heavy brush (third-party copy)',
  },
  sand: {
    factor: 2.1,
    source: 'soule-goldman-1972',
    standing: 'third-party copy: loose sand',
  },
}

/** From a hard floor to deep snow (the cap remembered from Pandolf, Haisman and Goldman 1976). */
export const terrainFactorRange = {
  min: 1,
  max: 4.1,
  unit: 'times',
  source: 'our-judgement',
} as const satisfies Range
