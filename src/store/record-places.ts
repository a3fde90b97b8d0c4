// Where each kind of record is kept, and what can be said of it without reading it.

import type { Step } from './documents'

export interface RecordPlace {
  /** Of which there is one: damaged, it is set aside and written anew. */
  only?: true
  /** What it is, in words. */
  what: string
  /** Whether the second copy holds it; `saved`: once it was saved. */
  copied?: 'always' | 'saved'
  /** The trips that writing one says something of; what is erased for good is not written again. */
  tripsOf?: (record: object, id: string) => string[]
}

export type Area = 'trip' | 'library' | 'shelf' | 'step' | 'removed' | 'history' | 'parting'

/** By what its keys begin with, up to a "/" where there may be many. */
export const PLACES: Readonly<Record<Area, RecordPlace>> = {
  trip: {
    what: 'A saved trip',
    copied: 'always',
    tripsOf: (_, id) => [id],
  },
  library: {
    only: true,
    what: 'The list of trips and settings',
    copied: 'always',
  },
  shelf: {
    only: true,
    what: 'The shelf',
    copied: 'saved',
  },
  step: {
    what: 'An undo step',
    tripsOf: step => (step as Step).parts.flatMap(part => (part.on === 'shelf' ? [] : part.id)),
  },
  removed: {
    what: 'A removed trip',
    tripsOf: (_, id) => [id],
  },
  history: {
    what: 'The undo history of a trip',
  },
  parting: {
    what: 'What was typed last before the page went away',
  },
}

const AREAS = Object.keys(PLACES) as Area[]

/** The area of a key; null for notes, which are no documents. */
export const areaOf = (key: string): Area | null =>
  AREAS.find(area => (PLACES[area].only ? key === area : key.startsWith(`${area}/`))) ?? null

/** What is kept under a key, in words. */
export function whatAt(key: string): string | null {
  const area = areaOf(key)
  return area && PLACES[area].what
}

const inArea = (area: Area) => (id: string) => `${area}/${id}`

export const LIBRARY_KEY: Area = 'library'
export const SHELF_KEY: Area = 'shelf'
export const tripKey = inArea('trip')
export const stepKey = inArea('step')
export const removedKey = inArea('removed')
export const unsavedKey = inArea('parting')
export const historyKey = inArea('history')
/** The revision of the stored shelf once more, so that thousands of things need not be read before each save. */
export const SHELF_REVISION_KEY = 'shelf-revision'
/** Where a damaged record of which there can be but one is set aside, so that a new one can take its place. */
export const asideKey = (key: string, id: string) => `damaged/${key}/${id}`
/** Stands in for a removed trip until the second copy has let go of it too: its revision. */
export const goneKey = (id: string) => `gone/${id}`

export const isTripKey = (key: string) => areaOf(key) === 'trip'
/** Of a key of which there may be many. */
export const idOf = (key: string) => key.slice(key.indexOf('/') + 1)
