// The rules that the figures rest on, as the reasons tell them of the help's trip: what each is called, what it was made
// for and what it leaves out.

import type { Formats } from '../formats'
import { type About, type Explanation, explain } from '../why'
import { type Example, exampleOf } from './example'

export interface Rule {
  about: About
  explanation: Explanation
}

/** One figure of each rule but that of the packing, which has pictures of its own. */
const ASKED: readonly About[] = [
  { kind: 'walking-time', leg: 0 },
  { kind: 'leg-energy', leg: 1 },
  { kind: 'resting-energy' },
  { kind: 'leg-water', leg: 1 },
  { kind: 'ration', day: 1 },
]

/** The help's trip with water from heat and food from energy, which ask every rule. */
export const exampleOfRules = (): Example =>
  exampleOf(document => ({
    ...document,
    trip: {
      ...document.trip,
      water: { litresPerHour: 'from-heat' },
      meals: { ration: 'energy' },
    },
  }))

/** The first reason of each: a figure is told with what it rests on behind it. */
export const rulesIn = (example: Example, formats: Formats): Rule[] =>
  ASKED.flatMap(about => {
    const [explanation] = explain(about, { ...example, formats })
    return explanation ? [{ about, explanation }] : []
  })
