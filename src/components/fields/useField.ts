// A field's value and the text that could not be read as one, by its path in what is being edited: the open trip with
// the packs, unless an `EditedFields` around the fields says otherwise.

import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import { fieldAt } from '../../plan'
import { actions, edited, library, typing } from '../../store'

interface FieldState {
  value: unknown
  /** What was typed and not understood; kept until it is mended. */
  unread: string | undefined
  set(value: unknown, unread?: string): void
}

/** What fields read and write, by path. Reads are of signals, so that fields follow what changes. */
export interface Edited {
  /** The path of such a field in a trip, where that is another. */
  inTrip?: (path: string) => string
  valueAt: (path: string) => unknown
  unreadAt: (path: string) => string | undefined
  /** A value (undefined: none) and the text that could not be read as one (null: none). */
  set: (path: string, value: unknown, unread: string | null) => void
}

const theOpenTrip: Edited = {
  valueAt: path => fieldAt(edited.value.draft, path),
  unreadAt: path => edited.value.typed[path],
  // The field shows what was typed before all else is reckoned.
  set: (path, value, unread) => typing(() => actions.setField(path, value, unread)),
}

const EditedContext = createContext(theOpenTrip)

/** Around fields that edit something other than the open trip. */
export const EditedFields = EditedContext.Provider

export const useEdited = () => useContext(EditedContext)

export function useField(path: string): FieldState {
  const fields = useEdited()
  return {
    value: fields.valueAt(path),
    unread: fields.unreadAt(path),
    set: (value, unread) => fields.set(path, value, unread ?? null),
  }
}

export const useSystem = () => library.value.system
