// Formats from outside. GPX and shared links are entered by their own folders and loaded when asked for; only types
// pass here, so that the first load stays small.
export type { GpxMeasured, MeasuredTrack, ProfilePoint } from './gpx'
export type { ReadLink, SharedLink } from './share'
