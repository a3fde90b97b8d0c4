// Why something outside the database could not be done now, as part of a sentence.

import { faultOf } from './database'
import { BUSY } from './in-turn'
import { nameOf } from './messages'

export const NO_ANSWER = 'the storage of this browser does not answer'

export function whyText(error: unknown): string {
  switch (nameOf(error)) {
    case 'TimeoutError':
      return 'the place where it lies does not answer'
    case BUSY:
      return 'another tab of the app holds it: close the other tabs'
    case 'QuotaExceededError':
      return 'this device has no room left'
    default:
      return faultOf(error) === 'no-answer' ? NO_ANSWER : nameOf(error)
  }
}
