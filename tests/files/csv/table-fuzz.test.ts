// Thousands of tables made by chance; see fuzz.ts for what must hold.

import fc from 'fast-check'
import { test } from 'vitest'
import { property } from './fuzz'

const PATIENCE_MS = 120_000

test(
  'any bytes are refused in plain words or become rows that a plan can hold',
  () => fc.assert(property, { numRuns: 2500 }),
  PATIENCE_MS,
)
