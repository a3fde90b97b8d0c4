// What is done with a whole pack, from its row and from its page: each one undoable step.

import { type DraftPack, duplicatePack, fieldPath, movePack, removePack, takesPath } from '../../plan'
import { actions, openTrip, person } from '../../store'
import { rowActions } from '../rows'
import { takenWords } from './taken'

const EDITS = { what: 'pack', move: movePack, duplicate: duplicatePack, remove: removePack }

/** Where it stands among those it may be moved. */
export interface Place {
  index: number
  count: number
}

/** Move, duplicate and delete. */
export const editsOf = ({ id }: DraftPack, name: string, place: Place) =>
  rowActions(EDITS, { id, name, besides: takenWords(id), ...place })

const set = (pack: DraftPack, field: string, value: unknown) =>
  actions.setField(fieldPath('packs', pack.id, field), value, null)

export const setStarred = (pack: DraftPack, on: boolean) => set(pack, 'starred', on || undefined)

/** `why` may be empty; null: it is used again. */
export const setAside = (pack: DraftPack, why: string | null) => set(pack, 'aside', why ?? undefined)

/** The open trip takes this set-up of it, by its id; null: it does not take it. */
export const take = (pack: DraftPack, setup: string | null) =>
  actions.setField(
    openTrip.value ? takesPath(openTrip.value.draft, person.value) : 'takes',
    setup === null ? undefined : { pack: pack.id, setup },
    null,
  )
