// The four answers a set-up can get, in words and marks: never told by colour alone.

import type { Answer } from '../reckon'

interface AnswerWords {
  /** As a heading. */
  words: string
  mark: string
  /** Beside one pack in a list, and after a count of packs. */
  short: string
  shortMany: string
  /** In a sentence, of one pack and of many. */
  ofOne: string
  ofMany: string
}

export const ANSWERS: Record<Answer, AnswerWords> = {
  does: { words: 'Does', mark: '●', short: 'does', shortMany: 'do', ofOne: 'does', ofMany: 'do' },
  'with-care': {
    words: 'Does, with care',
    mark: '◐',
    short: 'with care',
    shortMany: 'with care',
    ofOne: 'does with care',
    ofMany: 'do with care',
  },
  'cannot-tell': {
    words: 'Can’t tell yet',
    mark: '○',
    short: 'can’t tell',
    shortMany: 'can’t tell',
    ofOne: 'can’t be told yet',
    ofMany: 'can’t be told yet',
  },
  'does-not': {
    words: 'Does not',
    mark: '×',
    short: 'does not',
    shortMany: 'do not',
    ofOne: 'does not',
    ofMany: 'do not',
  },
}

/** It can be taken: with care or without. */
export const isYes = (answer: Answer): boolean => answer === 'does' || answer === 'with-care'
