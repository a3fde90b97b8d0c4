// Why the load pulls at the hips as it does: the balance of moments, with what is assumed of where a pack rides.
// Source keys: static-balance, winter-2009, our-judgement, and the studies on where a load should ride.

import { ASSUMED, lessText, movedName, newtonMetres, placingOf, STUDIES, wholeCm } from '../placing'
import { told } from './sum'
import type { Explanation, WhyContext } from './types'
import { numberText } from './words'

/** None where nothing rides in the main body. */
export function whyPlacing({ plan, reckoning, formats }: WhyContext, index: number): Explanation[] {
  const pack = plan.packs[index]
  const placing = pack && placingOf(plan, reckoning, pack)
  if (!placing) return []
  const { now, after, kg, moved, depthCm, heightCm, isMeasured } = placing
  const from = isMeasured ? '' : ', from its litres'
  const lean = (degrees: number | null) => (degrees === null ? 'out of range' : `${numberText(degrees, 1)}°`)
  return [
    told({
      title: `Moment about the hips, ${pack.name}`,
      equation: 'Balance of moments',
      says: 'M = g Σ m (x cos θ − z sin θ), standing upright, θ = 0: each mass times how far behind the hip axis it rides. Packed evenly, the centre is in the middle of the depth. What is moved to the back pushes the rest out by as many litres.',
      inputs: [
        { label: 'In the main body at the heaviest load', value: formats.kg(kg) },
        { label: 'Depth inside', value: `${wholeCm(depthCm / 100, formats)}${from}` },
        { label: 'Height inside', value: `${wholeCm(heightCm / 100, formats)}${from}` },
        {
          label: 'Back panel behind the hip axis',
          value: `${wholeCm(ASSUMED.backBehindM, formats)}, our judgement`,
        },
        { label: 'Centre behind the hips', value: wholeCm(now.behindM, formats) },
        { label: 'Centre above the hips', value: wholeCm(now.aboveM, formats) },
        ...moved.map(one => ({
          label: `${movedName(one)}, ${formats.kg(one.kg)}, from the back`,
          value: `${wholeCm(one.fromCm / 100, formats)}, then ${wholeCm(one.toCm / 100, formats)}`,
        })),
      ],
      result: { value: now.momentNm, text: newtonMetres(now.momentNm) },
      sourceKeys: [
        ...new Set([
          'static-balance',
          'winter-2009',
          ...STUDIES.flatMap(one => one.sourceKeys),
          'our-judgement',
        ]),
      ],
      ignores: 'pockets, straps, the pack itself, walking, the hip belt, items side by side.',
      others: {
        title: 'And so',
        list: [
          ...(moved.length > 0
            ? [
                {
                  label: `with the heaviest dense items against the back: ${wholeCm(after.behindM, formats)} behind the hips, ${lessText(placing, formats)} less`,
                  value: after.momentNm,
                  text: newtonMetres(after.momentNm),
                  sourceKeys: [],
                },
              ]
            : []),
          {
            label: 'forward lean that balances it, packed evenly',
            value: now.leanDeg,
            text: lean(now.leanDeg),
            sourceKeys: ['winter-2009'],
          },
        ],
        note: 'What changes by moving items does not depend on where the back panel rides. This is advice: no answer rests on it.',
      },
    }),
  ]
}
