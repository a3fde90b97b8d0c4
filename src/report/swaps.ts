// What another thing in an item's place changes, in words.

import type { Item } from '../plan'
import type { Answer } from '../reckon'
import { answersChanged, type Change, changeText } from './changes'
import { CANNOT_BE_TOLD, CHANGES_NOTHING, unknownText } from './costs'
import type { Formats } from './formats'

export interface SwapCost {
  /** Null where one of the two plans would be refused. */
  change: (Change & { answers: readonly { name: string; answer: Answer }[] }) | null
  /** The item as it would be then. */
  item: Pick<Item, 'unknownUpTo' | 'atHome'>
}

/** "−0.6 kg, −2.8 L. Small frameless now: suitable". */
export function swapText({ change, item }: SwapCost, formats: Formats): string {
  if (item.atHome) return `${CHANGES_NOTHING} while it is at home`
  if (!change) return CANNOT_BE_TOLD
  const figures = [changeText(change, formats), unknownText(item)].filter(Boolean).join(', ')
  return [figures, ...answersChanged(change.answers)].filter(Boolean).join('. ') || CHANGES_NOTHING
}
