// How many of the packs are suitable, in one sentence that says no more than is known.

import type { Answer } from '../../reckon'
import { counted } from '../../units'
import { isYes } from '../answers'

/** `isEmpty`: nothing is taken along, so that nothing can be told. */
export function suitableSentence(
  answers: readonly (Answer | null)[],
  { isEmpty }: { isEmpty: boolean },
): string {
  const all = answers.length
  if (all === 0) return 'No packs yet'
  if (isEmpty) return 'Can’t tell yet: no gear'
  const suitable = answers.filter(answer => answer && isYes(answer)).length
  const open = answers.filter(answer => answer === 'cannot-tell' || answer === null).length
  const of = (count: number) => `${count} of ${counted(all, 'pack')}`
  if (suitable === 0 && open > 0) return `${of(open)} may be suitable`
  const withCare = answers.filter(answer => answer === 'with-care').length
  const care = withCare === 0 ? '' : withCare === suitable ? ' with care' : `, ${withCare} with care`
  return `${of(suitable)} ${all === 1 || suitable === 1 ? 'is' : 'are'} suitable${care}`
}
