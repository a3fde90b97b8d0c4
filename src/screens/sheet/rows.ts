// A long sheet is drawn in steps, between which the page answers: first the head of every table, then more of each.

import { useEffect, useState } from 'preact/hooks'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'

/** Of every table so many rows are drawn at once. */
const FIRST = 100
/** Each step lays the whole out anew: few steps, that grow. */
const GROWTH = 1.5

/** How many rows of each table are drawn so far, and whether that is all of every table. */
export function useRows(plan: Plan, reckoning: Reckoning): { rows: number; isWhole: boolean } {
  const most = Math.max(reckoning.days.length, reckoning.carries.length, plan.gear.length)
  const [rows, setRows] = useState(FIRST)
  const isWhole = rows >= most
  useEffect(() => {
    if (isWhole) return
    const timer = setTimeout(() => setRows(Math.ceil(rows * GROWTH)), 0)
    return () => clearTimeout(timer)
  }, [rows, isWhole])
  return { rows, isWhole }
}
