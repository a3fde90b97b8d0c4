// The two pictures: the load line and the cutaway.

export { Cutaway, type CutawayProps } from './cutaway'
export { LoadLine, type LoadLineProps } from './load-line'
export { PictureTable } from './picture-table'
export { px, roundStep } from './scale'
export type { LoadFormat, LoadLimit, PictureStop } from './shown'
export { useRoom } from './use-drawing'
export { placeWords } from './words'
