// Which packs a plan takes along when it is given on: all of the list, the starred, the one taken, or none.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import { Choice } from '../../components/fields'
import { type DraftPack, takenBy, type WrittenPlan, withPacksOnly } from '../../plan'
import { openTrip, person, reckoned } from '../../store'

type Along = 'all' | 'starred' | 'taken' | 'none'

const LABELS: Record<Along, string> = { all: 'All', starred: 'Starred', taken: 'Taken', none: 'None' }

export interface PlanWithPacks {
  document: WrittenPlan
  /** The choice of packs; null where there are none. */
  choice: ComponentChildren
  /** Changes with what is chosen. */
  chosen: string
}

/** The open trip as a plan with the packs chosen, and the choice; null while it is not reckoned. */
export function usePlanWithPacks(): PlanWithPacks | null {
  const [along, setAlong] = useState<Along>('all')
  const open = reckoned.value
  const draft = openTrip.value?.draft
  if (!open || !draft) return null
  const isWanted: Record<Along, (pack: DraftPack) => boolean> = {
    all: () => true,
    starred: ({ starred }) => starred === true,
    taken: ({ id }) => takenBy(draft, person.value)?.pack === id,
    none: () => false,
  }
  const countOf = (which: Along) => draft.packs.filter(isWanted[which]).length
  const offered = (Object.keys(LABELS) as Along[]).filter(which => which === 'none' || countOf(which) > 0)
  const wanted = new Set(draft.packs.filter(isWanted[along]).map(({ id }) => id))
  const kept = open.packIds.flatMap((id, i) => (wanted.has(id) ? [i] : []))
  const document = along === 'all' ? open.document : withPacksOnly(open.document, kept)
  const choice =
    draft.packs.length === 0 ? null : (
      <Choice
        label="Packs that go along"
        options={offered.map(value => ({
          value,
          label: value === 'none' ? LABELS.none : `${LABELS[value]} (${countOf(value)})`,
        }))}
        chosen={along}
        onChoose={setAlong}
      />
    )
  return { document, choice, chosen: [...wanted].join(' ') }
}
