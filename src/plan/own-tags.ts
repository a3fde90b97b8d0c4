// The words that the hiker finds packs by, as they are typed and as tables have them.

/** As many as a backup takes in. */
const MOST_TAGS = 30
const MOST_CHARS = 200

/** "winter, loan": what stands between commas, each once. */
export const tagsIn = (text: string): string[] =>
  [
    ...new Set(
      text
        .split(/[,;]/)
        .map(tag => tag.trim().slice(0, MOST_CHARS))
        .filter(Boolean),
    ),
  ].slice(0, MOST_TAGS)
