// Tracks from GPX files: read, measured, and proposed as the stops of a trip.
export {
  asChosen,
  type ChosenStop,
  dayHours,
  type KeptStop,
  keptStops,
  overLong,
  toDraftStops,
} from './add-to-plan'
export { type ImportOptions, importGpx } from './import'
export { hoursOf } from './legs'
export { GPX_CAPS } from './limits'
export { splitNote, trackNotes } from './notes'
export { DAY_HOURS, type Proposal, proposeStops, type SplitBy } from './split'
export type { GpxMeasured, MeasuredTrack, ProfilePoint } from './types'
