// Undo and redo of one trip as pure functions over its history: at most 50 steps, typing in one field joined to one.

import type { Draft, Typed } from '../plan'
import type { History, Step } from './documents'

export const MOST_STEPS = 50
/** Typing that goes on in the same field within this time is one step. */
const JOIN_MS = 2000

export interface Contents {
  draft: Draft
  typed: Typed
}

/** What an edit is called and when it happened; `path` when it typed in one field. */
export type EditNote = Pick<Step, 'label' | 'at' | 'path'>

/** The history after an edit that replaced `before`. What had been undone cannot be redone any more. */
export function recorded(history: History, before: Contents, note: EditNote): History {
  const last = history.past.at(-1)
  const joins =
    history.future.length === 0 &&
    last?.path !== undefined &&
    last.path === note.path &&
    note.at - last.at <= JOIN_MS
  const step = joins ? { ...last, at: note.at } : { ...note, draft: before.draft, typed: before.typed }
  const past = joins ? history.past.slice(0, -1) : history.past.slice(1 - MOST_STEPS)
  return { ...history, past: [...past, step], future: [] }
}

export interface Travelled {
  history: History
  contents: Contents
}

/** One step back; null at the oldest. */
export function undone(history: History, now: Contents): Travelled | null {
  const step = history.past.at(-1)
  if (!step) return null
  const past = history.past.slice(0, -1)
  return { history: { ...history, past, future: [...history.future, swap(step, now)] }, contents: step }
}

/** One undone step forth; null at the newest. */
export function redone(history: History, now: Contents): Travelled | null {
  const step = history.future.at(-1)
  if (!step) return null
  const future = history.future.slice(0, -1)
  return { history: { ...history, past: [...history.past, swap(step, now)], future }, contents: step }
}

// The time goes: typing after an undo or a redo never joins the step.
const swap = (step: Step, { draft, typed }: Contents): Step => ({ label: step.label, at: 0, draft, typed })
