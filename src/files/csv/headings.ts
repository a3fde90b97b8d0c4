// What a heading says: which field, and the unit of the bare numbers under it: "Weight (g)", "oz", "Packed volume [L]".

import type { Unit } from '../../units'
import { unitNamed } from './amount'
import { amountIn, type Catalogue } from './catalogue'

export interface Heading<F extends string> {
  field: F | null
  unit: Unit | null
}

const BRACKETS = /[([]\s*([^()[\]]{1,20}?)\s*[)\]]\s*$/

/** A longer text is no heading, and would keep the patterns busy. */
const LONGEST = 200

/** The field and unit a heading names; null where it names none. */
export function readHeading<F extends string>(heading: string, catalogue: Catalogue<F>): Heading<F> {
  if (heading.length > LONGEST) return { field: null, unit: null }
  // The mark of a footnote is no part of it.
  const plain = heading.trim().replace(/\s*[*†‡¹²³]+$/, '')
  const words = plain.toLowerCase().replace(/\s+/g, ' ')
  const inBrackets = BRACKETS.exec(plain)?.[1]
  const bare = words.replace(BRACKETS, '').trim()
  const field = fieldNamed(bare, words, catalogue) ?? catalogue.ofUnit(inBrackets ?? bare)
  if (!field || catalogue.ofParts?.test(words) || catalogue.reckoned?.test(words))
    return { field: null, unit: null }
  const amount = amountIn(catalogue.fields[field])
  const candidates = [inBrackets, bare, bare.split(/[\s,/:]+/).at(-1)]
  const units = candidates.map(word => (amount && word ? unitNamed(amount.kind, word) : null))
  return { field, unit: units.find(unit => unit !== null) ?? null }
}

function fieldNamed<F extends string>(
  bare: string,
  words: string,
  { fields, narrowFirst }: Catalogue<F>,
): F | null {
  if (bare === '') return null
  const labelled = narrowFirst.find(name => fields[name].label.toLowerCase() === bare)
  return labelled ?? narrowFirst.find(name => fields[name].heading?.test(words)) ?? null
}

/** A unit alone tells masses and volumes: "Gewicht (g)". */
export const isUnitOfMass = (word: string): boolean =>
  /^(?:kg|kilos?|kilograms?|g|gr|grams?|mg|oz|ounces?|lbs?|pounds?)$/i.test(word)
export const isUnitOfVolume = (word: string): boolean =>
  /^(?:l|litres?|liters?|ml|cl|dl|cu\.? ?in|ci|in3|in³)$/i.test(word)
