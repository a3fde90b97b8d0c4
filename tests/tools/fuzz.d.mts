export function triesIn(text: string): number | null
