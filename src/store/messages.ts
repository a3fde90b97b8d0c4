// What the reader is told when storage fails: what is at stake, and what to do.

import type { Draft } from '../plan'
import { faultOf } from './database'
import { describeField } from './engine'
import { PROFILE } from './merge-trips'

export const nameOf = (error: unknown) => (error instanceof Error && error.name) || String(error)

export const CLEARED_TEXT =
  'This browser has emptied the storage of the app: what is open here is saved again. Trips you want gone are deleted under More.'

/** Why the other tabs are not told of what is saved here. */
export const deafText = (error: unknown) =>
  `Other tabs of the app do not hear what is saved here (${nameOf(error)}): reload them to see it.`

export const leftText = (error: unknown) =>
  `What was typed last before the page was left could not be looked up (${nameOf(error)}): the next start looks again.`

/** What was changed in two tabs at once; `name` is that of the other version. */
export function clashText(
  draft: Draft,
  { clashes, name }: { clashes: string[]; name: string | undefined },
): string {
  const fields = clashes
    .slice(0, MOST_FIELDS)
    .map(path => (path === PROFILE ? 'the terrain of the track' : describeField(draft, path)))
  const rest = clashes.length > MOST_FIELDS ? ` and ${clashes.length - MOST_FIELDS} more` : ''
  return `Also changed in another tab: ${fields.join('; ')}${rest}. Both are kept: the other one is “${name}”.`
}

/** As many fields are named. */
const MOST_FIELDS = 3

/** Why the shelf is not saved: what is stored in its place cannot be replaced. */
export const STUCK_TEXT = {
  newer:
    'The shelf on this device was saved by a newer version of Pack Reckoner: what you change on it here is not saved. Reload the app to update it.',
  damaged:
    'The shelf on this device cannot be read: what you change on it is not saved until the damaged record is removed, under More.',
}

export function failureText(error: unknown): string {
  if (faultOf(error) === 'newer')
    return 'A newer version of Pack Reckoner has updated the storage in another tab, so your last edits are not saved. They are still here: export this trip to a file, then reload the app.'
  if (faultOf(error) === 'no-answer')
    return 'The storage of this browser does not answer, so your last edits are not saved. They are still here: export this trip to a file before you close the app.'
  if (nameOf(error) === 'QuotaExceededError')
    return 'This device has no room left, so your last edits are not saved. They are still here: free some space, or export this trip to a file before you close the app.'
  return `Your last edits could not be saved (${nameOf(error)}). They are still here: the next edit tries again; export this trip to a file before you close the app.`
}

export function memoryOnlyText(error: unknown): string {
  const fault = faultOf(error)
  if (fault === 'newer')
    return 'The trips on this device were saved by a newer version of Pack Reckoner: reload the app to update it. What you enter now is lost when you close it.'
  if (fault === 'no-answer')
    return 'The storage of this browser does not answer, so saved trips are not shown and what you enter is lost when you close the app. Close its other tabs, or export your trip to a file.'
  if (fault === null && !['SecurityError', 'InvalidStateError'].includes(nameOf(error)))
    return `The trips on this device could not be read (${nameOf(error)}) and are left alone. What you enter now is lost when you close the app: reload it, or export your trip to a file.`
  return 'This browser lets the app keep nothing, as private windows do, so what you enter is lost when you close it. Export your trip to a file to keep it.'
}
