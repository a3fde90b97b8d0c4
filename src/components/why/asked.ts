// Whether anything was ever asked in this tab: until then it is said how.

import { signal } from '@preact/signals'

export const hasAsked = signal(false)

export const noteAsked = (): void => {
  hasAsked.value = true
}
