// Dates as the device writes them; moments are in ms since 1970.

/** A date and a time. */
export const momentText = (ms: number): string =>
  new Date(ms).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })

export const dateText = (ms: number): string =>
  new Date(ms).toLocaleDateString(undefined, { dateStyle: 'medium' })

/** A day that a document holds as YYYY-MM-DD; the text itself where it is none. */
export function dayText(day: string): string {
  const noon = new Date(`${day}T12:00:00`).getTime()
  return Number.isNaN(noon) ? day : dateText(noon)
}
