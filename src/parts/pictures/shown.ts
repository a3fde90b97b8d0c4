// What the load line is given to show. It knows nothing of units: kg and km inside, words by `format`.

import type { Moment } from '../../reckon'

export interface PictureStop {
  name: string
  water: 'sure' | 'doubtful' | 'none'
  nights: number
  resupply: boolean
}

export interface LoadLimit {
  label: string
  /** In the terms of the moments' total: a limit on load and pack together comes here less the pack's mass. */
  kg: number
}

export interface LoadFormat {
  kg(value: number): string
  km(value: number): string
  /** kg in one of the unit that `kg` shows, so that level rules fall on round numbers of it; 1 if absent. */
  unitKg?: number
  /** km in one of the unit that `km` shows; 1 if absent. */
  unitKm?: number
}

export interface Shown {
  /** In order; `Moment.stop` indexes `stops`. */
  moments: readonly Moment[]
  stops: readonly PictureStop[]
  limits: readonly LoadLimit[]
  format: LoadFormat
}
