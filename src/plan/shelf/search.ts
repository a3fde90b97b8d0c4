// Things on the shelf found by words. Pure.

import { plainLetters, soughtWords } from '../sought'
import type { Thing } from './types'

// A thing that changes is another object, so what is kept here never grows stale.
const texts = new WeakMap<Thing, string>()

function textOf(thing: Thing): string {
  const known = texts.get(thing)
  if (known !== undefined) return known
  const text = plainLetters(`${thing.item.name ?? ''}\n${thing.item.group ?? ''}\n${thing.note ?? ''}`)
  texts.set(thing, text)
  return text
}

/** Those of which name, group or note hold each word sought; all where none is. */
export function thingsFound(things: readonly Thing[], sought: string): Thing[] {
  const words = soughtWords(sought)
  return things.filter(thing => words.every(word => textOf(thing).includes(word)))
}
