// A file among the reader's downloads.

/** `type`: of a text; JSON unless told otherwise. */
export function saveFile(name: string, contents: string | Blob, type = 'application/json'): void {
  const link = document.createElement('a')
  const blob = typeof contents === 'string' ? new Blob([contents], { type }) : contents
  link.href = URL.createObjectURL(blob)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

/** Words as part of a file's name: without what no file's name may hold. */
export const fileWords = (words: string): string => words.replace(/[^\p{L}\p{N} _-]/gu, '').trim()
