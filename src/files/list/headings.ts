// Which lines of a list name the group of what follows. "Shelter:" and "## Shelter" do; a line of words alone does where
// the list gives masses, it names a group as lists do, or begins a part of the list, and things with masses follow.

import { CAPS, cleanText } from '../../plan'
import { isNameOfKind, kindOf } from '../../plan/kinds'
import { isBulleted, withoutBullet } from './row'
import { isWornGroup } from './said'
import { tidy } from './tidy'

export interface Heading {
  group: string
  /** Whether it can hardly be a thing without a mass. */
  isSure: boolean
}

/** A line without what cannot be seen, which would part a number or steer the words around it; its tabs stay. */
export const seenOf = (line: string) => line.split('\t').map(cleanText).join('\t')

/** The headings among the lines of a list, by index. */
export function headingsIn(given: readonly string[]): Map<number, Heading> {
  const lines = given.map(line => seenOf(line).trim())
  const filled = lines.filter(line => /[\p{L}\p{N}]/u.test(line))
  const hasFigures = 3 * filled.filter(isFigured).length >= filled.length
  const isShouted = (line: string) => line === line.toUpperCase() && line !== line.toLowerCase()
  const isLoud = 2 * filled.filter(isShouted).length > filled.length
  const found = new Map<number, Heading>()
  lines.forEach((line, i) => {
    const marked = markedIn(line)
    if (marked !== null) {
      found.set(i, { group: named(marked), isSure: true })
      return
    }
    if (!hasFigures || !isAlone(line)) return
    const next = lines.slice(i + 1).find(Boolean)
    if (!next || !isFigured(next)) return
    const words = tidy(line.replace(/[\t;|,\s]+$/, ''))
    const begins = i === 0 || lines[i - 1] === ''
    if (isGroupName(words)) found.set(i, { group: named(words), isSure: !isNameOfKind(words) })
    else if (isShouted(line) && !isLoud) found.set(i, { group: named(words), isSure: true })
    else if (begins && kindOf({ name: words }) === null) found.set(i, { group: named(words), isSure: false })
  })
  return found
}

const named = (words: string) => tidy(words).slice(0, CAPS.nameLength)

const isFigured = (line: string) => /\p{N}/u.test(line)

/** "Shelter:" or "## Shelter", without its mark. */
function markedIn(line: string): string | null {
  const marks = /^#+/.exec(line)?.[0].length
  const words = marks === undefined ? withoutBullet(line) : line.slice(marks)
  if (!/\p{L}/u.test(words)) return null
  if (marks === undefined && (!words.endsWith(':') || /[\d\t;|]/.test(words))) return null
  return words
}

const MOST_WORDS = 5

/** Whether a line is a few words, with no figure, no second cell and no bullet. */
function isAlone(line: string): boolean {
  const words = line.replace(/[\t;|,\s]+$/, '')
  if (!/\p{L}/u.test(words) || /[\p{N}\t;|,]/u.test(words) || isBulleted(line)) return false
  return words.split(/\s+/).length <= MOST_WORDS
}

const GROUPS = new Set(
  `shelter sleep sleeping bed clothing clothes wear rainwear footwear shoes kitchen cooking cook cookware stove food eating
  meals snacks water hydration drinks electronics electrics tech technology power lighting navigation hygiene toiletries
  bathroom wash health medical safety emergency repair repairs tools misc miscellaneous other others extra extras essentials
  consumables packed packing carried carry backpack storage luxury luxuries accessories documents winter snow climbing
  camera photo fishing ditty worn`.split(/\s+/),
)
const GROUP_PAIRS =
  /^(?:first aid|small (?:things|items|stuff)|big (?:three|four|3|4)|personal (?:care|items)|odds and ends)$/
const BESIDE = new Set(
  'not gear system systems item items kit things stuff equipment layer layers set sets bag camp rain spare my the a and or in pack'.split(
    ' ',
  ),
)

/** Whether the words name a group as gear lists do: "Sleep system", "Kitchen & food", "Worn". */
function isGroupName(words: string): boolean {
  if (isWornGroup(words)) return true
  const lower = words.toLowerCase()
  if (GROUP_PAIRS.test(lower.replace(/ (?:kit|gear)$/, ''))) return true
  const parts = lower.split(/[^\p{L}]+/u).filter(Boolean)
  return parts.some(part => GROUPS.has(part)) && parts.every(part => GROUPS.has(part) || BESIDE.has(part))
}
