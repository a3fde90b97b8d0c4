// The packs of a draft as a plan document has them, each made once and kept as long as the draft's pack is the same.

import { withoutOwnFacts } from './app-fields'
import { type Branch, copied, entries, PART_DEPTH } from './copies'
import { packName, setupName } from './names'

export interface PackPart {
  /** Never to be changed. */
  part: Branch
  /** The ids under which the app knows it and its set-ups. */
  ids: [Branch, string][]
  /** Some of its set-ups could not be read. */
  isPartly: boolean
}

const known = new WeakMap<object, PackPart & { index: number | null }>()

/** The pack at an index of the draft's list: named, and without what only the app knows. */
export function packPart(pack: Branch, index: number): PackPart {
  const before = known.get(pack)
  if (before && (before.index === null || before.index === index)) return before
  const made = { ...freshPack(pack, index), index: pack.name ? null : index }
  known.set(pack, made)
  return made
}

function freshPack(pack: Branch, index: number): PackPart {
  const ids: PackPart['ids'] = []
  const withoutId = ({ id, ...part }: Branch): Branch => {
    if (typeof id === 'string') ids.push([part, id])
    return part
  }
  const part = withoutId(copied(withoutOwnFacts(pack), PART_DEPTH) as Branch)
  const setups = entries(part.setups).map(withoutId)
  const given = part.setups
  part.name = packName(part, index)
  part.setups = setups
  setups.forEach((setup, j) => {
    setup.name = setups.length > 1 ? setupName(setup, j) : setup.name || 'As it is'
  })
  const isPartly = given !== undefined && setups.length !== (Array.isArray(given) ? given.length : -1)
  return { part, ids, isPartly }
}
