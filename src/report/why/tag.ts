// Why a pack of which only part is known is judged as it is: no more than what is known can carry.

import type { Plan } from '../../plan'
import { reckon } from '../../reckon'
import { type KnownPack, wholePack } from '../compare-packs'
import type { Formats } from '../formats'
import { whyPeakLoad } from './need'
import { whyFigures } from './setup-figures'
import { whyLoad } from './setup-load'
import { whyRoom } from './setup-room'
import { setupContext } from './setup-words'
import type { Explanation } from './types'

/** What rests on the pack's litres, and what on its mass, by its title. */
const BY_BODY = [
  'Filled to the brim',
  'Pack mass for each litre',
  'Price for each litre',
  'Can carry food for',
]
const BY_MASS = ['Pack mass for each litre', 'Pack mass for each kg rated', 'Can carry food for']

export function whyTag(plan: Plan, known: KnownPack, formats: Formats): Explanation[] {
  const tried = { ...plan, packs: [wholePack(known)] }
  const result = reckon(tried)
  if (!result.ok) return []
  const context = setupContext({ plan: tried, reckoning: result.reckoning, formats, stopIds: [] }, 0)
  const hasBody = known.bodyLitres !== undefined
  const hasMass = known.setup.massKg !== undefined
  const all = [...(hasBody ? whyRoom(context) : []), ...whyLoad(context), ...whyFigures(context)]
  const told = all.filter(
    ({ title }) => (hasBody || !BY_BODY.includes(title)) && (hasMass || !BY_MASS.includes(title)),
  )
  return [...told, whyPeakLoad(context)]
}
