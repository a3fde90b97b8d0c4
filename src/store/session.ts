// What lies in the storage of this tab's session. Where that is switched off, nothing lies there.

import { BESIDE } from './places'

const ANEW = 'pack-reckoner/anew'

/** Lets go of the words typed beside trips that are not kept. */
export function dropOthersWords(isKept: (trip: string) => boolean): void {
  tried(() => {
    const keys = Object.keys(sessionStorage).filter(key => key.startsWith(BESIDE))
    for (const key of keys)
      if (!isKept(key.slice(BESIDE.length).split('/')[0]!)) sessionStorage.removeItem(key)
  })
}

let isLeaving = false

/**
 * Shows the app anew, empty: everything was erased. Once a page: a tab may hear of it twice, and a second reload would
 * take the place of the page that has just said why it is empty.
 */
export function startAnew(): void {
  if (isLeaving) return
  isLeaving = true
  dropOthersWords(() => false)
  tried(() => sessionStorage.setItem(ANEW, 'yes'))
  location.reload()
}

/** Whether this page is shown because everything was erased; asked once. Not the one that is just going away for it. */
export function isAnew(): boolean {
  if (isLeaving) return false
  return (
    tried(() => {
      const found = sessionStorage.getItem(ANEW) !== null
      sessionStorage.removeItem(ANEW)
      return found
    }) ?? false
  )
}

function tried<T>(work: () => T): T | undefined {
  try {
    return work()
  } catch {
    // It is switched off.
    return undefined
  }
}
