// The facts of an item in words, where a trip and the shelf differ.

import { describe, expect, test } from 'vitest'
import { factText } from '../../src/screens/gear/fact-words'

describe('a fact in words', () => {
  test.each(['lengthCm', 'widthCm', 'depthCm', 'diameterCm'] as const)(
    'tells %s with its unit, in the units in use',
    field => {
      expect(factText(field, 30.48, 'metric')).toMatch(/^30(\.\d+)?\scm$/)
      expect(factText(field, 30.48, 'us')).toMatch(/^12(\.0)?\sin$/)
    },
  )

  test('tells a place by its word, and what is not there as none', () => {
    expect(factText('stow', 'strapped-on', 'metric')).toBe('strapped on')
    expect(factText('widthCm', undefined, 'metric')).toBe('none')
  })
})
