// What the words of a name say besides what thing it is, for pasted lists and for tables alike: how many, what it holds,
// for a day or a night, worn. Judgements of ours for English lists; what is decided where two readings are possible is
// said as a doubt.

import { isWithin, LIMITS } from '../../plan'
import { parseQuantity } from '../../units'
import { amountsIn, takeCount } from './amounts'
import { headOf, isFood } from './names'
import { tidy } from './tidy'

export interface Said {
  /** The name without what is said elsewhere now; a capacity stays in it. */
  name: string
  count?: number
  /** What one of it holds, L: water, or things where it is a hard box. */
  holdsWaterLitres?: number
  holdsLitres?: number
  use?: 'daily' | 'nightly'
  worn?: true
  /** What was decided where the words could be read in another way, a sentence each. */
  doubts: string[]
}

interface Around {
  /** The name of the group it stands in. */
  group?: string | undefined
  /** Pieces, where they are said beside the name. */
  count?: number | undefined
}

/** Reads the words of a name. Never throws. */
export function saidIn(words: string, { group = '', count: given }: Around): Said {
  const doubts: string[] = []
  const counted = given === undefined ? takeCount(words) : null
  if (counted?.doubt) doubts.push(counted.doubt)
  const count = given ?? counted?.count
  const whole = counted ? tidy(counted.rest) : words
  // Where nothing is said the words stay as they are, whatever marks they hold.
  const without = (text: string, pattern: RegExp) =>
    pattern.test(text) ? tidy(text.replace(pattern, ' ')) || text : text
  const bare = without(whole, WORN)
  const worn = bare !== whole || isWornGroup(group)
  const use = useOf(bare, group, count, doubts)
  const name = without(without(bare, PER_DAY), PER_NIGHT)
  return {
    name,
    ...(count === undefined ? {} : { count }),
    ...capacityOf(name),
    ...(use ? { use } : {}),
    ...(worn ? { worn } : {}),
    doubts,
  }
}

/** "(worn)", "worn" at the end; not "worn-out" or "not worn". */
const WORN = /[([]\s*worn\s*[)\]]|(?<!\bnot)[,–—-]?\s+worn$/i

/** Whether the things of a group called so are worn: "Worn", "Clothing (worn)", "On me"; not "Not worn". */
export const isWornGroup = (group: string): boolean =>
  /\b(?:worn|wearing|on (?:me|(?:my |the )?(?:body|person))|in (?:the )?hands?)\b|^(?:to|(?:what )?(?:i|we)) wear$/i.test(
    group,
  ) && !/\b(?:not|un)[- ]?(?:worn|wearing)\b|\bworn[- ]out\b/i.test(group)

const PER_DAY = /\/\s?(?:person[-\s])?day\b|(?<!\b(?:for|of) )\b(?:per|an?|each|every) (?:person[-\s])?day\b/i
const PER_NIGHT =
  /\/\s?(?:person[-\s])?night\b|(?<!\b(?:for|of) )\b(?:per|an?|each|every) (?:person[-\s])?night\b/i

/** Whether a text says that it is for one day: "per day", "/day", "daily". */
const isPerDay = (text: string): boolean => PER_DAY.test(text) || /\bdaily\b/i.test(text)
const isPerNight = (text: string): boolean => PER_NIGHT.test(text) || /\bnightly\b/i.test(text)
/** What only food says of itself: "food for one day". */
const isADays = (text: string): boolean =>
  /\b(?:for|of) (?:a|one) (?:person[-\s])?day\b|\bone day['’]?s?\b/i.test(text)

function useOf(
  name: string,
  group: string,
  count: number | undefined,
  doubts: string[],
): 'daily' | 'nightly' | undefined {
  const says = [name, group].some(isPerDay) || (isADays(name) && isFood(name)) ? 'day' : null
  const time = says ?? ([name, group].some(isPerNight) ? 'night' : null)
  if (!time) return undefined
  if ((count ?? 1) === 1) return time === 'day' ? 'daily' : 'nightly'
  doubts.push(`${count} each ${time}, or for ${count} ${time}s? It is not used up until its row says so.`)
  return undefined
}

const VESSEL =
  /(?:^|[\s-])(?:bottles?|bladders?|reservoirs?|flasks?|canteens?|(?:water|hydration|drinking)[\s-]?(?:bags?|carriers?|containers?|sacks?|jugs?|cans?))$/
/** What is in it is not water, or is counted by itself. */
const NOT_WATER =
  /\b(?:fuel|gas|petrol|gasoline|alcohol|ethanol|methanol|meths|methylated|spirits?|kerosene|paraffin|oil|pee|urine|soap|shampoo|lotion|cream|sunscreen|repellent|spray|hot[\s-]water|whisk[e]?y|wine|sauce|vinegar|cartridges?)\b/i
const HARD_BOX =
  /(?:^|\s)(?:bear[\s-]?(?:cans?|canisters?|box(?:es)?|barrels?|containers?)|bear[\s-]resistant (?:canisters?|containers?)|(?:hard )?food (?:canisters?|barrels?|box(?:es)?)|hard food containers?)$/

/** Whether it holds water: a bottle, bladder, reservoir or water bag, but none for fuel. */
const isWaterVessel = (name: string): boolean => VESSEL.test(headOf(name)) && !NOT_WATER.test(name)

/** Whether it is a hard box for food. */
const isHardBox = (name: string): boolean => HARD_BOX.test(headOf(name))

/** What one of it holds by its name, or by a volume that stands beside it. */
export function capacityOf(name: string, beside?: string): Pick<Said, 'holdsWaterLitres' | 'holdsLitres'> {
  const field = isWaterVessel(name) ? 'holdsWaterLitres' : isHardBox(name) ? 'holdsLitres' : null
  const text = beside ?? amountsIn(name).find(({ kind }) => kind === 'volume')?.text
  if (!field || text === undefined) return {}
  const read = parseQuantity('volume', text, { system: 'metric' })
  return read.ok && read.value !== null && isWithin(read.value, LIMITS.item[field]) && read.value > 0
    ? { [field]: read.value }
    : {}
}
