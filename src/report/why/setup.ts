// Why a set-up is judged as it is: its room, its load, and the figures packs are compared by.

import { contentsLimitKg } from '../../reckon'
import { priceText } from '../compare-packs'
import { framelessLimit } from '../limit-names'
import { whyFigures } from './setup-figures'
import { whyLoad } from './setup-load'
import { whyRoom } from './setup-room'
import { setupContext } from './setup-words'
import { sumOf } from './sum'
import type { Explanation, WhyContext } from './types'

export function whySetup(context: WhyContext, index: number): Explanation[] {
  const own = setupContext(context, index)
  return [...whyRoom(own), ...whyLoad(own), ...whyFigures(own)]
}

/** What a set-up bears besides itself, as the chart sets it beside the others; empty where no limit is known. */
export function whyBears(context: WhyContext, index: number): Explanation[] {
  const { plan, reckoning, formats } = context
  const { judged, pack, setup } = setupContext(context, index)
  const bearsKg = contentsLimitKg(judged, reckoning.need)
  if (bearsKg === null || judged.loadLimitKg === null) return []
  const name = pack.setups.length > 1 ? `${judged.name}, ${setup.name}` : judged.name
  return [
    sumOf({
      title: `${name} can carry, without its own mass`,
      says: `The lower of its rating and, without a frame, ${framelessLimit(plan)}, less a liner and the pack itself where the rating includes it.`,
      kind: 'mass',
      system: formats.system,
      show: formats.kg,
      parts: [
        { label: 'it may carry', value: judged.loadLimitKg },
        { label: 'of it the pack and a liner', value: bearsKg - judged.loadLimitKg },
      ],
      inputs: [
        { label: 'Main body', value: formats.litres(pack.bodyLitres) },
        { label: 'Pack mass', value: formats.gear(setup.massKg) },
        { label: 'Price', value: priceText(pack.price, pack.currency) },
      ],
    }),
  ]
}
