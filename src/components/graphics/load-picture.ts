// What the load line is given to show. It knows nothing of units: kg, km and m inside, words by `format`.

import type { Moment } from '../../reckon'
import type { Layers } from './bands'

/** A moment as the load line draws it: the water wanted is part of its total. */
export type LoadMoment = Omit<Moment, 'kg'> & { kg: Layers & { total: number } }

export const withWantedWater = (moment: Moment): LoadMoment =>
  moment.wantedLitres > 0
    ? {
        ...moment,
        kg: {
          ...moment.kg,
          wanted: moment.wantedLitres,
          total: moment.kg.total + moment.wantedLitres,
        },
      }
    : moment

export interface PictureStop {
  name: string
  water: 'sure' | 'doubtful' | 'none'
  nights: number
  resupply: boolean
}

export interface LoadLimit {
  label: string
  /** What the label ends with, where that tells it from others: it is the last to be cut. */
  ending?: string | undefined
  /** In the terms of the moments' total: a limit on load and pack together comes here less the pack's mass. */
  kg: number
}

export interface LoadFormat {
  kg(value: number): string
  km(value: number): string
  /** An elevation, from m; whole metres if absent. */
  metres?(value: number): string
  /** kg in one of the unit that `kg` shows, so that level rules fall on round numbers of it; 1 if absent. */
  unitKg?: number
  /** km in one of the unit that `km` shows; 1 if absent. */
  unitKm?: number
}

/** One point of the terrain along the trip; null: the elevation is not known here. */
export interface ProfilePoint {
  km: number
  eleM: number | null
}

/** The way alone: where its stops lie, and its terrain. */
export interface WayPicture {
  /** In order; `stop` indexes `stops`. */
  moments: readonly Pick<Moment, 'stop' | 'km' | 'hours'>[]
  stops: readonly PictureStop[]
  format: Pick<LoadFormat, 'km' | 'metres'>
  /** The terrain, in order from km 0; drawn where the trip is measured in km. */
  profile?: readonly ProfilePoint[] | undefined
}

export interface LoadPicture extends WayPicture {
  moments: readonly LoadMoment[]
  limits: readonly LoadLimit[]
  format: LoadFormat
  /** The moments that a warning is about, by index. */
  warnings?: readonly number[] | undefined
  /** The peak is told on the picture too, as on paper. */
  isPeakTold?: boolean | undefined
}
