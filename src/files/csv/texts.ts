// A cell's words as they are kept and written: cleaned of what could steer the line they stand in.

import { cleanText } from '../../plan'
import { unguarded } from './formula'

// Half of a character that takes two: no text, and lost by most of what handles text.
const HALVES = /\p{Cs}/gu

/** Words in one line; what is clean already stays as it is. */
export const cleanLine = (text: string): string =>
  cleanText(text.replace(HALVES, '\ufffd').replace(/\s+/g, ' ')).replace(/ +/g, ' ').trim()

/** Words of several lines, as a note has them. */
export const cleanLines = (text: string): string =>
  text
    .split(/\r\n|[\r\n]/)
    .map(cleanLine)
    .join('\n')
    .trim()

/** The words of a cell that may be guarded against being taken for a formula. */
export const lineOf = (cell: string): string => cleanLine(unguarded(cell.trim()))
export const linesOf = (cell: string): string => cleanLines(unguarded(cell.trim()))

/** The first characters of a text, none of them halved. */
export const startOf = (text: string, length: number): string =>
  text.slice(0, length).replace(/[\ud800-\udbff]$/, '')
