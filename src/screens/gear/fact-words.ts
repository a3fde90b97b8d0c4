// The facts of an item in words, as they are told where a trip and the shelf differ.

import { type DraftItem, defaults, fieldWord } from '../../plan'
import type { OfferedField, ThingFacts } from '../../plan/shelf'
import { formatsIn } from '../../report'
import { formatQuantity, type System } from '../../units'
import { rangeOf } from './kind-words'

/** Where an item rides; the usual place has no word in a list. */
export const PLACES = {
  'main-body': 'main body',
  'outside-pocket': 'pocket',
  'strapped-on': 'strapped on',
  worn: 'worn',
} as const

const WORDS: Readonly<Record<string, string>> = {
  ...PLACES,
  soft: 'soft',
  rigid: 'rigid',
  kept: 'not used up',
  daily: 'daily',
  nightly: 'nightly',
  spread: 'over the trip',
  scale: 'weighed',
  stated: 'stated',
  guess: 'a guess',
  filled: 'measured by filling',
  dimensions: 'from its dimensions',
  kind: 'from its kind',
}

const FACTS: Readonly<Partial<Record<keyof ThingFacts, string>>> = {
  count: 'how many',
  stow: 'place',
  build: 'whether it gives way',
}

const USUAL: Readonly<Partial<Record<keyof ThingFacts, unknown>>> = {
  count: defaults.ITEM.count,
  stow: defaults.ITEM.stow,
  use: defaults.ITEM.use,
  massFrom: defaults.ITEM.massFrom,
  litresFrom: defaults.ITEM.litresFrom,
  build: defaults.ITEM.build,
  optional: defaults.ITEM.optional,
}

/** "mass", "place" */
export const factWord = (field: keyof ThingFacts): string => FACTS[field] ?? fieldWord(field)

/** "250 g", "strapped on", "none" */
export function factText(field: keyof ThingFacts, stored: unknown, system: System): string {
  const shown = formatsIn(system)
  const value = stored ?? USUAL[field]
  if (value === undefined) return field === 'mayRideOutside' ? 'not said' : 'none'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return WORDS[value] ?? value
  if (field === 'litresRange') {
    const { low = 0, high = 0 } = value as NonNullable<DraftItem['litresRange']>
    return rangeOf({ low, high }, system)
  }
  if (typeof value !== 'number') return 'worked out from its use'
  switch (field) {
    case 'massKg':
      return shown.gear(value)
    case 'litres':
    case 'holdsLitres':
    case 'holdsWaterLitres':
      return formatQuantity('volume', value, { system, unit: 'L', digits: 2 })
    case 'lengthCm':
    case 'widthCm':
    case 'depthCm':
    case 'diameterCm':
      return shown.cm(value)
    case 'leaves':
      return shown.percent(value)
    case 'kcalPerKg':
      return formatQuantity('energyDensity', value, { system, digits: 0 })
    default:
      return String(value)
  }
}

/** What counts the same is no difference worth a word: one, and nothing said of how many. */
export function saidFields(fields: readonly OfferedField[], system: System): OfferedField[] {
  return fields.filter(({ field, from, to }) => factText(field, from, system) !== factText(field, to, system))
}
