// A part of the interface that is fetched when it is first needed. If that fails, as it may in an old tab after an
// update, it says so and can be tried again: what was typed is in the store and stays.

import type { ComponentType } from 'preact'
import { useEffect, useState } from 'preact/hooks'

type Load<P> = () => Promise<ComponentType<P>>

/** A component that loads its code on first use, or ahead of it with `ahead()`. */
export function later<P extends object>(load: Load<P>): ComponentType<P> & { ahead: () => void } {
  let loaded: ComponentType<P> | null = null
  const fetchOnce = async () => {
    loaded ??= await load()
    return loaded
  }
  function Later(props: P) {
    const [, redraw] = useState(0)
    const [failed, setFailed] = useState(false)
    const fetchIt = () => {
      setFailed(false)
      fetchOnce().then(
        () => redraw(n => n + 1),
        () => setFailed(true),
      )
    }
    useEffect(() => {
      if (!loaded) fetchIt()
    }, [])
    if (loaded) {
      const Loaded = loaded
      return <Loaded {...props} />
    }
    if (!failed) return <p class="hint loading">Opening…</p>
    return (
      <p class="problem">
        This part of the app could not be loaded. Your trips are kept.{' '}
        <button type="button" class="quiet" onClick={fetchIt}>
          Try again
        </button>{' '}
        <button type="button" class="quiet" onClick={() => location.reload()}>
          Reload the app
        </button>
      </p>
    )
  }
  return Object.assign(Later, {
    ahead: () => {
      // Only a head start: a failure shows, and can be mended, when the part is opened.
      fetchOnce().catch(() => undefined)
    },
  })
}
