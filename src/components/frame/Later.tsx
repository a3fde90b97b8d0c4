// A part of the interface that is fetched when it is first needed. If that fails, as it may without a network before
// everything is on the device, or in an old tab after an update, it says so and is tried again by itself and by a tap:
// what was typed is in the store and stays.

import type { ComponentType } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'

/** After this long without an answer it says that it waits. */
const SLOW_MS = 4000
/** A failed fetch is tried again after this long, then after twice as long each time, up to the longest wait. */
const RETRY_MS = 2000
const LONGEST_RETRY_MS = 30_000

type Load<P> = () => Promise<ComponentType<P>>

/** A component that loads its code on first use, or ahead of it with `ahead()`. */
export function later<P extends object>(load: Load<P>): ComponentType<P> & { ahead: () => Promise<void> } {
  let loaded: ComponentType<P> | null = null
  const fetchOnce = async () => {
    loaded ??= await load()
    return loaded
  }
  function Later(props: P) {
    const [state, setState] = useState<'opening' | 'slow' | 'failed' | 'loaded'>('opening')
    const again = useRef(() => {})
    useEffect(() => {
      // It may have come ahead of time, since it was drawn without.
      if (loaded) return setState('loaded')
      let left = false
      let wait = RETRY_MS
      let timer: ReturnType<typeof setTimeout> | undefined
      const tell = (now: typeof state) => {
        if (!left) setState(now)
      }
      const fetchIt = async () => {
        clearTimeout(timer)
        timer = setTimeout(tell, SLOW_MS, 'slow')
        try {
          await fetchOnce()
          clearTimeout(timer)
          tell('loaded')
        } catch {
          clearTimeout(timer)
          tell('failed')
          if (!left) timer = setTimeout(fetchIt, wait)
          wait = Math.min(2 * wait, LONGEST_RETRY_MS)
        }
      }
      again.current = () => void fetchIt()
      addEventListener('online', again.current)
      void fetchIt()
      return () => {
        left = true
        clearTimeout(timer)
        removeEventListener('online', again.current)
      }
    }, [])
    if (loaded) {
      const Loaded = loaded
      return <Loaded {...props} />
    }
    if (state !== 'failed')
      return (
        <p class="hint loading" role="status">
          {state === 'slow' ? 'Still opening: the network is slow or away.' : 'Opening…'}
        </p>
      )
    return (
      <p class="problem" role="status">
        This part of the app is not on the device yet. The network does not answer. It is tried again by
        itself; your trips are kept.{' '}
        <button type="button" class="quiet" onClick={() => again.current()}>
          Try now
        </button>{' '}
        <button type="button" class="quiet" onClick={() => location.reload()}>
          Reload the app
        </button>
      </p>
    )
  }
  return Object.assign(Later, {
    ahead: async () => {
      // Only a head start: a failure shows, and can be mended, when the part is opened.
      await fetchOnce().catch(() => undefined)
    },
  })
}
