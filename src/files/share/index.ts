// A plan as a link, and back. Loaded when somebody shares or opens one.
export { asSharedOut, withoutBodies, withoutNames } from './carrier'
export { canDeflate, deflate, inflate } from './deflate'
export { SHARE_CAPS } from './limits'
export { packsLink, type SharedLink, shareLink } from './link'
export { type ReadLink, readLink, readPacksLink } from './read'
