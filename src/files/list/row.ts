// One line of a list without named columns: its name, mass, litres and number of pieces, wherever they stand.

import type { System } from '../../units'
import { amountsIn, cellKind, takeCount } from './amounts'
import { cellsOf, separatorOf } from './cells'

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
  notes: string[]
}

export type Split = Parts | { why: string }

const BULLET = /^\s*(?:[-–—*•·‣◦▪●○☐☑✓✔]|\[[ x]?\]|\d{1,4}[.)])\s+/iu

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
  const words: string[] = []
  for (const cell of cells) {
    if (cell.kind === 'words') words.push(cell.text)
    else if (cell.kind === 'bare') bare.push(cell.text)
    else if (cell.kind === 'count') parts.count = cell.count
    else if (cell.kind === 'mass') {
      if (parts.mass !== undefined) return { why: `two masses, ${parts.mass} and ${cell.text}: leave one` }
      parts.mass = cell.text
    } else if (parts.litres !== undefined)
      return { why: `two volumes, ${parts.litres} and ${cell.text}: leave one` }
    else parts.litres = cell.text
  }
  const names = words.map(text => fromWords(text, parts))
  if (parts.mass === undefined && bare.length === 1) parts.mass = bare.pop()!
  if (bare.length > 0) return { why: bareWhy(bare) }
  parts.name = names.filter(Boolean).join(', ')
  if (parts.mass === undefined) trailingNumber(parts)
  return parts
}

function bareWhy(bare: string[]): string {
  const [first = ''] = bare
  const which = bare.length > 1 ? `${bare.join(' and ')} have` : `"${first}" has`
  return `${which} no unit: write ${first} g, ${first} L or ${first} x, or name the columns in a first line`
}

/** Takes count and mass out of words, and litres only where they follow the mass: "Pot 0.8 L 130 g" is a pot of 0.8 L. */
function fromWords(text: string, parts: Parts): string {
  let name = text
  const counted = parts.count === undefined ? takeCount(name) : null
  if (counted) {
    parts.count = counted.count
    name = counted.rest
  }
  if (parts.mass !== undefined) return tidy(name)
  const found = amountsIn(name)
  const mass = found.findLast(({ kind }) => kind === 'mass')
  if (!mass) {
    const volume = found.at(-1)
    if (volume && parts.litres === undefined)
      parts.notes.push(
        `${volume.text} is kept in the name: write it after the mass to make it the packed volume.`,
      )
    return tidy(name)
  }
  parts.mass = mass.text
  parts.ofAll = mass.ofAll
  const volume =
    parts.litres === undefined ? found.find(({ kind, at }) => kind === 'volume' && at >= mass.end) : undefined
  if (volume) {
    parts.litres = volume.text
    name = `${name.slice(0, volume.at)} ${name.slice(volume.end)}`
  }
  const before = /(\d)\s$/.exec(name.slice(0, mass.at))
  if (before && /^\d{3}\D/.test(mass.text))
    parts.notes.push(
      `Read as ${mass.text}: write the number without a space if the digits before belong to it.`,
    )
  return tidy(`${name.slice(0, mass.at)} ${name.slice(mass.end)}`)
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

const LEFT_OVER = /[\s\-–—:=~≈@,;/|…]/

/** A name without what the amounts leave behind: empty brackets, dashes and marks at its ends, double spaces. */
export function tidy(name: string): string {
  const single = name
    .replace(/\s+/g, ' ')
    .replace(/\( ?\)|\[ ?\]/g, ' ')
    .replace(/ +/g, ' ')
  let from = 0
  let to = single.length
  while (from < to && (single[from] === '.' || LEFT_OVER.test(single[from]!))) from++
  while (to > from && LEFT_OVER.test(single[to - 1]!)) to--
  return single.slice(from, to).replace(/(?<=\p{L}{2})\.$/u, '')
}
