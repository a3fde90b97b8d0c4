// Brings back from the second copy what the database has lost, and says so in words. Nothing that is here is replaced
// without a way back: an older state becomes an undo step, and where both may be wanted both are kept.

import { batch } from '@preact/signals'
import { copyName } from '../../plan'
import { emptyShelf, mergeShelves, SHELF_LISTS, same } from '../../plan/shelf'
import { emptyLibrary, type TripDocument } from '../documents'
import { partsBetween, shelfContentsOf, stepOf, touched } from '../journal'
import { merged, placeAfter } from '../library'
import { idOf, SHELF_KEY, tripKey } from '../record-places'

import type { CopyEnvironment } from './environment'
import type { Loss } from './losses'

type LostTrip = Exclude<Loss, { how: 'library' | 'shelf' }>
type LostShelf = Extract<Loss, { how: 'shelf' }>

export const GONE_TEXT =
  'The browser found its storage damaged and started it anew: trips saved here before are gone, and there is no second copy. Open them from plan files.'

export const LOST_TEXT =
  'The browser found its storage damaged and started it anew: trips saved here before are not in it any more, and the second copy cannot be read now. It is tried again after the next save.'

/** `replaced` takes the keys of damaged records whose copies have become other trips: from key, to key. */
export function restore(env: CopyEnvironment, losses: Loss[], replaced: Map<string, string>) {
  const { state } = env
  const restored: Record<'back' | 'newest' | 'beside' | 'no', string[]> = {
    back: [],
    newest: [],
    beside: [],
    no: [],
  }
  batch(() => {
    for (const loss of losses) {
      if (loss.how === 'library') continue
      if (loss.how === 'shelf') {
        state.tell(restoreShelf(env, loss))
        continue
      }
      const [group, name] = restoreTrip(env, loss, replaced)
      restored[group].push(`“${name}”`)
    }
    for (const loss of losses) {
      if (loss.how !== 'library') continue
      const ours = state.library.peek()
      // Where the list was damaged, the order is nobody's: that of the copy counts.
      const order = env.records.hooks.listDamaged ? ours.order : []
      const base = { ...emptyLibrary(), place: ours.place, order }
      state.tidy(merged(base, ours, loss.copy))
    }
  })
  const said = (names: string[], words: string) => {
    // By a function: a "$" in a name is no sign of a pattern.
    if (names.length > 0) state.tell(words.replace('…', () => listed(names)))
  }
  said(
    restored.back,
    'The browser had lost … from its storage: back from the second copy, without undo steps.',
  )
  said(
    restored.newest,
    'The browser had kept only an older state of …: the newest is back from the second copy, and Undo shows the older one.',
  )
  said(
    restored.beside,
    'What the browser had stored of … differs from the second copy: the copy is listed beside it.',
  )
  said(
    restored.no,
    'The browser has lost …, and the second copy of it is damaged too. Open it from a plan file.',
  )
}

function restoreTrip(
  env: CopyEnvironment,
  { how, key, copy }: LostTrip,
  replaced: Map<string, string>,
): ['back' | 'newest' | 'beside' | 'no', string] {
  const { state, records, now, newId } = env
  const here = state.trips.peek().get(idOf(key))
  const name = (copy ?? here)?.draft.name || 'a trip without a name'
  if (!copy) return ['no', name]
  if (how === 'missing') {
    state.putTrip(copy)
    return ['back', name]
  }
  const isUntouched = here !== undefined && here === records.known.get(key)?.value
  if (how === 'older' && isUntouched) {
    asStep(env, () => state.putTrip(touched(copy, now())))
    return ['newest', name]
  }
  const beside: TripDocument = {
    ...copy,
    id: newId(),
    revision: 0,
    draft: { ...copy.draft, name: copyName({ name }, 'second copy').name! },
  }
  state.putTrip(beside, placeAfter(state.library.peek(), idOf(key)))
  replaced.set(key, tripKey(beside.id))
  return ['beside', name]
}

function restoreShelf(env: CopyEnvironment, { was, copy }: LostShelf): string {
  const { state, records, now, newId } = env
  if (!copy)
    return 'The browser has lost your shelf, and the second copy of it is damaged too. Bring it back from a backup file.'
  const here = state.shelf.peek()
  const isSame = same(shelfContentsOf(here), shelfContentsOf(copy))
  if (was === 'older' && !isSame && here === records.known.get(SHELF_KEY)?.value) {
    asStep(env, () => {
      state.shelf.value = touched(copy, now())
    })
    return 'The browser had kept only an older state of your shelf: the newest is back from the second copy, and Undo shows the older one.'
  }
  const isEmpty = SHELF_LISTS.every(list => here[list].length === 0)
  const { shelf, twice } = mergeShelves({ base: emptyShelf(), ours: here, theirs: copy }, newId)
  asStep(env, () => {
    state.shelf.value = touched(shelf, now())
  })
  if (isEmpty || isSame)
    return 'The browser had lost your shelf from its storage: it is back from the second copy.'
  const said = twice.length > 0 ? ' What differs is there twice.' : ''
  return `What the browser had stored of your shelf differs from the second copy: both are joined.${said}`
}

/** Makes a change that undo can take back. */
function asStep({ state, now, newId }: CopyEnvironment, change: () => void) {
  const before = state.world()
  change()
  const parts = partsBetween(before, state.world())
  if (parts.length === 0) return
  const label = 'Newest state from the second copy'
  state.record(stepOf(state.journal.peek(), { id: newId(), label, parts, now: now() }))
}

/** The first names, and how many more. */
function listed(names: string[]): string {
  if (names.length <= 3) return names.join(', ')
  return `${names.slice(0, 2).join(', ')} and ${names.length - 2} other trips`
}
