// Where the doubt about the litres comes from: how its parts are known, and what measuring would take off the range.

import { handSpreadOf, provenanceOf } from '../../reckon'
import { likelyRange, measureNext } from '../confidence'
import { sumOf, told } from './sum'
import type { Explanation, WhyContext } from './types'

export function whySure(context: WhyContext): Explanation[] {
  const { plan, reckoning, formats } = context
  const { need } = reckoning
  const next = measureNext(plan, reckoning, formats)
  if (!next) return []
  const { low, high } = likelyRange(need)
  return [
    told({
      title: 'The likely range',
      equation: 'Law of propagation of uncertainty',
      says: `Each item is unsure by how its litres are known: measured by filling to 3 %, from its dimensions 10 %, stated 15 %, guessed 30 %, by kind between its ends; and by how one hand differs from another, ${formats.percent(handSpreadOf(plan.settings))} as a standard deviation. These are our judgement. Shares are of the variance. Together it is now ${next.now}; with all of them measured ${next.together}, ${next.narrower}.`,
      inputs: [
        ...next.things.map(({ name, share, gain, path }) => ({
          label: name,
          value: `${share}; ${gain}`,
          path,
        })),
        ...(next.packing
          ? [
              {
                label: 'How it packs',
                value: `${next.packing.share} of the uncertainty; ${next.packing.gain}`,
              },
            ]
          : []),
      ],
      result: { value: high - low, text: `${formats.litres(high - low)} wide` },
      sourceKeys: ['gum-2008', 'our-judgement'],
    }),
    whyKnown(context),
  ]
}

/** The litres by how they are known. */
export function whyKnown({ plan, reckoning, formats }: WhyContext): Explanation {
  const { litres } = provenanceOf(plan, reckoning)
  return sumOf({
    title: 'How these litres are known',
    says: 'The litres of the fullest moment with gaps, by how each is known.',
    kind: 'volume',
    system: formats.system,
    show: formats.litres,
    parts: [
      { label: 'measured by filling', value: litres.filled },
      { label: 'from dimensions', value: litres.dimensions },
      { label: 'stated', value: litres.stated },
      { label: 'by kind', value: litres.kind },
      { label: 'guessed', value: litres.guess },
      { label: 'water', value: litres.water },
    ],
  })
}
