// What a verdict rests on: whose packing the litres come from, and how much of litres and load is measured.

import type { Plan } from '../../plan'
import { type Provenance, provenanceOf, type Reckoning } from '../../reckon'
import { inUnit } from '../../units'
import type { Formats } from '../formats'
import { kindOfVerdict, type ToldCode, type ToldKind } from '../verdict-words'
import { numberWord } from './count'

interface Context {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

/** What the four sorts of verdicts rest on, a sentence each. */
export interface Basis {
  litres: string
  load: string
  pockets: string
  sizes: string
}

const BY: Readonly<Partial<Record<ToldKind['about'], keyof Basis>>> = {
  load: 'load',
  body: 'load',
  'missing-mass': 'load',
  pockets: 'pockets',
  size: 'sizes',
}

/** The sentence for a verdict's code; every code not about load, pockets or sizes is about litres. */
export const basisFor = (code: ToldCode, basis: Basis): string =>
  basis[BY[kindOfVerdict(code).about] ?? 'litres']

export function basisOf({ plan, reckoning, formats }: Context): Basis {
  const { litres, kg } = provenanceIn(plan, reckoning)
  const { need } = reckoning
  return {
    litres: `${packingBasis(plan)}; ${litresText(litres, need.bodyLitres, formats)}.`,
    load: `Based on masses: ${massText(kg, need.peakLoadFullWaterKg, formats)}.`,
    pockets: 'Based on the litres of what is in pockets, without gaps.',
    sizes: 'Based on the sizes given for the items and the pack.',
  }
}

const percent = (share: number) => `${Math.round(share * 100)}\u00a0%`

/** "Based on average packing, not yet on yours", "Based on your own three packings". */
export const packingBasis = (plan: Plan): string => `Based on ${packingText(plan)}`

function packingText({ settings, packings }: Plan): string {
  const { personalFactor, personalFactorSpread } = settings
  const factor = personalFactor.toFixed(2)
  if (packings.length > 0) return packingsText(packings.length)
  if (personalFactorSpread !== null)
    return `this trip’s own packing factor, ${factor}, plus or minus ${percent(personalFactorSpread)}`
  if (personalFactor !== 1) return `average packing times ${factor}, set by hand`
  return 'average packing, not yet on yours'
}

/** "one packing of your own", "your own three packings". */
export const packingsText = (count: number): string =>
  count === 1 ? 'one packing of your own' : `your own ${numberWord(count)} packings`

/** "11 of 42 L measured, 18 by kind, 9 guessed, 4 water"; what rounds to nothing is left out. */
function litresText(litres: Provenance['litres'], whole: number, { litresUp }: Formats): string {
  return groundText({
    first: ['measured', litres.filled + litres.dimensions],
    others: [
      ['stated', litres.stated],
      ['by kind', litres.kind],
      ['guessed', litres.guess],
      ['water', litres.water],
    ],
    whole: litresUp(whole),
    steps: amount => amount,
    round: litres => Math.ceil(litres - 1e-9),
    text: String,
  })
}

/** "9.1 of 14.2 kg weighed, 3.1 stated, 2.0 water". */
function massText(kg: Provenance['kg'], whole: number, formats: Formats): string {
  const unit = formats.system === 'us' ? 'lb' : 'kg'
  return groundText({
    first: ['weighed', kg.scale],
    others: [
      ['stated', kg.stated],
      ['guessed', kg.guess],
      ['water', kg.water],
    ],
    whole: formats.kg(whole),
    steps: amount => 10 * inUnit('mass', amount, unit),
    round: Math.round,
    text: tenths => (tenths / 10).toFixed(1),
  })
}

type Part = readonly [name: string, amount: number]

interface Ground {
  first: Part
  others: Part[]
  /** As it is shown elsewhere: the parts are rounded to add up to it. */
  whole: string
  /** An amount in steps of its last shown digit, and whole steps as text. */
  steps: (amount: number) => number
  /** As the whole is rounded where it is shown. */
  round: (steps: number) => number
  text: (steps: number) => string
}

function groundText({ first: [name, amount], others, whole, steps, round, text }: Ground): string {
  const parts = [[name, amount] as const, ...others].map(([what, part]) => ({ what, exact: steps(part) }))
  const [measured, ...rest] = apportioned(parts, round)
  const told = rest
    .filter(part => part.count > 0)
    .sort((a, b) => b.count - a.count)
    .map(({ what, count }) => `${text(count)}\u00a0${what}`)
  const counted = measured?.count ?? 0
  if (told.length === 0) return counted === 0 ? 'nothing to go by yet' : `all ${whole} ${name}`
  return [`${counted === 0 ? 'none' : text(counted)} of ${whole} ${name}`, ...told].join(', ')
}

/** Whole steps that add up to the rounded whole: what is missing goes to the parts that lost most by rounding down. */
function apportioned(parts: { what: string; exact: number }[], round: (steps: number) => number) {
  const counts = parts.map(part => ({ ...part, count: Math.floor(part.exact + 1e-9) }))
  const lost = ({ exact, count }: (typeof counts)[number]) => exact - count
  const missing =
    round(parts.reduce((sum, { exact }) => sum + exact, 0)) -
    counts.reduce((sum, { count }) => sum + count, 0)
  for (const part of counts.toSorted((a, b) => lost(b) - lost(a)).slice(0, Math.max(0, missing)))
    if (part.exact > 0) part.count += 1
  return counts
}

const KEPT = new WeakMap<Reckoning, { plan: Plan; provenance: Provenance }>()

/** Asked once for each set-up of each pack, reckoned once. */
function provenanceIn(plan: Plan, reckoning: Reckoning): Provenance {
  const kept = KEPT.get(reckoning)
  if (kept?.plan === plan) return kept.provenance
  const provenance = provenanceOf(plan, reckoning)
  KEPT.set(reckoning, { plan, provenance })
  return provenance
}
