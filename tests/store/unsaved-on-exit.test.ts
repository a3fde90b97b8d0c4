// What is put aside of the shelf when the page goes away, and joined at the next start to whatever is stored by then.

import { describe, expect, test } from 'vitest'
import { mergeShelves, type Shelf, setThing } from '../../src/plan/shelf'
import { SHELF_KEY } from '../../src/store/record-places'
import { unsavedOf } from '../../src/store/unsaved-on-exit'

import { counter } from '../plan/drafts'
import { shelfOf, thing } from '../plan/shelf/shelves'

interface Leaving {
  known: Shelf
  /** What a save under way may have written yet. */
  sent?: Shelf
  now: Shelf
}

function unsavedShelf({ known, sent, now }: Leaving) {
  const change = { key: SHELF_KEY, known: { value: known, revision: 1 } }
  const shelf = unsavedOf([{ ...change, value: now }], sent ? [{ ...change, value: sent }] : [])?.shelf
  if (!shelf) throw new Error('nothing of the shelf was put aside')
  return shelf
}

/** The things after the next start, as the database then holds the shelf. */
function joined(leaving: Leaving, stored: Shelf) {
  const { before, after } = unsavedShelf(leaving)
  const base = before.find(({ changedAt }) => changedAt === stored.changedAt) ?? before[0]!
  return mergeShelves({ base, ours: after, theirs: stored }, counter('new')).shelf.things
}
const ids = (things: Shelf['things']) => things.map(({ id }) => id)

const [tent, stove, mat] = [thing('tent'), thing('stove'), thing('mat')]
const known = { ...shelfOf(tent, stove, mat), changedAt: 1 }

describe('what a page leaves unsaved of the shelf', () => {
  test('a thing removed and brought back while the removal was being saved is there, saved or not', () => {
    const sent = { ...known, changedAt: 2, things: [stove, mat] }
    const now = { ...known, changedAt: 3 }
    expect(ids(joined({ known, sent, now }, sent)).sort()).toEqual(['mat', 'stove', 'tent'])
    expect(ids(joined({ known, sent, now }, known))).toEqual(['tent', 'stove', 'mat'])
  })

  test('and changed elsewhere since is changed, and there once', () => {
    const sent = { ...known, changedAt: 2, things: [stove, mat] }
    const elsewhere = { ...setThing(known, 'tent', { note: 'mended' }, 9), changedAt: 9 }
    const things = joined({ known, sent, now: { ...known, changedAt: 3 } }, elsewhere)
    expect(things).toEqual(elsewhere.things)
  })

  test('a new thing stands where it was put: last, first or between', () => {
    for (const at of [0, 1, 2, 3]) {
      const now = { ...known, changedAt: 3, things: known.things.toSpliced(at, 0, thing('pot')) }
      expect(ids(joined({ known, now }, known))).toEqual(ids(now.things))
    }
  })

  test('and nothing else than that and its neighbour is put aside', () => {
    const now = { ...known, changedAt: 3, things: [...known.things, thing('pot')] }
    const { before, after } = unsavedShelf({ known, now })
    expect(before.map(({ things }) => ids(things))).toEqual([['mat']])
    expect(ids(after.things)).toEqual(['mat', 'pot'])
  })
})
