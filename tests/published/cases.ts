// The values that the equations are held to, how a case's inputs are read, and how far an answer lies off.

import type { Outcome } from '../../src/equations'
import energy from './energy.values.json'
import water from './water.values.json'

export interface Case {
  id: string
  inputs: Record<string, unknown>
  units: string
  expected: number | number[]
  tolerance: number
  kind: string
  source: string
}

/** Inputs read by name: a number unless asked for otherwise; a missing one throws. */
export interface Inputs {
  (name: string): number
  has(name: string): boolean
  text(name: string): string
  flag(name: string): boolean
}

export const cases = [...energy.values, ...water.values] as Case[]
export const leftOut = [...energy.leftOut, ...water.leftOut]

export function value<T>(outcome: Outcome<T>): T {
  if (!outcome.ok)
    throw new Error(`${outcome.field}: ${outcome.got} is outside ${JSON.stringify(outcome.limit)}`)
  return outcome.value
}

function inputsOf(case_: Case): Inputs {
  const of = <T>(name: string, type: string): T => {
    const found = case_.inputs[name]
    if (typeof found !== type) throw new Error(`${case_.id} has no ${type} ${name}`)
    return found as T
  }
  return Object.assign((name: string) => of<number>(name, 'number'), {
    has: (name: string) => name in case_.inputs,
    text: (name: string) => of<string>(name, 'string'),
    flag: (name: string) => of<boolean>(name, 'boolean'),
  })
}

/** Largest absolute deviation of a case, over its numbers; a missing number counts as infinite. */
export function deviation(case_: Case, run: (inputs: Inputs) => number | number[]): number {
  const got = [run(inputsOf(case_))].flat()
  const expected = [case_.expected].flat()
  if (got.length !== expected.length) return Number.POSITIVE_INFINITY
  return Math.max(...expected.map((number, index) => Math.abs(got[index]! - number)))
}
