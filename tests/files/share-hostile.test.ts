// Links that anybody may have written: whatever they hold, the answer is a plan or a sentence, and nothing else happens.

import { deflateRawSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { type ReadLink, readLink, SHARE_CAPS, shareLink } from '../../src/files/share'
import { toBase64url } from '../../src/files/share/base64url'
import { crc32 } from '../../src/files/share/crc32'
import { sealed } from '../../src/files/share/link'
import { parsePlan } from '../../src/plan'

/** For thousands of tries on a busy machine. */
const PATIENCE_MS = 60_000

/** A link with a whole seal around any text: what an attacker would make. */
function sealedLink(text: string | Uint8Array): string {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text
  return `#plan=1.${toBase64url(sealed(deflateRawSync(bytes), crc32(bytes)))}`
}

const planText = (more: Record<string, unknown>) => JSON.stringify({ ...demo, ...more })
const stopsNamed = (name: string) => ({ stops: [{ name }, { name: 'End', leg: { km: 1 } }] })

async function messageOf(fragment: string): Promise<string> {
  const read = await readLink(fragment)
  if (read.ok) throw new Error('it was opened')
  return read.message
}

const wellSaid = (read: ReadLink) => {
  if (read.ok) return parsePlan(read.document).ok
  return (
    read.message.length <= 400 &&
    /[.]$/.test(read.message) &&
    !/please|sorry|valid|oops|forbidden|required/i.test(read.message)
  )
}

describe('a hostile link', () => {
  test('that unpacks to far more than a plan is stopped at the cap', async () => {
    const bomb = sealedLink(new Uint8Array(5_000_000))
    expect(bomb.length).toBeLessThan(SHARE_CAPS.fragmentChars)
    expect(await messageOf(bomb)).toMatch(/unpacks to more than 256 KiB/)
  })

  test('is read up to the cap of what it unpacks to', async () => {
    const padded = (size: number) => {
      const text = planText({})
      return sealedLink(text.replace('{', `{${' '.repeat(size - text.length)}`))
    }
    expect(await readLink(padded(SHARE_CAPS.unpackedBytes))).toMatchObject({ ok: true })
    expect(await messageOf(padded(SHARE_CAPS.unpackedBytes + 1))).toMatch(/256 KiB/)
  })

  test('that is longer than the cap is not looked into', async () => {
    const most = `plan=1.${'A'.repeat(SHARE_CAPS.fragmentChars - 7)}`
    expect(await messageOf(most)).toMatch(/cut short or changed/)
    expect(await messageOf(`#${most}`)).toMatch(/cut short or changed/)
    expect(await messageOf(`${most}A`)).toMatch(/8,001 characters.*8,000/)
  })

  test('of a newer packing says so; one of no packing at all is damaged', async () => {
    expect(await messageOf('#plan=2.AAAA')).toMatch(/newer Pack Reckoner/)
    expect(await messageOf('#plan=0.AAAA')).toMatch(/cut short or changed/)
    expect(await messageOf('#plan=')).toMatch(/cut short or changed/)
    expect(await messageOf('#top')).toMatch(/carries no plan/)
    expect(await messageOf(sealedLink(planText({ version: 2 })))).toMatch(/2 is newer/)
  })

  test('with a key for prototypes is refused by its name, and no prototype changes', async () => {
    for (const text of [
      '{"__proto__":{"polluted":true},',
      '{"constructor":{"prototype":{"polluted":true}},',
      '{"carrier":{"massKg":70,"__proto__":{"polluted":true}},',
    ]) {
      const { carrier: _carrier, ...rest } = demo
      const body = JSON.stringify(text.includes('carrier') ? rest : demo).slice(1)
      expect(await messageOf(sealedLink(text + body))).toMatch(/no plan has such a part/)
    }
    expect('polluted' in {}).toBe(false)
  })

  test('with a number beyond all numbers is refused, with the range', async () => {
    const text = planText({}).replace('"massKg":71', '"massKg":1e999')
    expect(text).toContain('1e999')
    expect(await messageOf(sealedLink(text))).toMatch(/mass: .*10 to 300 kg/)
  })

  test('nested deep enough to break a recursion is refused for its depth', async () => {
    expect(await messageOf(sealedLink(`${'['.repeat(100_000)}${']'.repeat(100_000)}`))).toMatch(/plan/)
    const deep = `${'{"a":'.repeat(40_000)}1${'}'.repeat(40_000)}`
    expect(await messageOf(sealedLink(deep))).toMatch(/deeper than 20 levels/)
  })

  test('with markup in a name keeps it as plain text', async () => {
    const name = '<img src=x onerror=alert(1)>'
    const read = await readLink(sealedLink(planText({ trip: stopsNamed(name) })))
    expect(read).toMatchObject({ ok: true, document: { trip: { stops: [{ name }, {}] } } })
  })

  test('with characters that turn or hide text loses them; a name of nothing else is refused', async () => {
    const read = await readLink(
      sealedLink(planText({ trip: stopsNamed('A\u202egk 1\u0007\u200b\u2066\u2028Z') })),
    )
    expect(read).toMatchObject({ ok: true, document: { trip: { stops: [{ name: 'Agk 1Z' }, {}] } } })
    expect(await messageOf(sealedLink(planText({ trip: stopsNamed('\u202e\u2066') })))).toMatch(
      /name: is empty/,
    )
    const message = await messageOf(sealedLink(planText({ ['\u202eevil'.repeat(90)]: 1 })))
    expect(message).not.toMatch(/\u202e/)
    expect(message.length).toBeLessThan(400)
  })

  test('with no text, no JSON or no UTF-8 inside says that it is no plan', async () => {
    for (const inside of ['', '{', 'null', '[]', '7', '"plan"', Uint8Array.of(0xff, 0xfe), '\u0000'])
      expect(await messageOf(sealedLink(inside)), String(inside)).toMatch(/plan/)
  })

  test('with more parts than a plan may have is answered, not choked on', async () => {
    const many = planText({ gear: 'GEAR' }).replace('"GEAR"', `[${'{},'.repeat(80_000)}{}]`)
    expect(wellSaid(await readLink(sealedLink(many)))).toBe(true)
  })
})

describe('a link changed on its way', async () => {
  const made = await shareLink(parsedDemo(), new URL('https://packs.example/'))
  if (!made.ok) throw new Error(made.message)
  const whole = new URL(made.link).hash
  const opened = await readLink(whole)
  const same = opened.ok && opened.document

  test(
    'never opens as another plan, whichever character is changed, lost or doubled',
    async () => {
      const at = fc.nat(whole.length - 9)
      const other = fc.constantFrom(...'ABCabc019-_')
      await fc.assert(
        fc.asyncProperty(
          at,
          other,
          fc.constantFrom('change', 'lose', 'double', 'cut'),
          async (i, char, how) => {
            const k = 8 + i
            const end = { change: char + whole.slice(k + 1), lose: whole.slice(k + 1), cut: '' }
            const changed = whole.slice(0, k) + (how === 'double' ? whole[k]! + whole.slice(k) : end[how])
            fc.pre(changed !== whole)
            const read = await readLink(changed)
            // The last bits of the packing and of the text stand for nothing: with them changed, the plan is the same.
            expect(read.ok ? read.document : wellSaid(read)).toEqual(read.ok ? same : true)
          },
        ),
        { numRuns: 3000 },
      )
    },
    PATIENCE_MS,
  )

  test(
    'is answered with a plan or a sentence, whatever was done to it',
    async () => {
      const piece = fc.oneof(
        fc.string({ maxLength: 20 }),
        fc.nat(whole.length).map(i => whole.slice(i, i + 40)),
        fc.constantFrom('#', 'plan=', '1.', '.', '%23', '\u202e', '\0', '=', ' '),
      )
      const mutated = fc
        .tuple(fc.nat(whole.length), fc.nat(60), fc.array(piece, { maxLength: 4 }))
        .map(([at, cut, pieces]) => whole.slice(0, at) + pieces.join('') + whole.slice(at + cut))
      await fc.assert(
        fc.asyncProperty(fc.oneof(mutated, fc.string({ unit: 'binary' })), async fragment => {
          expect(wellSaid(await readLink(fragment))).toBe(true)
        }),
        { numRuns: 3000 },
      )
    },
    PATIENCE_MS,
  )

  test(
    'is answered so too when its seal is whole and what it seals is not',
    async () => {
      const text = planText({})
      const inner = fc.oneof(
        fc.json({ maxDepth: 6 }),
        fc
          .tuple(fc.nat(text.length), fc.nat(8), fc.string({ maxLength: 6 }))
          .map(([at, cut, put]) => text.slice(0, at) + put + text.slice(at + cut)),
      )
      await fc.assert(
        fc.asyncProperty(inner, async json => {
          expect(wellSaid(await readLink(sealedLink(json)))).toBe(true)
        }),
        { numRuns: 2000 },
      )
    },
    PATIENCE_MS,
  )
})

function parsedDemo() {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  return parsed.document
}
