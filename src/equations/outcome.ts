// What every equation here returns, and the one check of its inputs against their ranges.
// A range is data, so that schema, hints, messages, docs and tests can all read the same numbers.
// Source: none, this is our own convention.

export interface Limit {
  readonly min: number
  readonly max: number
  readonly unit: string
}

/** `source` is a key of `data/sources.json`. */
export interface Range extends Limit {
  readonly source: string
}

export interface OutsideRange {
  readonly ok: false
  readonly reason: 'outside-range'
  readonly field: string
  readonly limit: Limit
  readonly got: number
}

export type Outcome<T> = { readonly ok: true; readonly value: T } | OutsideRange

export type Ranges<K extends string> = Readonly<Record<K, Range>>

/** Wraps a computed value as an outcome. */
export const found = <T>(value: T): Outcome<T> => ({ ok: true, value })

/** An outcome that names the field, its limit and what came instead. */
export function outside(field: string, { min, max, unit }: Limit, got: number): OutsideRange {
  return { ok: false, reason: 'outside-range', field, limit: { min, max, unit }, got }
}

/** The first field outside its range, in the order of `ranges`; NaN and ±Infinity are outside any range. */
export function firstOutside<K extends string>(
  ranges: Ranges<K>,
  values: Readonly<Record<K, number>>,
): OutsideRange | undefined {
  for (const field of Object.keys(ranges) as K[]) {
    const { min, max } = ranges[field]
    const got = values[field]
    if (!(got >= min && got <= max)) return outside(field, ranges[field], got)
  }
  return undefined
}
