/** A moment, in ms since 1970, as the device writes a date and a time. */
export const momentText = (ms: number): string =>
  new Date(ms).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })
