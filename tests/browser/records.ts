// What the app stores for a trip, written by its own store.
import { entries } from 'idb-keyval'
import type { Draft } from '../../src/plan'
import { newDevice, startTab } from '../store/tab'
import type { Records } from './database'

/** The records of an app in which a trip is open at its need; `draftOf` is given what makes ids. */
export async function recordsOf(
  draftOf: (newId: () => string) => Draft,
  { demo = false } = {},
): Promise<Records> {
  let at = Date.now()
  const tab = await startTab(newDevice(), { now: () => ++at })
  tab.actions.createTrip(draftOf(tab.newId), { demo })
  tab.actions.setPlace({ screen: 'need', detail: null, scrollY: 0 })
  await tab.flush()
  tab.close()
  return entries<string, unknown>(tab.use)
}
