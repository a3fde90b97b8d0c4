// The glossary: short, and of words that the app says. That none of its words is a forbidden one, tests/words.test.ts
// holds of all texts of the source.
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { GLOSSARY } from '../../src/report/glossary'
import { textsIn } from '../tools/words'

const src = join(import.meta.dirname, '..', '..', 'src')
const texts = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .map(file => file.replaceAll('\\', '/'))
  .filter(file => /\.tsx?$/.test(file) && file !== 'report/glossary.ts')
  .flatMap(file => textsIn(join(src, file)).map(({ text }) => text))

describe('the glossary', () => {
  test.each(GLOSSARY.map(({ word }) => word))('%s is a word that the app says elsewhere', word => {
    const said = new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, 'iu')
    expect(texts.some(text => said.test(text))).toBe(true)
  })

  test('has 20 to 30 words, each once, in one short sentence', () => {
    expect(GLOSSARY.length).toBeGreaterThanOrEqual(20)
    expect(GLOSSARY.length).toBeLessThanOrEqual(30)
    expect(new Set(GLOSSARY.map(({ word }) => word.toLowerCase())).size).toBe(GLOSSARY.length)
    for (const { word, says } of GLOSSARY) {
      expect(says, word).toMatch(/^\p{Lu}[^.!?]*\.$/u)
      expect(says.split(' ').length, word).toBeLessThanOrEqual(10)
    }
  })
})
