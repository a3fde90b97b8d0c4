// What a row of the catalogue of fields may say, and what follows from it in types: the value of a field, a part of a
// document, its defaults.

import type { Quantity, Unit } from '../../units'

/** The sane range of a number. The ends are judgements of ours, wide enough for any real trip. */
export interface Limit {
  min: number
  max: number
  /** In words, as a message says it. */
  unit: string
  whole?: boolean
}

/** Ends included; what is no number is not. */
export const isWithin = (value: number, { min, max }: Pick<Limit, 'min' | 'max'>): boolean =>
  value >= min && value <= max

/** How a table (CSV) has the field. */
interface Column {
  /** What the code of tables calls it. */
  name?: string
  /** Its heading, where that is not the label. */
  label?: string
  /** Of bare numbers, where it is not the usual one of the kind. */
  unit?: Unit
  /** Headings that mean it, besides its own. */
  heading?: RegExp
}

interface Common {
  /** A document cannot be without it. */
  need?: true
  /** A document may say that it is not known. */
  nullable?: true
  /** What counts where nothing is said; none: null. */
  usual?: unknown
  /** What counts depends on something else: defaults.ts works it out. */
  depends?: true
  /** What counts goes without saying: an empty field shows nothing. */
  tacit?: true
  /** Where `usual` comes from: ours, or the trade's without a source, or a published rule. */
  origin?: string
  label?: string
  hint?: string
  /** Its word where the trip and the shelf are told apart, if not that of sentences. */
  told?: string
  /** Its label in a reason, if not that of its field. */
  reason?: string
  column?: Column
}

export interface Amount extends Common, Limit {
  as: 'amount'
  kind: Quantity
  /** Bare numbers are read in the finer unit: g or oz instead of kg or lb. */
  fine?: true
  /** A word that may stand in its place. */
  or?: string
  /** Small whole numbers, stepped through by buttons too. */
  steps?: true
}

/** The label of a choice; where that is not the label in small letters its short word, and its word in tables. */
export type ChoiceWord = string | readonly [label: string, short: string, inTables?: string]

export interface Choice<T extends string = string> extends Common {
  as: 'choice'
  choices: Readonly<Record<T, ChoiceWord>>
  /** Shown as a list that opens. */
  opens?: true
}

export interface Truth extends Common {
  as: 'truth'
}

export interface Text extends Common {
  as: 'text'
  /** Must not be empty. */
  filled?: true
}

/** A day as 2026-05-02. */
interface Day extends Common {
  as: 'day'
}

export interface Part extends Common {
  as: 'part'
  rows: Rows
}

export interface List extends Common {
  as: 'list'
  /** Those of each entry. */
  rows: Rows
  least: number
  most: number
  /** What the entries are called. */
  what: string
}

export type Field = Amount | Choice | Truth | Text | Day | Part | List
export type Rows = Readonly<Record<string, Field>>

type Extra<T extends Field> = Partial<Omit<T, 'as' | 'kind' | 'min' | 'max' | 'unit' | 'choices' | 'rows'>>

/** What is said of a field besides: told by its argument alone, not by where the row is put. */
type With<R, E> = R & NoInfer<E>

export const amount = <const E extends Extra<Amount>>(
  kind: Quantity,
  min: number,
  max: number,
  unit: string,
  extra = {} as E,
): With<{ as: 'amount'; kind: Quantity } & Limit, E> => ({ as: 'amount', kind, min, max, unit, ...extra })

export const choice = <
  const C extends Readonly<Record<string, ChoiceWord>>,
  const E extends Extra<Choice> & { usual?: keyof C },
>(
  choices: C,
  extra = {} as E,
): With<{ as: 'choice'; choices: C }, E> => ({ as: 'choice', choices, ...extra })

export const truth = <const E extends Extra<Truth>>(extra = {} as E): With<{ as: 'truth' }, E> => ({
  as: 'truth',
  ...extra,
})

export const text = <const E extends Extra<Text>>(extra = {} as E): With<{ as: 'text' }, E> => ({
  as: 'text',
  ...extra,
})

export const day = { as: 'day', need: true } as const

export const part = <R extends Rows, const E extends Extra<Part>>(
  rows: R,
  extra = {} as E,
): With<{ as: 'part'; rows: R }, E> => ({ as: 'part', rows, ...extra })

export const list = <R extends Rows, const E extends Extra<List>>(
  rows: R,
  { least = 0, most, what }: { least?: number; most: number; what: string },
  extra = {} as E,
): With<{ as: 'list'; rows: R; least: number; most: number; what: string }, E> => ({
  as: 'list',
  rows,
  least,
  most,
  what,
  ...extra,
})

/** Of what goes by a name, which must not be empty. */
export const named = { need: true, filled: true } as const

/** The rows that a hand-written type asks for: one for each of its fields, of its kind and with all its choices. */
export type RowsFor<T> = { [K in keyof T]-?: RowFor<NonNullable<T[K]>> }

type RowFor<T> = [T] extends [boolean]
  ? Truth
  : [Extract<T, number>] extends [never]
    ? [T] extends [string]
      ? string extends T
        ? Text | Day
        : Choice<T>
      : [T] extends [readonly unknown[]]
        ? List
        : Part
    : Amount

type Value<R> = R extends { or: infer O }
  ? number | O
  : R extends { as: 'amount' }
    ? number
    : R extends { as: 'truth' }
      ? boolean
      : R extends { choices: infer C }
        ? keyof C & string
        : R extends { as: 'part'; rows: infer P }
          ? DocumentOf<P>
          : R extends { as: 'list'; rows: infer P }
            ? DocumentOf<P>[]
            : string

type Stored<R> = Value<R> | (R extends { nullable: true } ? null : never)
type Needed<P> = { [K in keyof P]: P[K] extends { need: true } ? K : never }[keyof P]

/** A part of a plan as a file has it, by its rows. */
export type DocumentOf<P> = { [K in Needed<P>]: Stored<P[K]> } & {
  [K in Exclude<keyof P, Needed<P>>]?: Stored<P[K]>
} extends infer D
  ? { [K in keyof D]: D[K] }
  : never

type Widened<U> = U extends number ? number : U extends boolean ? boolean : U extends '' ? string : U

/** What counts where nothing is said, by its rows: null where nothing does. */
export type DefaultsOf<P> = {
  [K in keyof P as P[K] extends { need: true } | { depends: true } ? never : K]: P[K] extends {
    usual: infer U
  }
    ? Widened<U>
    : null
}

export function defaultsOf<P extends Rows>(rows: P): DefaultsOf<P> {
  const usual = Object.entries(rows).filter(([, { need, depends }]) => !need && !depends)
  return Object.fromEntries(usual.map(([name, row]) => [name, row.usual ?? null])) as DefaultsOf<P>
}

const wordsOf = ({ choices }: Choice, value: string) => {
  const word = choices[value] ?? value
  return typeof word === 'string' ? ([word, word.toLowerCase()] as const) : word
}

/** The label of a choice of a field, as a form has it. */
export const choiceLabel = (row: Choice, value: string): string => wordsOf(row, value)[0]

/** The choices of a field to choose from; all of them if none are named. */
export const choicesOf = <T extends string>(
  row: Choice<T>,
  only = Object.keys(row.choices) as unknown as readonly T[],
) => only.map(value => ({ value, label: choiceLabel(row, value) }))

/** The word of a choice in lists: "main body". */
export const choiceWord = (row: Choice, value: string): string => wordsOf(row, value)[1]

/** The word of a choice in tables. */
export const tableWord = (row: Choice, value: string): string => {
  const [, short, inTables = short] = wordsOf(row, value)
  return inTables
}
