// The four answers a set-up can get, in words and marks: never told by colour alone.

import type { Answer } from '../reckon'

interface AnswerWords {
  /** As a heading. */
  words: string
  mark: string
}

export const ANSWERS: Record<Answer, AnswerWords> = {
  does: { words: 'Does', mark: '●' },
  'with-care': { words: 'Does, with care', mark: '◐' },
  'cannot-tell': { words: 'Can’t tell yet', mark: '○' },
  'does-not': { words: 'Does not', mark: '×' },
}

/** It can be taken: with care or without. */
export const isYes = (answer: Answer): boolean => answer === 'does' || answer === 'with-care'
