// What marks a plan file. Apart from the schema, so that the app's first page does not bring that along.

export const PLAN_FORMAT = 'pack-reckoner/plan'
export const PLAN_VERSION = 1

/** How the app keeps a trip: a plan while it is being typed. */
export const TRIP_FORMAT = 'pack-reckoner/trip'
export const TRIP_VERSION = 5
