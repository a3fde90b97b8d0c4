// What both ways of erasing say alike.

export const NOT_LOADED =
  'The part of the app that erases could not be loaded, so nothing is erased: go online once and try again.'
