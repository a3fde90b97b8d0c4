// Runs the examples in the equations' doc comments: a line `call({ … }) // result` is evaluated and compared.
// A result is the outcome's value; numbers agree to the last digit that is written, and to 5 parts in 100 000.

import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as equations from '../../src/equations'

const folder = new URL('../../src/equations/', import.meta.url)
const files = readdirSync(folder).filter(name => name.endsWith('.ts'))
const textOf = (file: string) => readFileSync(new URL(file, folder), 'utf8')

interface Example {
  file: string
  call: string
  result: string
}

function examplesIn(file: string): Example[] {
  const comments = textOf(file).match(/\/\*\*[\s\S]*?\*\//g) ?? []
  return comments.flatMap(comment => {
    const block = comment.split('@example')[1] ?? ''
    return [...block.matchAll(/^ \* (\w+\(.*\)) \/\/ (.+)$/gm)].map(([, call, result]) => ({
      file,
      call: call!,
      result: result!,
    }))
  })
}

const evaluate = (expression: string): unknown =>
  new Function(...Object.keys(equations), `return (${expression})`)(...Object.values(equations))

function expectAlike(got: unknown, expected: unknown) {
  if (typeof expected === 'number') {
    expect(got).toBeTypeOf('number')
    const decimals = String(expected).split('.')[1]?.length ?? 0
    const within = Math.min(0.5000001 * 10 ** -decimals, 5e-5 * Math.abs(expected))
    return expect(Math.abs((got as number) - expected)).toBeLessThanOrEqual(within)
  }
  if (typeof expected !== 'object' || expected === null) return expect(got).toBe(expected)
  expect(Object.keys(got as object).sort()).toEqual(Object.keys(expected).sort())
  for (const [key, part] of Object.entries(expected)) expectAlike((got as Record<string, unknown>)[key], part)
}

const examples = files.flatMap(examplesIn)
const publicFunctions = Object.entries(equations)
  .filter(([, exported]) => typeof exported === 'function')
  .map(([name]) => name)

describe('examples in the doc comments', () => {
  it.each(examples)('$file: $call gives $result', ({ call, result }) => {
    const outcome = evaluate(call) as { ok: boolean; value: unknown }
    expect(outcome.ok, JSON.stringify(outcome)).toBe(true)
    expectAlike(outcome.value, evaluate(result))
  })

  it('exist for every public function', () => {
    const shown = new Set(examples.map(({ call }) => call.split('(')[0]))
    expect(publicFunctions.length).toBeGreaterThan(20)
    expect(publicFunctions.filter(name => !shown.has(name))).toEqual([])
  })

  it('are all read: each @example tag gives at least one', () => {
    for (const file of files) {
      const tags = textOf(file).match(/@example/g)?.length ?? 0
      expect(examplesIn(file).length, file).toBeGreaterThanOrEqual(tags)
    }
  })
})
