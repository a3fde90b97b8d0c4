// What a heading says: which field, and the unit of the bare numbers under it: "Weight (g)", "oz", "Packed volume [L]".

import type { Unit } from '../../units'
import { unitNamed } from './amount'
import { amountOf, FIELD_NAMES, FIELDS, type FieldName } from './fields'

export interface Heading {
  field: FieldName | null
  unit: Unit | null
}

const BRACKETS = /[([]\s*([^()[\]]{1,20}?)\s*[)\]]\s*$/

/** The field and unit a heading names; null where it names none. */
export function readHeading(heading: string): Heading {
  const words = heading.trim().toLowerCase().replace(/\s+/g, ' ')
  const inBrackets = BRACKETS.exec(heading.trim())?.[1]
  const bare = words.replace(BRACKETS, '').trim()
  const field = fieldNamed(bare, words) ?? fieldOfUnit(inBrackets ?? bare)
  if (!field) return { field, unit: null }
  return { field, unit: unitIn(field, [inBrackets, bare, bare.split(/[\s,/:]+/).at(-1)]) }
}

function fieldNamed(bare: string, words: string): FieldName | null {
  if (bare === '') return null
  const labelled = FIELD_NAMES.find(name => FIELDS[name].label.toLowerCase() === bare)
  if (labelled) return labelled
  // "Total weight" is no mass of one piece, and energy by mass is no mass: the narrower one is asked first.
  return NARROW_FIRST.find(name => FIELDS[name].heading?.test(words)) ?? null
}

const FIRST: readonly FieldName[] = [
  'massUnit',
  'massOfAll',
  'kcal',
  'kcalEach',
  'worn',
  'count',
  'mass',
  'litres',
]
const NARROW_FIRST = [...FIRST, ...FIELD_NAMES.filter(name => !FIRST.includes(name))]

/** A unit alone tells masses and volumes: "Gewicht (g)". */
function fieldOfUnit(word: string): FieldName | null {
  if (/^(?:kg|kilos?|kilograms?|g|gr|grams?|mg|oz|ounces?|lbs?|pounds?)$/i.test(word)) return 'mass'
  if (/^(?:l|litres?|liters?|ml|cl|dl|cu\.? ?in|ci|in3|in³)$/i.test(word)) return 'litres'
  return null
}

function unitIn(field: FieldName, candidates: readonly (string | undefined)[]): Unit | null {
  const amount = amountOf(field)
  if (!amount) return null
  for (const candidate of candidates) {
    const unit = candidate ? unitNamed(amount.kind, candidate) : null
    if (unit !== null) return unit
  }
  return null
}
