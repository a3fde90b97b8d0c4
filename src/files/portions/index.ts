// Long work that does not hold up the page; apart from the formats, which need it too.

export { beginInPortions, fileOf, inOneGo, inPortions, type Steps } from './in-portions'
