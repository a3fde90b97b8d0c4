// Where the app puts things outside its database, by their names in the browser: all of it is emptied when everything is
// erased.

/** Folders of the origin's private file system, or caches in their place. */
export const COPY_FOLDER = 'pack-reckoner-copy'
export const SNAPSHOT_FOLDER = 'pack-reckoner-snapshots'

/** The cache in which the service worker puts what another app shares; its own code names it too (vite.config.ts). */
export const RECEIVED_CACHE = 'pack-reckoner-received'

/** In the storage of one tab's session: text typed beside a trip, by the trip's id and a name. */
export const BESIDE = 'pack-reckoner/beside/'
