// The list of packs as it is looked at: which of them, in which order, and how many there are of each kind.

import { useMemo, useRef } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import type { Entry } from '../../components/long-list'
import type { DraftPack } from '../../plan'
import { ANSWERS, type Formats, formatsIn, type Missing, missingOf } from '../../report'
import {
  type Comparison,
  type PackFilters,
  type PackLine,
  packFilter,
  setupFilter,
} from '../../report/compare-packs'
import { apart, edited } from '../../store'
import { type Judged, useJudged } from './judged'
import {
  AS_LISTED,
  filtersOf,
  inOrder,
  isOfATrip,
  type PackAnswer,
  type Readings,
  readingsOf,
  type View,
  view,
} from './view'

/** Fewer packs than this need no ordering. */
const WORTH_SORTING = 2

const ANSWER_NAMES = Object.keys(ANSWERS) as PackAnswer[]

export interface PackList {
  /** All there are, as listed. */
  packs: readonly DraftPack[]
  /** Those on show, in their order. */
  rows: DraftPack[]
  /** Their rows, with a heading before those set aside. */
  entries: readonly Entry[]
  judged: Judged
  /** What is known of a pack by the set-ups that its answer is of. */
  of: (id: string) => readonly Comparison[]
  answerOf: (id: string) => PackAnswer | null
  /** Whether a line is of the set-ups asked for, of a pack on show. */
  shows: (line: PackLine) => boolean
  counts: Counts
  /** What nobody has said of the gear. */
  missing: Missing
  chosen: View
  readings: Readings
  isSortable: boolean
  /** Rows stand as they are listed, all of them: they can be moved. */
  isAsListed: boolean
  formats: Formats
}

/** How many would be on show if that were asked for instead. */
export interface Counts {
  answers: ReadonlyMap<PackAnswer, number>
  mine: number
  starred: number
}

/** `editing`: the pack whose page is open, which stays in view and keeps its place. */
export function usePackList(isApart: boolean, editing: string | null): PackList {
  const system = useSystem()
  const { packs } = (isApart ? apart : edited).value.draft
  const judged = useJudged(isApart)
  const isSortable = packs.length >= WORTH_SORTING
  // One pack alone has no choices on show that could bring it back.
  const asked = isSortable ? view.value : AS_LISTED
  const found = useMemo(() => {
    // Apart from a trip there are no answers, and what is of a trip orders nothing.
    const order = isApart && isOfATrip(asked.order) ? ('listed' as const) : asked.order
    const chosen = isApart ? { ...asked, answer: null, order } : asked
    const readings = readingsOf(chosen, system)
    const filters = filtersOf(chosen, readings)
    const of = (id: string) => judged.packs.get(id)?.comparisons ?? []
    const answerOf = (id: string) => judged.packs.get(id)?.answer ?? null
    const those = (part: Partial<PackFilters>) => {
      const passes = isAskedBy({ ...filters, ...part })
      return packs.filter(pack => passes(pack, judged.packs.get(pack.id)))
    }
    const wanted = new Set(those({}))
    const rows = inOrder(
      packs.filter(pack => wanted.has(pack) || pack.id === editing),
      chosen.order,
      of,
      chosen.mixed || isApart ? undefined : answerOf,
    )
    const answers = countsOf(packs, judged, filters)
    const shown = new Map(rows.map(pack => [pack.id, pack]))
    const hasAsked = setupFilter(filters)
    const shows = ({ packId, setupId, answer }: PackLine) => {
      const pack = shown.get(packId)
      if (!pack) return false
      const setup = pack.setups.find(({ id }) => id === setupId)
      // A pack that stays in view although it is not asked for stays whole.
      return !setup || !wanted.has(pack) || hasAsked(setup, answer)
    }
    const mine = those({ has: 'owned' }).length
    const starred = those({ starred: true }).length
    return { chosen, readings, of, answerOf, rows, shows, counts: { answers, mine, starred } }
  }, [packs, judged, asked, isApart, system, editing])
  const rows = useHeld(found.rows, editing)
  return {
    ...found,
    packs,
    rows,
    entries: useEntries(rows),
    judged,
    isSortable,
    isAsListed:
      found.chosen.order === 'listed' &&
      rows.every((pack, i) => pack === packs[i]) &&
      rows.length === packs.length,
    formats: formatsIn(system),
    missing: missingOf(judged.settled?.plan ?? { gear: [] }),
  }
}

/** Whether a pack is among those asked for. */
function isAskedBy(filters: PackFilters): ReturnType<typeof packFilter> {
  const passes = packFilter(filters)
  // Of what is set aside nobody asks what it would do, unless it is what is looked at.
  if (filters.answer === null || filters.aside) return passes
  return (pack, judged) => pack.aside === undefined && passes(pack, judged)
}

/** How many there would be of each answer; each pack is asked about its own alone. */
function countsOf(packs: readonly DraftPack[], judged: Judged, filters: PackFilters): Counts['answers'] {
  const passes = new Map(ANSWER_NAMES.map(answer => [answer, isAskedBy({ ...filters, answer })]))
  const counts = new Map(ANSWER_NAMES.map(answer => [answer, 0]))
  for (const pack of packs) {
    const its = judged.packs.get(pack.id)
    const answer = its?.answer
    if (answer && passes.get(answer)!(pack, its)) counts.set(answer, counts.get(answer)! + 1)
  }
  return counts
}

/** What is the same list is the same object, so that no scrolling starts anew. */
function useEntries(rows: readonly DraftPack[]): readonly Entry[] {
  const keys = rows.map(({ id, aside }) => (aside === undefined ? id : `${id} aside`)).join('\n')
  return useMemo(() => {
    const first = rows.findIndex(({ aside }) => aside !== undefined)
    const entries = rows.map(({ id }): Entry => ({ key: id }))
    return first < 0 ? entries : entries.toSpliced(first, 0, { key: 'set-aside', heading: 'Set aside' })
  }, [keys])
}

/** The packs in their order; while one of them is being edited they keep the order they had before. */
function useHeld(ordered: DraftPack[], editing: string | null): DraftPack[] {
  const held = useRef<{ editing: string | null; view: View; ids: Map<string, number> } | null>(null)
  const before = held.current
  if (!before || editing === null || before.editing !== editing || before.view !== view.value) {
    const ids = new Map(ordered.map(({ id }, i) => [id, i]))
    held.current = { editing, view: view.value, ids }
    return ordered
  }
  const at = ({ id }: DraftPack) => before.ids.get(id) ?? before.ids.size
  return ordered.toSorted((a, b) => at(a) - at(b))
}
