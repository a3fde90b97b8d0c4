// Sharing out in the worker: asked for with a tap, cancelled with another, and what came of it put into the trip as one step.

import { signal } from '@preact/signals'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { PartyPlan } from '../../plan'
import { withShared } from '../../plan'
import type { PartyReckoning } from '../../reckon'
import { actions, type OpenParty, openTrip } from '../../store'
import { runSharing } from '../../store/simulation'

/** What was asked and found last, until the app is closed. */
const last = signal<{ plan: string; shared: string; split: PartyReckoning['split'] } | null>(null)

const keyOf = (plan: PartyPlan) => JSON.stringify(plan)

/** What the search said of the choice that is there; null where the trip is another by now, or things are carried otherwise. */
export function proofOf({ plan }: OpenParty): PartyReckoning['split'] | null {
  const found = last.value
  if (!found || found.shared !== JSON.stringify(openTrip.value?.draft.shared)) return null
  return found.plan === keyOf(plan) ? found.split : null
}

export interface Sharing {
  isRunning: boolean
  /** Why nothing came of it, in words. */
  said: string
  start: (plan: PartyPlan) => void
  cancel: () => void
}

export function useSharing(): Sharing {
  const [state, setState] = useState<{ isRunning: boolean; said: string }>({ isRunning: false, said: '' })
  const running = useRef<AbortController | null>(null)
  useEffect(() => () => running.current?.abort(), [])

  async function start(plan: PartyPlan) {
    running.current?.abort()
    const own = new AbortController()
    running.current = own
    setState({ isRunning: true, said: '' })
    const trip = openTrip.peek()?.id
    const end = await runSharing({ plan, signal: own.signal })
    if (running.current !== own || openTrip.peek()?.id !== trip) return
    setState({ isRunning: false, said: end.ok ? '' : end.message })
    if (!end.ok) return
    last.value = { plan: keyOf(plan), shared: JSON.stringify(end.shared), split: end.split }
    actions.edit('Share out', draft => withShared(draft, end.shared))
  }

  return { ...state, start: plan => void start(plan), cancel: () => running.current?.abort() }
}
