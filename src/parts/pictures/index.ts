// The two pictures: the load line and the cutaway.

export { Cutaway, type CutawayProps } from './cutaway'
export { LoadLine, type LoadLineProps } from './load-line'
export type { LoadFormat, LoadLimit, PictureStop } from './shown'
export { placeWords } from './words'
