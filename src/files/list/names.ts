// What a row's name says of it besides what thing it is: a sum, one's own pack, food. Judgements of ours, each said beside
// the row. The head of a name is what stands before a mark, a bracket or "with": "Backpack, blue" is a backpack.

/** What stands before a mark, a bracket or "with", without the amounts at its end, in small letters. */
export function headOf(name: string): string {
  const head = (name.toLowerCase().split(/[,;:(/[]| [-–—] | (?:with|incl\w*|for)\b/)[0] ?? '')
    .trim()
    .replace(/ (?:per|a|each) day$/, '')
  // "Backpack 55 L" and "Food 3 days" say how large and how long.
  const words = head.split(/\s+/)
  while (words.length > 1 && AMOUNT.test(words.at(-1)!)) words.pop()
  return words.join(' ')
}

/** A number, with its unit or without, or a unit that stands after one. */
const AMOUNT = /^(?:\d[\d.,]*)?(?:l|litres?|liters?|ml|cl|dl|days?|kg|g)?$/

/** Whether it looks like the sum of the others. */
export const isSumName = (name: string): boolean => /^(?:grand |sub-?)?(?:total|sum)\b/i.test(name)

// A small pack for the day, or one that folds, is carried inside the other.
const SMALL = /\b(?:day|summit|mini|small|second|spare|fold\w*|packable|kids?|child\S*|dog)\b/
const PACK = /(?:^|\s)(?:back-?\s?pack|ruck-?\s?sack|knapsack)$/
/** What may stand before "pack" alone. */
const OF_A_PACK = new Set(
  'my the own main big large empty hiking trekking trail frame framed frameless internal external'.split(' '),
)

function isBarePack(head: string): boolean {
  const words = head.split(/[\s-]/)
  return words.at(-1) === 'pack' && words.slice(0, -1).every(word => OF_A_PACK.has(word))
}

/** Whether it looks like one's own pack, whose mass is given under Packs; not "pack cover" or "battery pack". */
export function isOwnPack(name: string): boolean {
  const head = headOf(name)
  return isBarePack(head) || (PACK.test(head) && !SMALL.test(head))
}

const FOOD =
  /(?:^|\s)(?:foods?|snacks?|rations?|meals?|breakfasts?|lunch(?:es)?|dinners?|suppers?|trail mix|(?:energy|cereal|granola|snack|chocolate|nut) bars?|nuts|chocolate|granola|muesli|oats|oatmeal|jerky|noodles|cheese)$/

/** Whether it looks like something eaten; not "food bag" or "lunch box". */
export const isFood = (name: string): boolean => FOOD.test(headOf(name))

/** What is said of a row that would come in as gear though it looks like food. */
export const NOT_EATEN = 'Comes in as gear that is not eaten: set it to a day’s food in its row.'
