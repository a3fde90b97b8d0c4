// What rounds without a loss show, and what they do not.

import { expect, test } from 'vitest'
import { lossBound } from './tools/kill.mjs'

test('rounds without a loss bound the share of losses as the binomial does', () => {
  // Computed: with a share p of losses, n rounds without one have the chance (1 − p)^n; at 95 % that is 0.05.
  for (const rounds of [1, 20, 60, 300]) expect(lossBound(0, rounds)).toBeCloseTo(1 - 0.05 ** (1 / rounds), 9)
  expect(lossBound(0, 60)).toBeCloseTo(0.0487, 4)
})

test('each loss raises the bound above the share that was seen', () => {
  const bounds = [0, 1, 2, 10, 59].map(losses => lossBound(losses, 60))
  expect(bounds).toEqual([...bounds].sort((a, b) => a - b))
  for (const [i, losses] of [0, 1, 2, 10, 59].entries()) expect(bounds[i]).toBeGreaterThan(losses / 60)
  // Computed: with one loss, (1 − p)^60 + 60 p (1 − p)^59 is 0.05.
  const p = lossBound(1, 60)
  expect((1 - p) ** 60 + 60 * p * (1 - p) ** 59).toBeCloseTo(0.05, 9)
  expect(lossBound(60, 60)).toBeCloseTo(1, 9)
})
