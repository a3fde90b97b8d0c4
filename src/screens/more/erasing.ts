// What both ways of erasing say alike.

export const NOT_LOADED =
  'Nothing is erased: that part of the app could not be loaded. Go online once and try again.'
