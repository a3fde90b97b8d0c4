// Long work that lets the page answer in between.

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { beginInPortions, fileOf, inOneGo, inPortions, type Steps } from '../../src/files/portions'

let turns = 0
let ticking: ReturnType<typeof setImmediate>
beforeEach(() => {
  turns = 0
  ticking = setImmediate(function tick() {
    turns += 1
    ticking = setImmediate(tick)
  })
})
afterEach(() => {
  clearImmediate(ticking)
  vi.restoreAllMocks()
})

/** Each look at the clock finds it so much later, in ms. */
function slowClock(stepMs: number) {
  let at = 0
  vi.spyOn(performance, 'now').mockImplementation(() => {
    at += stepMs
    return at
  })
}

function* counting(to: number): Steps<number> {
  let sum = 0
  for (let i = 1; i <= to; i++) {
    yield
    sum += i
  }
  return sum
}

test('the page has its turn every few steps where they take long, and the result is the same', async () => {
  slowClock(10)
  expect(await inPortions(counting(100))).toBe(inOneGo(counting(100)))
  expect(turns).toBeGreaterThan(20)
})

test('what is short is done at once', async () => {
  slowClock(0)
  expect(await inPortions(counting(100))).toBe(5050)
  expect(turns).toBe(0)
})

test('what was stopped is heard of no more, and goes no further', async () => {
  slowClock(10)
  const heard: number[] = []
  let steps = 0
  function* counted(): Steps<number> {
    for (; steps < 100; steps++) yield
    return steps
  }
  beginInPortions(counting(100), sum => heard.push(sum))
  beginInPortions(counted(), sum => heard.push(sum))()
  await vi.waitFor(() => expect(heard).toEqual([5050]))
  expect(steps).toBeLessThan(100)
})

test('what goes wrong rejects', async () => {
  function* broken(): Steps<never> {
    yield
    throw new Error('broken')
  }
  await expect(inPortions(broken())).rejects.toThrow('broken')
})

test('pieces of text become one file, whatever characters are in them', async () => {
  const pieces = Array.from({ length: 3000 }, (_, i) => `${i} äö€🎒 ${'x'.repeat(i % 100)}\n`)
  slowClock(1)
  const file = await fileOf(pieces)
  expect(await file.text()).toBe(pieces.join(''))
  expect(turns).toBeGreaterThan(20)
})
