// Words that the screens about backups share.

/** A date that a file holds as YYYY-MM-DD. */
export function dayText(day: string): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  return day && new Date(year, month - 1, date).toLocaleDateString(undefined, { dateStyle: 'medium' })
}

export const sizeText = (bytes: number) =>
  bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1e6).toFixed(1)} MB`
