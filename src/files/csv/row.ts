// The cells of one row as an item, and what its parts must keep together: the same rules as a plan's.

import { type DraftItem, defaults, LIMITS } from '../../plan'
import type { ThingFacts } from '../../plan/shelf'
import type { CellValue } from './catalogue'
import { FIELDS, type FieldName } from './fields'
import type { ThingWords } from './types'

export type Values = Partial<Record<FieldName, CellValue>>

/** A rule that is broken, and the field whose cell is to be mended. `why`: half a sentence. */
export interface Broken {
  field: FieldName
  why: string
}

/** Which columns the table has: what a missing one means is said here. */
export type Has = (field: FieldName) => boolean

/** The item that the values make. Where the table says nothing of where a figure is from, the table states it. */
export function itemOf(values: Values, has: Has): ThingFacts {
  const made: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(values) as [FieldName, CellValue][]) {
    const { path } = FIELDS[name]
    if (!path || value === '') continue
    const [key, sub] = path
    if (sub === undefined) made[key] = value
    else made[key] = { ...(made[key] as object | undefined), [sub]: value }
  }
  const item = made as ThingFacts
  if (item.count === 1) delete item.count
  const count = item.count ?? defaults.ITEM.count
  const { massOfAll, kcalEach, worn } = values
  if (item.massKg === undefined && typeof massOfAll === 'number') item.massKg = massOfAll / (count || 1)
  if (item.kcalPerKg === undefined && typeof kcalEach === 'number' && item.massKg)
    item.kcalPerKg = kcalEach / item.massKg
  if (worn === true) item.stow = 'worn'
  if (item.massKg !== undefined && !has('massFrom')) item.massFrom = 'stated'
  if (item.litresRange) item.litresFrom = 'kind'
  else if (item.litres !== undefined && !has('litresFrom')) item.litresFrom = 'stated'
  return item
}

export function thingWordsOf({ note, weighedOn, retired }: Values): ThingWords {
  return {
    ...(typeof note === 'string' && note !== '' ? { note } : {}),
    ...(typeof weighedOn === 'string' ? { weighedOn } : {}),
    ...(retired === true ? { retired } : {}),
  }
}

/** The first rule of a plan that the item would break. */
export function brokenRule(item: ThingFacts, values: Values): Broken | null {
  const { litresRange, use = 'kept', fuel, resupplied, kcalPerKg } = item
  if (litresRange) {
    const { low, typical, high } = litresRange as DraftItem['litresRange'] & object
    for (const [field, value] of [
      ['least', low],
      ['typical', typical],
      ['most', high],
    ] as const)
      if (value === undefined)
        return { field, why: 'it is empty: give the least, typical and most litres, or none' }
    if (!(low <= typical && typical <= high))
      return { field: 'typical', why: 'order the least, typical and most litres from small to large' }
    if (values.litresFrom !== undefined && values.litresFrom !== 'kind')
      return {
        field: 'litresFrom',
        why: 'a range is of a kind: write typical of its kind, or leave the range out',
      }
  } else if (item.litresFrom === 'kind')
    return {
      field: 'litresFrom',
      why: 'it needs the least, typical and most litres: give them, or another source',
    }
  if (resupplied && use !== 'daily' && use !== 'nightly')
    return { field: 'resupplied', why: 'only what is used up daily or nightly is bought again: write no' }
  if (fuel && use !== 'nightly')
    return { field: 'fuel', why: 'fuel is used up nightly: write nightly there, or leave the fuel empty' }
  if (values.kcalEach !== undefined && !item.massKg)
    return { field: 'kcalEach', why: 'the energy of a piece needs its mass: give the mass, or leave it out' }
  if (kcalPerKg !== undefined && kcalPerKg > MOST_KCAL)
    return {
      field: 'kcalEach',
      why: `it comes to ${Math.round(kcalPerKg / 10)} kcal/100 g, more than pure fat has: mend the energy or the mass`,
    }
  return null
}

const MOST_KCAL = LIMITS.item.kcalPerKg.max
