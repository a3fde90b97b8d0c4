// Reasons of a plan that is not the open one: nothing in them leads to a field, for the fields are another plan's.

import type { Explanation, WhyPart } from './types'

/** The same reason with no way to any field. */
export const withoutPaths = (explanation: Explanation): Explanation => ({
  ...explanation,
  inputs: explanation.inputs.map(({ path: _, ...input }) => input),
  ...(explanation.parts ? { parts: explanation.parts.map(partWithout) } : {}),
})

const partWithout = ({ path: _, of, ...part }: WhyPart): WhyPart => ({
  ...part,
  ...(of ? { of: of.map(partWithout) } : {}),
})
