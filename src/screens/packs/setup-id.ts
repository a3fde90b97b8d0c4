// The element of a set-up's verdict, so that another can lead to it.

/** `setupIndex` as in `reckoning.packs`. */
export const setupDomId = (setupIndex: number) => `setup-${setupIndex}`
