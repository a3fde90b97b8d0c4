// Tracks from GPX files: read, measured, and proposed as the stops of a trip.
export { asChosen, type ChosenStop, type KeptStop, keptStops, overLong, toDraftStops } from './adopt'
export { type ImportOptions, importGpx } from './import'
export { measureGpx } from './job'
export { hoursOf, type TrackLeg } from './legs'
export { GPX_CAPS } from './limits'
export { splitNote, trackNotes } from './notes'
export { type Proposal, type ProposedStop, proposeStops, SPLIT_LIMITS, type SplitBy } from './split'
export type { GpxMeasured, MeasuredTrack, ProfilePoint } from './types'
