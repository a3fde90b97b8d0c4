// Which packs a plan takes along when it is given on: all of the list, the starred, the one taken, or none.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import { Choice } from '../../components/fields'
import type { DraftPack, PlanDocument } from '../../plan'
import { openTrip, reckoned } from '../../store'

type Along = 'all' | 'starred' | 'taken' | 'none'

const LABELS: Record<Along, string> = { all: 'All', starred: 'Starred', taken: 'Taken', none: 'None' }

export interface PlanWithPacks {
  document: PlanDocument
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
    taken: ({ id }) => draft.takes?.pack === id,
    none: () => false,
  }
  const countOf = (which: Along) => draft.packs.filter(isWanted[which]).length
  const offered = (Object.keys(LABELS) as Along[]).filter(which => which === 'none' || countOf(which) > 0)
  const wanted = new Set(draft.packs.filter(isWanted[along]).map(({ id }) => id))
  const packs = (open.document.packs ?? []).filter((_, i) => wanted.has(open.packIds[i]!))
  const document: PlanDocument = along === 'all' ? open.document : { ...open.document, packs }
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
