// What each thing costs, reckoned a few at a time once the typing has stopped.

import { useEffect, useState } from 'preact/hooks'
import type { Cost } from '../../report'
import { effectSteps, reckoned } from '../../store'

/** After the last change of the trip, ms. */
const QUIET_MS = 300
/** The page answers after each stretch of this, ms. */
const STRETCH_MS = 8
/** Each thing is a reckoning: longer lists would keep a phone busy for seconds after every change. */
export const MOST_COSTS = 400

export type Costs = ReadonlyMap<string, Cost>

/** By the id of the thing; those of before stay until all are there anew. Null while none are known. */
export function useCosts(isWanted: boolean): Costs | null {
  const open = reckoned.value
  const listed = open?.listed
  const [costs, setCosts] = useState<Costs | null>(null)
  const isOn = isWanted && (listed?.gear.length ?? 0) <= MOST_COSTS
  useEffect(() => {
    if (!isOn || !listed) return
    const steps = effectSteps()
    const found = new Map<string, Cost>()
    const stretch = () => {
      const until = performance.now() + STRETCH_MS
      while (performance.now() < until) {
        const { value, done } = steps.next()
        if (done) return setCosts(found)
        found.set(value.id, { effect: value, item: listed.gear[found.size]! })
      }
      timer = setTimeout(stretch)
    }
    let timer = setTimeout(stretch, costs ? QUIET_MS : 0)
    return () => clearTimeout(timer)
  }, [listed, isOn])
  return isOn ? costs : null
}
