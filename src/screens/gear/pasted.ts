// What is taken of a pasted list and as which kinds, before anything is added. A choice stays with its line's text.

import type { ListRow, Taken, Understood } from '../../files/list'
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
    const asked = `${row.name}\n${row.massKg}`
    const suggestions = matched.get(asked) ?? suggestKinds(row)
    matched.set(asked, suggestions)
    return [{ key: `${n}:${row.text}`, row, suggestions }]
  })
}

/** What is taken of a line: a sum and one's own pack are left, and a kind stands there ahead only where it is sure. */
export function chosenOf({ key, row, suggestions }: PastedLine, choices: Choices): Taken & { take: boolean } {
  const { take = !(row.isSum || row.isPack), kind } = choices[key] ?? {}
  const usual = suggestions[0]?.sure ? suggestions[0].kind : null
  return { row, take, kind: kind === undefined ? usual : kindOf(suggestions, kind) }
}

const kindOf = (suggestions: readonly Suggestion[], name: string): Kind | null =>
  suggestions.find(({ kind }) => kind.kind === name)?.kind ?? null

export const choose = (choices: Choices, { key }: PastedLine, change: Choice): Choices => ({
  ...choices,
  [key]: { ...choices[key], ...change },
})
