// The masses of one line as one, where they say the same: in two units, or as that of each and of all. Else it is a doubt.

import { parseQuantity, type System } from '../../units'
import type { Fix } from './types'

export interface Mass {
  text: string
  /** Whether it is that of all pieces together. */
  ofAll: boolean
}

interface Line {
  count: number | string | undefined
  system: System
  line: string
}

/** The mass of a line; null where it has none, and why not where it has several that differ. */
export function oneMass(
  masses: readonly Mass[],
  { count, system, line }: Line,
): Mass | { why: string; fixes: Fix[] } | null {
  const [first, second] = masses
  if (!first || !second) return first ?? null
  const [a, b, ...more] = masses.map(({ text }) => kgOf(text, system))
  if (more.length === 0 && a && b) {
    // "10 oz (283 g)": each is rounded in its own unit.
    if (unitOf(first.text) !== unitOf(second.text) && isNear(a, b, ROUNDED)) return first
    if (Number(count) > 1 && isNear(a * Number(count), b, EXACT)) return first
    if (Number(count) > 1 && isNear(b * Number(count), a, EXACT)) return second
  }
  const listed = `${first.text} and ${second.text}`
  if (more.length > 0) return { why: `${masses.length} masses, ${listed} among them: leave one`, fixes: [] }
  const fix = (kept: Mass, gone: Mass): Fix => ({
    label: `Keep ${kept.text}`,
    text: without(line, gone.text),
  })
  return { why: `two masses, ${listed}: leave one`, fixes: [fix(first, second), fix(second, first)] }
}

/** Judgements of ours: a mass rounded to whole ounces or tenths of a kilogram is off by as much. */
const ROUNDED = 0.04
const EXACT = 0.01

const isNear = (a: number, b: number, share: number) => Math.abs(a - b) <= share * Math.max(a, b)
const unitOf = (text: string) => text.replace(/[^\p{L}]/gu, '').toLowerCase()

function kgOf(text: string, system: System): number | null {
  const read = parseQuantity('mass', text.replace(/^[~≈]\s?/, ''), { system })
  return read.ok ? read.value : null
}

/** The line without its last such text, and without the empty brackets it leaves. */
function without(line: string, text: string): string {
  const at = line.lastIndexOf(text)
  return `${line.slice(0, at)}${line.slice(at + text.length)}`
    .replace(/[([]\s*[)\]]/, '')
    .replace(/\s+(?=[\s)\],;])|\s*[,;/|]\s*$/g, '')
    .trim()
}
