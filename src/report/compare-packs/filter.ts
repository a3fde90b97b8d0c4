// Which packs are looked at. Each filter leaves packs out and none brings one back; what is asked about and not known
// leaves a pack out. What is asked of a set-up is asked of one and the same.

import { type DraftPack, type DraftSetup, plainLetters, soughtWords } from '../../plan'
import type { Answer } from '../../reckon'
import type { JudgedPack, SetupAnswer } from './judged-packs'

export interface PackFilters {
  /** Words in its name, notes or tags. */
  sought: string
  /** Words in its fabric. */
  fabric: string
  /** The pack has this answer, by the set-up of which the rest is asked. */
  answer: Answer | null
  frame: 'framed' | 'frameless' | null
  sealed: boolean
  has: 'owned' | 'wanted' | null
  starred: boolean
  aside: boolean
  tag: string | null
  mostPrice: number | null
  mostKg: number | null
  leastLitres: number | null
  mostLitres: number | null
}

export const NO_FILTERS: PackFilters = {
  sought: '',
  fabric: '',
  answer: null,
  frame: null,
  sealed: false,
  has: null,
  starred: false,
  aside: false,
  tag: null,
  mostPrice: null,
  mostKg: null,
  leastLitres: null,
  mostLitres: null,
}

type Judged =
  | (Pick<JudgedPack, 'answer'> & { setups: ReadonlyMap<string, Pick<SetupAnswer, 'answer'>> })
  | undefined

/** Whether a set-up has what is asked of set-ups; `answer`: its own. */
export const setupFilter =
  ({ answer, frame, mostKg }: PackFilters) =>
  (setup: DraftSetup, its: Answer | null | undefined): boolean =>
    (answer === null || its === answer) &&
    (frame === null || setup.frame === frame) &&
    atMost(setup.massKg, mostKg)

/** Whether a pack is among those asked for. `judged`: what it is for the trip; undefined apart from any. */
export function packFilter(filters: PackFilters): (pack: DraftPack, judged: Judged) => boolean {
  const { answer, frame, mostKg } = filters
  const fits = setupFilter(filters)
  const [sought, fabric] = [soughtWords(filters.sought), soughtWords(filters.fabric)]
  return (pack, judged) => {
    if (!isOfPack(pack, filters)) return false
    if (
      (fabric.length > 0 && !holds(plainLetters(pack.fabric ?? ''), fabric)) ||
      (sought.length > 0 && !holds(textOf(pack), sought))
    )
      return false
    if (answer === null && frame === null && mostKg === null) return true
    if (answer !== null && judged?.answer !== answer) return false
    return pack.setups.some(setup => fits(setup, judged?.setups.get(setup.id)?.answer))
  }
}

const isOfPack = (pack: DraftPack, filters: PackFilters): boolean => {
  const { sealed, has, starred, aside, tag } = filters
  return (
    (!sealed || pack.sealed === true) &&
    (has === null || pack.has === has) &&
    (!starred || pack.starred === true) &&
    (!aside || pack.aside !== undefined) &&
    (tag === null || (pack.tags?.includes(tag) ?? false)) &&
    atMost(pack.price, filters.mostPrice) &&
    atMost(pack.bodyLitres, filters.mostLitres) &&
    atLeast(pack.bodyLitres, filters.leastLitres)
  )
}

const atMost = (value: number | undefined, most: number | null) =>
  most === null || (value !== undefined && value <= most)
const atLeast = (value: number | undefined, least: number | null) =>
  least === null || (value !== undefined && value >= least)
const holds = (text: string, words: readonly string[]) => words.every(word => text.includes(word))

// A pack that changes is another object, so what is kept here never grows stale.
const TEXTS = new WeakMap<DraftPack, string>()

function textOf(pack: DraftPack): string {
  const known = TEXTS.get(pack)
  if (known !== undefined) return known
  const text = plainLetters([pack.name, pack.notes, ...(pack.tags ?? [])].filter(Boolean).join('\n'))
  TEXTS.set(pack, text)
  return text
}
