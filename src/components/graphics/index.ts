// The load line and the cutaway, and plots of marks and edges between two measures.

export { Cutaway, type CutawayProps } from './cutaway'
export { LoadLine, type LoadLineProps } from './load-line'
export type { LoadFormat, LoadLimit, PictureStop } from './load-picture'
export { letters } from './mark-letters'
export { PictureTable } from './picture-table'
export type { Mark, MarkShape } from './plot-marks'
export { ReachPicture, type ReachRun } from './ReachPicture'
export { type Region, SpotPicture } from './SpotPicture'
export { px } from './scale'
export { useRoom } from './use-drawing'
export { placeWords } from './words'
