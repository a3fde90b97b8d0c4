// What a thing costs, in words: nothing is said to cost nothing of which nobody knows what it weighs or takes.

import { expect, test } from 'vitest'
import type { Effect } from '../../src/reckon'
import { costText, formatsIn } from '../../src/report'

const effect = (changes: Partial<Effect> = {}): Effect => ({
  id: 'mug',
  atHome: false,
  bodyLitres: 0,
  bodyLitresSafe: 0,
  peakLoadKg: 0,
  peakLoadFullWaterKg: 0,
  ...changes,
})
const lighter = { bodyLitres: -9.1, peakLoadFullWaterKg: -0.9 }
const told = (
  changes: Partial<Effect>,
  unknownUpTo: { massKg: number | null; litres: number | null } | null,
) =>
  costText({ effect: effect(changes), item: { unknownUpTo } }, formatsIn('metric')).replaceAll('\u00a0', ' ')

test.each([
  [{}, null, 'changes nothing'],
  [lighter, null, '−0.9 kg, −9.1 L'],
  [{ bodyLitres: 9.1, peakLoadFullWaterKg: 0.9, atHome: true }, null, '+0.9 kg, +9.1 L if taken along'],
  [{ ...lighter, bodyLitres: 0 }, { massKg: null, litres: 12 }, '−0.9 kg, litres not known'],
  [
    { ...lighter, peakLoadFullWaterKg: 0.9, bodyLitres: 0, atHome: true },
    { massKg: null, litres: 12 },
    '+0.9 kg if taken along, litres not known',
  ],
  [{}, { massKg: 2, litres: 12 }, 'mass and litres not known'],
  [{}, { massKg: 2, litres: null }, 'mass not known'],
  [{ ...lighter, bodyLitres: null }, null, 'cannot be told: the rations rest on it'],
])('%j of a thing whose bounds are %j: %s', (changes, unknown, text) => {
  expect(told(changes, unknown)).toBe(text)
})
