// The rows of the settings, and of packings of one's own.

import { CAPS } from '../caps'
import type * as types from '../types'
import { litres, litresFrom } from './item'
import { JUDGEMENT, PRACTICE, RANGES } from './origins'
import { bodyFrom } from './pack'
import { amount, day, type Limit, list, named, type RowsFor, text } from './rows'

const packedThing = {
  id: text(named),
  litres,
  litresFrom,
  u: amount('share', 0, 1, 'as a share of 1', { need: true }),
} satisfies RowsFor<types.PackedThing>

export const packing = {
  date: day,
  person: text({ filled: true }),
  p: amount('share', 0.3, 1.5, 'of the main body'),
  overLitres: amount('volume', 0, 100, 'L'),
  pack: text({ filled: true }),
  packLitres: amount('volume', 1, 300, 'L', { need: true }),
  packFrom: bodyFrom,
  W: amount('volume', 0, 1000, 'L', { need: true }),
  d: amount('share', 0, 1, 'as a share of 1', { need: true }),
  things: list(packedThing, { most: CAPS.items, what: 'items' }, { need: true }),
} satisfies RowsFor<types.PastPacking & { overLitres: number }>

const share = (min: number, max: number) => [min, max, 'as a share of 1'] as const

export const settings = {
  rigidPacking: amount('share', ...share(0.3, 1), {
    usual: 0.75,
    origin: RANGES,
    label: 'Rigid items fill of their space',
  }),
  softPacking: amount('share', ...share(0.3, 1), {
    usual: 0.95,
    origin: RANGES,
    label: 'Soft items fill of their space',
  }),
  fillEfficiency: amount('share', ...share(0, 1), {
    usual: 0.5,
    origin: RANGES,
    label: 'Soft items fill of the gaps',
  }),
  habitCorrelation: amount('share', ...share(0, 1), { usual: 0.5 }),
  personalFactor: amount('number', 0.2, 5, 'times', { usual: 1, label: 'Your packing, times the model’s' }),
  // A number: how sure the factor is; it then stands for the hand and the packing model both.
  personalFactorSpread: amount('share', ...share(0, 1), {
    nullable: true,
    label: 'Plus or minus',
    hint: 'One standard deviation, for your hand and the gaps. Empty: the usual.',
  }),
  handSpread: amount('share', ...share(0, 0.5), { usual: 0.08, origin: JUDGEMENT, label: 'Hands differ by' }),
  readingSpread: amount('share', ...share(0.005, 0.2), { usual: 0.03 }),
  linerKg: amount('mass', 0, 2, 'kg', {
    fine: true,
    usual: 0.05,
    origin: PRACTICE,
    label: 'Liner in a pack that is not sealed',
    reason: 'Liner, as rain is likely',
  }),
  framelessCeilingKg: amount('mass', 0.5, 100, 'kg', {
    usual: 9.07,
    origin: PRACTICE,
    label: 'My limit without a frame',
  }),
  roomyRatio: amount('number', 1, 10, 'times', {
    usual: 1.35,
    origin: JUDGEMENT,
    label: 'Call a pack too big from (× the need)',
    reason: 'Called too big from',
  }),
  packKgForEnergy: amount('mass', 0, 20, 'kg', { usual: 1, origin: JUDGEMENT }),
  // Between clothes and sleeping things (0.12) and food (0.4).
  brimKgPerLitre: amount('number', 0.02, 1, 'kg/L', {
    usual: 0.22,
    origin: JUDGEMENT,
    label: 'A full pack weighs, kg for each litre',
  }),
  lightGramsPerLitre: amount('gramsPerLitre', 1, 500, 'g/L', {
    label: 'Light for me, up to',
    hint: 'Pack mass for each litre. Empty: not judged.',
  }),
  headroomLitres: amount('volume', 0, 100, 'L', {
    label: 'Headroom you want',
    hint: 'Room to spare over the likely need. Empty: not judged.',
  }),
} satisfies RowsFor<types.Settings>

/** What a packing may say: beyond this, one of its figures is wrong. */
export const PACKING_FACTOR: Limit = { min: 0.4, max: 2.5, unit: 'times what is calculated' }
