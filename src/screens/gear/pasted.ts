// What is taken of a pasted list and as which kinds, before anything is added, and what of it is in doubt. A choice stays
// with its line's text.

import { isFood, type ListRow, NOT_EATEN, type Taken, type Understood } from '../../files/list'
import { type Kind, type Suggestion, suggestKinds } from '../../plan/kinds'

export interface PastedLine {
  key: string
  row: Understood
  suggestions: Suggestion[]
}

interface Choice {
  take?: boolean
  kind?: string
}

export type Choices = Readonly<Record<string, Choice>>

export const NO_KIND = ''

/** Kinds by name and mass, kept so that a long list is not matched anew with every letter. */
export type Matched = Map<string, Suggestion[]>

/** The understood rows with the kinds they may be. Equal lines are told apart by their order. */
export function withSuggestions(rows: readonly ListRow[], matched: Matched): PastedLine[] {
  const seen = new Map<string, number>()
  return rows.flatMap(row => {
    if (!row.ok) return []
    const n = (seen.get(row.text) ?? 0) + 1
    seen.set(row.text, n)
    const asked = `${row.name}\n${row.massKg}\n${row.use}`
    const suggestions = matched.get(asked) ?? suggestKinds(row)
    matched.set(asked, suggestions)
    return [{ key: `${n}:${row.text}`, row, suggestions }]
  })
}

/**
 * What is taken of a line: a sum, one's own pack and the name of a group are left, and a kind stands there ahead only
 * where it is sure.
 */
export function chosenOf({ key, row, suggestions }: PastedLine, choices: Choices): Taken & { take: boolean } {
  const { take = !(row.isSum || row.isPack || row.isHeading), kind } = choices[key] ?? {}
  const usual = suggestions[0]?.sure ? suggestions[0].kind : null
  return { row, take, kind: kind === undefined ? usual : kindOf(suggestions, kind) }
}

const kindOf = (suggestions: readonly Suggestion[], name: string): Kind | null =>
  suggestions.find(({ kind }) => kind.kind === name)?.kind ?? null

export const choose = (choices: Choices, { key }: PastedLine, change: Choice): Choices => ({
  ...choices,
  [key]: { ...choices[key], ...change },
})

/** What is in doubt of a line as it is taken, a sentence each; none: it is clear. */
export function doubtsOf(
  { row, suggestions }: PastedLine,
  { take, kind }: Omit<Taken, 'row'> & { take: boolean },
) {
  const isDaily = row.use === 'daily' || kind?.use === 'daily'
  const mayBeAny = !kind && row.litres === undefined && !row.worn && suggestions.some(({ likely }) => likely)
  const doubts: (string | false)[] = [
    row.isSum && 'Looks like the sum of the others, so it is left.',
    row.isPack && `Your pack? Its mass belongs under Packs${take ? '' : ', so it is left'}.`,
    row.isHeading === true && !take && 'Read as the name of a group. Tick it if it is an item.',
    take && !isDaily && isFood(row.name) && NOT_EATEN,
    ...row.notes,
    take && mayBeAny && 'Which kind is it? Its litres hang on that.',
  ]
  return doubts.filter(doubt => doubt !== false)
}

/** Whether a line is shown for a decision; one that is stays there when it is decided. */
export const isDoubtful = (line: PastedLine): boolean => doubtsOf(line, chosenOf(line, {})).length > 0
