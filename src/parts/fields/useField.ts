// A field's value and the text that could not be read as one, by its path in the open trip.

import { fieldAt } from '../../plan'
import { actions, library, openTrip } from '../../store'

export interface FieldState {
  value: unknown
  /** What was typed and not understood; kept until it is mended. */
  unread: string | undefined
  set(value: unknown, unread?: string): void
}

export function useField(path: string): FieldState {
  const trip = openTrip.value
  return {
    value: trip ? fieldAt(trip.draft, path) : undefined,
    unread: trip?.typed[path],
    set: (value, unread) => actions.setField(path, value, unread ?? null),
  }
}

export const useSystem = () => library.value.system
