export { letters } from './letters'
export type { Mark, MarkShape } from './marks'
export { ReachPicture, type ReachRun } from './ReachPicture'
export { type Region, SpotPicture } from './SpotPicture'
