// Figures that what is missing can only raise, and whose a limit is.

import { describe, expect, it } from 'vitest'
import type { Draft } from '../../src/plan'
import { allWords, draftOf, judged, kit, plain, tent, textOf } from './missing-plans'

describe('a figure that what is missing can only raise', () => {
  it('is told as the least that it is, and a margin as the most', () => {
    const rope = { id: 'rope', name: 'Rope', litres: 1 }
    const heavy = { id: 'stove', name: 'Stove', massKg: 9, litres: 1 }
    const over = judged(draftOf([kit, heavy, rope], { bodyLitres: 40 }, { ratedKg: 8 }))
    expect(plain(textOf(over))).toMatch(
      /Overloaded by at least 6\.\d kg .*: at least 14\.0 kg of contents and pack against/,
    )
    const near = judged(draftOf([kit, heavy, rope], { bodyLitres: 40 }, { ratedKg: 15 }))
    expect(plain(textOf(near))).toMatch(/Near its rating, at most \d\.\d kg from it/)
    const small = judged(draftOf([kit, tent], { bodyLitres: 8 }))
    expect(plain(textOf(small))).toMatch(
      /Too small by at least \d+\.\d L .*: 8\.0 L of main body for at least \d+\.\d L/,
    )
    const bare = judged(
      draftOf([kit, heavy, rope], { bodyLitres: 40 }, { frame: 'frameless', ratedKg: undefined }),
    )
    expect(plain(textOf(bare))).toMatch(
      /Too heavy without a frame by at least \d\.\d kg .*: at least 14\.0 kg against/,
    )
  })

  it('is told as it is where nothing is missing', () => {
    const heavy = { id: 'stove', name: 'Stove', massKg: 9, litres: 1 }
    expect(textOf(judged(draftOf([kit, heavy], { bodyLitres: 8 }, { ratedKg: 8 })))).not.toMatch(
      /at least|at most/,
    )
  })
})

describe('a limit that the hiker did not state', () => {
  it('is not called theirs, and one they did is', () => {
    const bare = { frame: 'frameless', ratedKg: undefined }
    const heavy = { id: 'stove', name: 'Stove', massKg: 9, litres: 1 }
    const words = (settings: object) => {
      const draft = { ...draftOf([kit, heavy], { bodyLitres: 40 }, bare), settings }
      const all = allWords(judged(draft as Draft))
      return JSON.stringify(all)
    }
    expect(words({})).toMatch(/the usual limit without a frame/)
    expect(words({})).not.toMatch(/[Yy]our (own )?limit without/)
    expect(words({ framelessCeilingKg: 8 })).toMatch(/your limit without a frame/)
    expect(words({ framelessCeilingKg: 8 })).not.toMatch(/usual limit without/)
  })
})
