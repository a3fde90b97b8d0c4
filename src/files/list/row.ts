// One line of a list without named columns: its name, mass, litres and number of pieces, wherever they stand.

import type { System } from '../../units'
import { listText } from '../../units'
import { amountsIn, cellKind, takeCount } from './amounts'
import { cellsOf, separatorOf } from './cells'
import { type Mass, oneMass } from './masses'
import { tidy } from './tidy'
import type { Fix } from './types'

/** The parts of a row as texts, before they are read as amounts. */
export interface Parts {
  name: string
  mass?: string
  /** Whether the mass is that of all pieces together. */
  ofAll?: boolean
  litres?: string
  count?: number | string
  group?: string
  /** Whether the mass is the last number of the words, without a unit. */
  isBare?: true
  /** Whether named columns say what each part is. */
  isNamed?: true
  /** A volume that stays in the name, since it may be what the thing holds. */
  inName?: string
  notes: string[]
}

export type Split = Parts | { why: string; fixes?: Fix[] }

const BULLET = /^\s*(?:[-–—*•·‣◦▪●○☐☑✓✔]|\[[ x]?\]|\d{1,4}[.)])\s+/iu

/** Whether a line begins with a bullet or its number. */
export const isBulleted = (line: string): boolean => BULLET.test(line)

/** A line without its bullet or number, also where it has several: "- [x] ". */
export function withoutBullet(line: string): string {
  let rest = line
  for (let bullet = BULLET.exec(rest); bullet; bullet = BULLET.exec(rest)) rest = rest.slice(bullet[0].length)
  return rest.trim()
}

/** Parts a line into name and amounts. Amounts in cells of their own count before those within words. */
export function splitRow(line: string, system: System): Split {
  const texts = cellsOf(line, separatorOf(line), { decimalCommas: true }).filter(Boolean)
  const cells = texts.map(text => cellKind(text, system))
  const parts: Parts = { name: '', notes: [] }
  const bare: string[] = []
  for (const cell of cells) {
    if (cell.kind === 'bare') bare.push(cell.text)
    else if (cell.kind === 'count') parts.count = cell.count
    else if (cell.kind === 'volume' && parts.litres !== undefined)
      return { why: `two volumes, ${parts.litres} and ${cell.text}: leave one` }
    else if (cell.kind === 'volume') parts.litres = cell.text
  }
  const masses: Mass[] = []
  const names = cells.flatMap(cell => {
    if (cell.kind === 'mass') masses.push({ text: cell.text, ofAll: false })
    return cell.kind === 'words' ? [fromWords(cell.text, parts, masses)] : []
  })
  const mass = oneMass(masses, { count: parts.count, system, line })
  if (mass && 'why' in mass) return mass
  if (mass) {
    parts.mass = mass.text
    if (mass.ofAll) parts.ofAll = true
  }
  if (parts.mass === undefined && bare.length === 1) parts.mass = bare.pop()!
  if (bare.length > 0) return { why: bareWhy(bare) }
  parts.name = names.filter(Boolean).join(', ')
  if (parts.mass === undefined) trailingNumber(parts)
  return parts
}

function bareWhy(bare: string[]): string {
  const [first = ''] = bare
  const which = bare.length > 1 ? `${listText(bare)} have` : `"${first}" has`
  return `${which} no unit: write ${first} g, ${first} L or ${first} x, or name the columns in a first line`
}

/** Takes count and masses out of words, and litres only where they follow the mass: "Pot 0.8 L 130 g" is a pot of 0.8 L. */
function fromWords(text: string, parts: Parts, masses: Mass[]): string {
  let name = text
  const counted = parts.count === undefined ? takeCount(name) : null
  if (counted) {
    parts.count = counted.count
    name = counted.rest
    if (counted.doubt) parts.notes.push(counted.doubt)
  }
  const found = amountsIn(name)
  const here = found.filter(({ kind }) => kind === 'mass')
  const last = here.at(-1)
  if (!last) {
    const volume = found.at(-1)
    if (volume) parts.inName = volume.text
    return tidy(name)
  }
  masses.push(...here.map(({ text, ofAll }) => ({ text, ofAll })))
  const volume =
    parts.litres === undefined ? found.find(({ kind, at }) => kind === 'volume' && at >= last.end) : undefined
  if (volume) parts.litres = volume.text
  const before = /(\d)\s$/.exec(name.slice(0, last.at))
  if (before && /^\d{3}\D/.test(last.text))
    parts.notes.push(
      `Read as ${last.text}: write the number without a space if the digits before belong to it.`,
    )
  for (const { at, end } of [...here, ...(volume ? [volume] : [])].sort((a, b) => b.at - a.at))
    name = `${name.slice(0, at)} ${name.slice(end)}`
  return tidy(name)
}

/** "Rain jacket 300": a last number of 10 or more, or with decimals, is a mass; a small one, as in "Tent 2", a name's. */
function trailingNumber(parts: Parts) {
  const number = /(?<=\s)\d+(?:[.,]\d+)?$/.exec(parts.name)?.[0]
  if (number === undefined || !(Number(number) >= 10 || /[.,]/.test(number))) return
  const name = parts.name.slice(0, -number.length)
  if (!/\p{L}/u.test(name)) return
  parts.name = tidy(name)
  parts.mass = number
  parts.isBare = true
}
