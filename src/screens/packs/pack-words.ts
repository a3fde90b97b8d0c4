// A pack in the few words that a list has room for.

import { type DraftPack, takenBy } from '../../plan'
import { ANSWERS, type Formats } from '../../report'
import { type Comparison, ownWords } from '../../report/compare-packs'
import { openTrip, person, shelf } from '../../store'
import type { PackAnswer } from './view'

/** "42.0 L, 1.26 kg": as its owner typed it. */
export const packFacts = ({ bodyLitres, setups }: DraftPack, formats: Formats): string =>
  [
    bodyLitres === undefined ? 'no litres yet' : formats.litres(bodyLitres),
    ...setups.flatMap(({ massKg }) => (massKg === undefined ? [] : formats.gear(massKg))),
  ].join(', ')

const takesNow = () => openTrip.value && takenBy(openTrip.value.draft, person.value)

/** Whose it is, and whether the open trip takes it. */
export const packMarks = ({ id, has }: DraftPack): string[] =>
  [has === 'owned' ? 'mine' : (has ?? ''), takesNow()?.pack === id ? 'taken' : ''].filter(Boolean)

/** What it has earned by the hiker's own figures, and why it is set aside. */
export const packWords = ({ aside }: DraftPack, comparisons: readonly Comparison[]): string[] => [
  ...ownWords(comparisons, shelf.value.figures ?? {}),
  ...(aside ? [`“${aside}”`] : []),
]

/** "with care: tight"; `short`: why, in a few words. */
export const answerWords = (answer: PackAnswer, short: string): string =>
  [ANSWERS[answer].short, short].filter(Boolean).join(': ')
