// JSON from outside beside the reader of the language: the same values, the same refusals, and an end to what is too much
// before it is made into values.

import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { BACKUP_CAPS } from '../../src/files/backup'
import { parseJson } from '../../src/files/backup/parse-json'

const expected = (text: string) => {
  try {
    return { ok: true, value: JSON.parse(text) }
  } catch {
    return { ok: false, message: expect.stringMatching(/damaged|cut short/) }
  }
}

const text = fc.json({ maxDepth: 4, stringUnit: fc.constantFrom('"', '\\', '[', ',', 'é', 'a') })

/** A list of that many entries. */
const list = (entries: number) => `[${'0,'.repeat(entries - 1)}0]`

describe('JSON from outside', () => {
  test('gives what JSON.parse gives, with a mark of its encoding or without', () => {
    fc.assert(
      fc.property(text, fc.constantFrom('', '\uFEFF'), (given, mark) => {
        expect(parseJson(mark + given)).toEqual(expected(given))
      }),
    )
  })

  test('is refused wherever JSON.parse refuses it', () => {
    const damage = fc.constantFrom('', ',', '[', ']', '{', '}', '"', '\\', ':', '1', ' ')
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(text, share, damage, fc.nat(2), (given, where, put, cut) => {
        const at = Math.floor(where * given.length)
        const torn = given.slice(0, at) + put + given.slice(at + cut)
        expect(parseJson(torn)).toEqual(expected(torn))
      }),
    )
  })

  test('is read at its caps, whatever its words hold, and refused past them', () => {
    const most = BACKUP_CAPS.entries
    expect(parseJson(list(most))).toMatchObject({ ok: true, value: { length: most } })
    expect(parseJson(JSON.stringify({ a: '[],{}\\"'.repeat(most) })).ok).toBe(true)
    expect(parseJson('['.repeat(BACKUP_CAPS.depth) + ']'.repeat(BACKUP_CAPS.depth)).ok).toBe(true)
    expect(parseJson(`[${list(most + 1)}]`)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/more entries than any plan/),
    })
    expect(parseJson(`[${`${list(50_000)},`.repeat(61)}0]`)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/more entries than any plan/),
    })
    expect(parseJson('['.repeat(1e6))).toMatchObject({
      ok: false,
      message: expect.stringMatching(/24 levels/),
    })
  })

  test('is made into no values where it holds too much', () => {
    const parse = vi.spyOn(JSON, 'parse')
    for (const flood of ['[],', '{},', '0,', '"",'])
      for (const head of ['', '[', '{"format":"pack-reckoner/backup","x":['])
        expect(parseJson(head + flood.repeat(500_000))).toMatchObject({
          ok: false,
          message: expect.stringMatching(/more entries than any plan/),
        })
    expect(parse).not.toHaveBeenCalled()
    parse.mockRestore()
  })
})
