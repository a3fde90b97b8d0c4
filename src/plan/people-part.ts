// Several people in a document that is made of a draft: their ids, and their packs by place.

import type { Takes } from './app-fields'
import { isTakes } from './check-own-facts'
import { type Branch, entries, isBranch } from './copies'
import type { Work } from './repair'

interface Beside {
  all: readonly Branch[]
  /** The trip's pack, which is the first person's. */
  takes: unknown
  /** What another tab may have typed of the lone hiker meanwhile: it is the first person's. */
  carrier: unknown
}

/** A person as a document has them, and the pack they take. */
export function peoplePart(
  { takes, pack: _pack, ...person }: Branch,
  at: number,
  beside: Beside,
): { id: string; person: Branch; takes: Takes | null } {
  const before = beside.all.slice(0, at).map(({ id }) => id)
  const isOwn = typeof person.id === 'string' && person.id !== '' && !before.includes(person.id)
  const id = isOwn ? (person.id as string) : `person ${at + 1}`
  const of = at === 0 && isBranch(beside.carrier) ? beside.carrier : {}
  const pack = at === 0 ? beside.takes : takes
  return { id, person: { ...of, ...person, id }, takes: isTakes(pack) ? pack : null }
}

/** Names each one's pack by its place among the packs that are left, or none. */
export function placePacks({ document, ids, taken }: Work): void {
  entries(document.people).forEach((person, who) => {
    delete person.pack
    const takes = taken[who]
    if (!takes) return
    const pack = document.packs.findIndex(each => ids.get(each) === takes.pack)
    const setups = entries(document.packs[pack]?.setups)
    // A set-up that is gone leaves the pack as it is sold.
    const setup = Math.max(
      0,
      setups.findIndex(each => ids.get(each) === takes.setup),
    )
    if (setups.length > 0) person.pack = { pack, setup }
  })
}
