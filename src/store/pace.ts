// While somebody types, the field is painted first and the reckoning follows: until then what is reckoned stays as it was
// a frame ago, and whoever shows it can tell that it is behind.

import { batch, type ReadonlySignal, signal } from '@preact/signals'

/** Where no frame comes, as in a page that is not in view, it follows after this long all the same. */
const LATEST_MS = 100

export interface Pace {
  /** What is reckoned is not yet that of what was typed last. */
  isBehind: ReadonlySignal<boolean>
  /** Makes a change of values alone, which the reckoning follows; nothing is added, moved or taken away by it. */
  typing: (change: () => void) => void
  /** Called with any other change: all of it is reckoned at once. */
  catchUp: () => void
  /** From now on the reckoning follows typing so; until it is called, everything is reckoned at once. */
  follow: (later: (run: () => void) => void) => void
}

export function createPace(): Pace {
  const isBehind = signal(false)
  let later: ((run: () => void) => void) | null = null
  let isDue = false
  let isTyping = false
  return {
    isBehind,
    follow(given) {
      later = given
    },
    typing(change) {
      if (!later) return change()
      isTyping = true
      try {
        batch(() => {
          isBehind.value = true
          change()
        })
      } finally {
        isTyping = false
      }
      if (isDue) return
      isDue = true
      later(() => {
        isDue = false
        isBehind.value = false
      })
    },
    catchUp() {
      if (!isTyping) isBehind.value = false
    },
  }
}

/** Runs it once the page has shown what has changed, or soon where nothing is shown. */
export function afterPaint(run: () => void): void {
  let isDone = false
  const once = () => {
    if (!isDone) run()
    isDone = true
  }
  requestAnimationFrame(() => setTimeout(once))
  setTimeout(once, LATEST_MS)
}
