// The piecewise reader of JSON beside the one of the language: the same values, the same refusals, and an end to what is
// too much before it is made into values.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Json, parsingJson } from '../../src/files/backup/parse-json'

function parsed(text: string): { json: Json; slices: number } {
  const parsing = parsingJson(text)
  for (let slices = 1; ; slices++) {
    const { done, value } = parsing.next()
    if (done) return { json: value, slices }
  }
}

const expected = (text: string) => {
  try {
    return { ok: true, value: JSON.parse(text) }
  } catch {
    return { ok: false, message: expect.stringMatching(/damaged|cut short/) }
  }
}

/** Longer than what is parsed in one go. */
const LONG = JSON.stringify('x'.repeat(70_000))
/** JSON with parts so long that they are made by themselves, in every place. */
const text = fc.letrec(tie => ({
  value: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.json({ maxDepth: 1 }),
    fc.constant(LONG),
    fc.array(tie('value'), { maxLength: 5 }).map(all => `[${all.join(' , ')}]`),
    fc
      .array(fc.tuple(fc.constantFrom('"a"', '"__proto__"', '"\\\\\\""', '"7"', '"é"'), tie('value')), {
        maxLength: 5,
      })
      .map(all => `{\n${all.map(pair => pair.join(' : ')).join(',')} }`),
  ),
})).value as fc.Arbitrary<string>

describe('JSON that is parsed in slices', () => {
  test('gives what JSON.parse gives', () => {
    fc.assert(
      fc.property(text, given => {
        expect(parsed(given).json).toEqual(expected(given))
      }),
    )
    const keys = `{"b":1,"a":[${LONG},2],"b":${LONG},"__proto__":[${LONG},3],"c":4}`
    const { json } = parsed(keys)
    expect(JSON.stringify(json.ok && json.value)).toBe(JSON.stringify(JSON.parse(keys)))
  })

  test('is refused wherever JSON.parse refuses it', () => {
    const damage = fc.constantFrom('', ',', '[', ']', '{', '}', '"', ':', '1', ' ')
    fc.assert(
      fc.property(
        text,
        fc.double({ min: 0, max: 1, noNaN: true }),
        damage,
        fc.nat(2),
        (given, share, put, cut) => {
          const at = Math.floor(share * given.length)
          const torn = given.slice(0, at) + put + given.slice(at + cut)
          expect(parsed(torn).json).toEqual(expected(torn))
        },
      ),
    )
    for (const torn of [
      `[${LONG},1,]`,
      `[${LONG},1 [${LONG},1]]`,
      `{"a":1[${LONG},1]}`,
      `[[${LONG},1][${LONG},1]]`,
      `[[${LONG},1]2,3]`,
      `x[${LONG},1]`,
      `[${LONG},1]x`,
      `{[${LONG},1]}`,
      `[,${LONG},1]`,
      `[[${LONG},1],]`,
      ',',
    ])
      expect(parsed(torn).json).toEqual(expected(torn))
  })

  test('lets go again and again', () => {
    const list = JSON.stringify(Array.from({ length: 90_000 }, (_, i) => ({ i })))
    expect(parsed(list)).toMatchObject({ json: { ok: true, value: { length: 90_000 } } })
    expect(parsed(list).slices).toBeGreaterThan(10)
  })

  test('is refused by its entries long before its end', () => {
    const floods = ['[],', '{},', '0,', '[[],', '{"a":[],', '[[[],[]],']
    for (const flood of floods.slice(0, 3)) {
      const { json, slices } = parsed(`{"format":"pack-reckoner/backup","x":[${flood.repeat(500_000)}`)
      expect(json).toMatchObject({ ok: false, message: expect.stringMatching(/more entries than any plan/) })
      expect(slices).toBeLessThan(10)
    }
    for (const flood of floods.slice(3)) expect(parsed(flood.repeat(1e5)).json).toMatchObject({ ok: false })
    const spread = `[${`[${'0,'.repeat(50_000)}0],`.repeat(61)}0]`
    expect(parsed(spread).json).toMatchObject({ ok: false, message: expect.stringMatching(/more entries/) })
    expect(parsed('['.repeat(1e6)).json).toMatchObject({
      ok: false,
      message: expect.stringMatching(/24 levels/),
    })
  })
})
