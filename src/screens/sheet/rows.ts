// A long sheet is drawn in steps, between which the page answers: first the head of every table, then more of each.

import { useEffect, useState } from 'preact/hooks'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'

/** Of every table so many rows are drawn at once. */
const FIRST = 100
/** Each step goes over the whole once more: few steps, that grow. */
const GROWTH = 1.5
/** At most so many more at once. */
const MOST_MORE = 500

/** So many rows of a place are laid out on the screen; the others on paper alone. */
export const IN_SIGHT = 300

/** How many rows of each table are drawn so far, and whether that is all of every table. */
export function useRows(plan: Plan, reckoning: Reckoning): { rows: number; isWhole: boolean } {
  const most = Math.max(reckoning.days.length, reckoning.carries.length, plan.gear.length)
  const [rows, setRows] = useState(FIRST)
  const isWhole = rows >= most
  useEffect(() => {
    if (isWhole) return
    const timer = setTimeout(() => setRows(Math.min(Math.ceil(rows * GROWTH), rows + MOST_MORE)), 0)
    return () => clearTimeout(timer)
  }, [rows, isWhole])
  return { rows, isWhole }
}
