// What marks a plan file. Apart from the schema, so that the app's first page does not bring that along.

export const PLAN_FORMAT = 'pack-reckoner/plan'
export const PLAN_VERSION = 1
