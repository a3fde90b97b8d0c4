// The words that stand for a choice in a cell: the first of each is what we write, the others are read as well.

import { type Choice, choiceLabel, tableWord } from '../../plan'

type ChoiceWords = Readonly<Record<string, readonly [string, ...string[]]>>

/** What is read besides a choice's own words, by field and choice. */
const MORE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  place: {
    'main-body': 'inside; in the pack; pack; main; packed',
    'outside-pocket': 'outside pocket; pockets; side pocket',
    'strapped-on': 'strapped; lashed on; outside',
    worn: 'in hand; wearing; on me; on body',
  },
  build: { soft: 'gives way', rigid: 'hard; stiff' },
  use: {
    kept: 'no; gear; keeps',
    daily: 'a day; per day; food',
    nightly: 'a night; per night; fuel',
    spread: 'yes; consumable',
  },
  massFrom: { scale: 'measured', stated: 'as stated; label', guess: 'guessed; estimate; estimated' },
  litresFrom: {
    filled: 'measured',
    dimensions: 'dimensions',
    stated: 'as stated; label',
    guess: 'guessed; estimate; estimated',
  },
  fuel: { ethanol: 'alcohol', tablet: 'tablets' },
}

const known = new Map<string, ChoiceWords>()

/** The words of each choice of a field, by its name in tables. */
export function choiceWords(name: string, row: Choice): ChoiceWords {
  const words =
    known.get(name) ??
    Object.fromEntries(
      Object.keys(row.choices).map(value => {
        const more = MORE[name]?.[value]?.split('; ') ?? []
        return [value, [tableWord(row, value), choiceLabel(row, value).toLowerCase(), value, ...more]]
      }),
    )
  known.set(name, words)
  return words
}

/** The choice a word stands for, whatever its case; null where it stands for none. */
export function chosenBy(word: string, words: ChoiceWords): string | null {
  const sought = word.toLowerCase()
  return Object.entries(words).find(([, known]) => known.includes(sought))?.[0] ?? null
}

const TRUTHS: ChoiceWords = {
  true: ['yes', 'y', 'true', '1', 'x', '✓', '✔', '☑', 'on', 'ja', 'oui'],
  false: ['no', 'n', 'false', '0', '-', '–', '—', '✗', '✘', '☐', 'off', 'nein', 'non'],
}

/** Yes or no as people mark it; null where it is neither. */
export function truthOf(word: string): boolean | null {
  const read = chosenBy(word, TRUTHS)
  return read === null ? null : read === 'true'
}

export const yesNo = (value: boolean): string => TRUTHS[String(value)]![0]
