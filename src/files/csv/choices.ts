// The words that stand for a choice in a cell: the first of each is what we write, the others are read as well.

export type ChoiceWords = Readonly<Record<string, readonly [string, ...string[]]>>

export const CHOICES = {
  place: {
    'main-body': ['main body', 'main-body', 'inside', 'in the pack', 'pack', 'main', 'packed'],
    'outside-pocket': ['pocket', 'outside pocket', 'outside-pocket', 'pockets', 'side pocket'],
    'strapped-on': ['strapped on', 'strapped-on', 'strapped', 'lashed on', 'outside'],
    worn: ['worn', 'worn, in hand', 'in hand', 'wearing', 'on me', 'on body'],
  },
  build: {
    soft: ['soft', 'soft, fills gaps', 'gives way'],
    rigid: ['rigid', 'hard', 'stiff'],
  },
  use: {
    kept: ['not used up', 'kept', 'no', 'gear', 'keeps'],
    daily: ['daily', 'daily (food)', 'a day', 'per day', 'food'],
    nightly: ['nightly', 'nightly (fuel)', 'a night', 'per night', 'fuel'],
    spread: ['over the trip', 'spread', 'yes', 'consumable'],
  },
  massFrom: {
    scale: ['weighed', 'scale', 'measured'],
    stated: ['stated', 'as stated', 'label'],
    guess: ['a guess', 'guess', 'guessed', 'estimate', 'estimated'],
  },
  litresFrom: {
    filled: ['measured by filling', 'filled', 'measured'],
    dimensions: ['from its dimensions', 'dimensions'],
    stated: ['stated', 'as stated', 'label'],
    guess: ['a guess', 'guess', 'guessed', 'estimate', 'estimated'],
    kind: ['typical of its kind', 'kind'],
  },
  fuel: {
    gas: ['gas'],
    'white-gas': ['white gas', 'white-gas'],
    ethanol: ['alcohol (ethanol)', 'ethanol', 'alcohol'],
    methanol: ['methanol'],
    tablet: ['solid tablets', 'tablet', 'tablets'],
  },
} as const satisfies Record<string, ChoiceWords>

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
