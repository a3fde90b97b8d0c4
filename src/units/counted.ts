/** So many of something in words: `counted(1, 'night')` is "1 night", `counted(1200, 'entry', 'entries')` "1,200 entries". */
export const counted = (count: number, one: string, more = `${one}s`): string =>
  `${count.toLocaleString('en')} ${count === 1 ? one : more}`
