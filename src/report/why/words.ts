// Figures of the explanations in words: units, ranges, and the standing of a source.
// Rates of power and strength are shown as their equations take them, in W, m/s and %, in both systems of units.

import type { Limit } from '../../equations'
import { fieldPath, isWithin } from '../../plan'
import { capital, formatQuantity, type System } from '../../units'
import type { WhyBound, WhyContext } from './types'

export const kcalText = (kcal: number) => `${formatQuantity('number', kcal, plain(0))} kcal`
/** A day's energy is known to 20 %: more than two or three figures would pretend. */
export const kcalRoughText = (kcal: number) => kcalText(Math.round(kcal / 50) * 50)
export const kcalRangeText = (low: number, high: number) => {
  const [from, to] = [low, high].map(kcal => Math.round(kcal / 50) * 50) as [number, number]
  return from === to ? kcalText(from) : `${formatQuantity('number', from, plain(0))} to ${kcalText(to)}`
}
export const wattsText = (watts: number) => `${formatQuantity('number', watts, plain(0))} W`
export const numberText = (value: number, digits: number) => formatQuantity('number', value, plain(digits))
export const speedText = (kmh: number, system: System) => formatQuantity('speed', kmh, { system })
export const longText = (km: number, system: System) => formatQuantity('distance', km, { system, digits: 0 })
export const climbRateText = (mPerH: number, system: System) =>
  formatQuantity('verticalSpeed', mPerH, { system, digits: 0 })

const plain = (digits: number) => ({ system: 'metric' as const, digits })

/** "Speed 1.10 m/s, made for 0 to 1.97 m/s". */
export function bound(
  label: string,
  value: number,
  { limit, digits = 0 }: { limit: Limit; digits?: number },
): WhyBound {
  const inside = isWithin(value, limit)
  const from = numberText(limit.min, limit.min === Math.trunc(limit.min) ? 0 : digits)
  const to = numberText(limit.max, limit.max === Math.trunc(limit.max) ? 0 : digits)
  const shown = Number.isFinite(value) ? numberText(value, digits) : 'without end'
  return {
    inside,
    text: `${label} ${shown}, ${inside ? 'inside' : 'outside'} ${from} to ${to} ${limit.unit}`,
  }
}

/** The path of a field of the leg; none where the leg is a stand-in. */
export function legPath({ stopIds }: WhyContext, leg: number, field: string): string | undefined {
  const id = stopIds[leg + 1]
  return id === undefined ? undefined : fieldPath('trip', 'stops', id, 'leg', field)
}

/** The path of what the leg says of its air, or where it says nothing, of the trip's weather. */
export function airPath(context: WhyContext, leg: number, field: 'airC' | 'humidity' | 'sun') {
  const own = context.plan.trip.stops[leg + 1]!.leg![field]
  return own === null ? fieldPath('trip', 'weather', field) : legPath(context, leg, field)
}

export const legName = ({ plan }: WhyContext, leg: number): string => plan.trip.stops[leg + 1]!.name

const STANDINGS: Record<string, string> = {
  'abstract read': 'read in the abstract',
  'abstract read, formula by third-party copy': 'read in the abstract, the formula by third-party copy',
  'judgement of ours': 'our judgement',
  'from memory': 'our estimate, not checked against a source',
}

export interface Source {
  authors: string
  year: number | null
  title: string
  where: string
  doi?: string
  standing: string
  note: string
}

/** "Looney DP and others (2022), Modeling …, Med Sci …: read in the abstract, … Ranges from the abstract; …" */
export function sourceText({ authors, year, title, where, standing, note }: Source): string {
  const inWords = standingText(standing)
  if (standing === 'judgement of ours') return `${capital(inWords)}, not published.`
  const [first, second, ...rest] = authors.split(', ').filter(Boolean)
  const who = rest.length ? `${first} and others` : [first, second].filter(Boolean).join(', ')
  const dated = `${who}${year === null ? '' : `${who ? ' ' : ''}(${year})`}`
  return `${[dated, title, where].filter(Boolean).join(', ')}: ${inWords}. ${note}`
}

/** How much of a source was read, in the words of the screens. */
export const standingText = (standing: string): string => STANDINGS[standing] ?? standing

/** The standings of some sources, each once, however many share it. */
export const standingsOf = (keys: readonly string[], register: Readonly<Record<string, Source>>): string =>
  [...new Set(keys.map(key => standingText(register[key]!.standing)))].join('; ')
