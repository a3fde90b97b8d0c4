// Formats from outside. The GPX reader is entered by its own folder and loaded when it is asked for; only its types
// pass here, so that the first load stays small.
export type { GpxMeasured, MeasuredTrack, ProfilePoint } from './gpx'
