// How much of a pasted list is read at a time. Ours: far more than anybody carries, little enough for a slow phone.

export const LIST_CAPS = { lines: 2000, bytes: 200_000, lineLength: 1000 } as const

/** Where a line ends, in whatever program it was written. */
export const LINE_END = /\r\n|[\r\n\u0085\u2028\u2029]/
