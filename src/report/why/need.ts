// Why the main body needs its litres and the load its kilograms: what they are made of at their worst moment.
// Source keys: stovall-1986, furnas-1931, our-judgement.

import { roomFor, roomRange } from '../../reckon'
import { momentAt, placeText, sharesByName } from '../places'
import type { Explanation, WhyContext, WhyInput } from './types'
import { numberText } from './words'

export function whyBodyLitres({ plan, reckoning, shown }: WhyContext): Explanation {
  const { need, moments } = reckoning
  const moment = momentAt(reckoning, need.bodyAt)
  const { settings } = plan
  const { rigidLitres, softLitres } = moment
  const { bodyLitres } = roomFor(rigidLitres, softLitres, settings)
  const { low, high } = roomRange(rigidLitres, softLitres, settings)
  const parts = sharesByName(moment.litres)
  const things = parts.reduce((sum, part) => sum + part.amount, 0)
  const share = (label: string, field: 'rigidPacking' | 'softPacking' | 'fillEfficiency'): WhyInput => ({
    label,
    value: shown.percent(settings[field]),
    path: `settings/${field}`,
  })
  return {
    title: `Main body, fullest ${placeText(need.bodyAt, moments)}`,
    equation: 'Packing model of Stovall, de Larrard and Buil, 1986',
    says: 'Rigid things leave gaps and soft things fill part of them; whichever rules, the rigid skeleton or the soft bulk, asks for more room and counts.',
    inputs: [
      ...parts.map(part => ({ label: part.name, value: shown.litres(part.amount) })),
      { label: 'gaps between them', value: shown.litres(bodyLitres - things) },
      { label: 'rigid things', value: shown.litres(rigidLitres) },
      { label: 'soft things', value: shown.litres(softLitres) },
      share('Rigid things fill of their space', 'rigidPacking'),
      share('Soft things fill of their space', 'softPacking'),
      share('Soft things fill of the gaps', 'fillEfficiency'),
      ...(settings.personalFactor === 1
        ? []
        : [{ label: 'From your own packing', value: `${numberText(settings.personalFactor, 2)} times` }]),
    ],
    result: { value: bodyLitres, text: shown.litres(bodyLitres) },
    range: { bounds: [], note: 'For any amounts; the three shares are judgements inside published ranges.' },
    instead: null,
    sourceKeys: ['stovall-1986', 'furnas-1931', 'our-judgement'],
    ignores:
      'the shapes of things and of the pack; long and wide rigid things are held against its inner measures apart.',
    others: {
      title: 'The same things',
      list: [
        { label: 'with every gap filled', value: low, text: shown.litres(low), sourceKeys: [] },
        { label: 'with no gap filled', value: high, text: shown.litres(high), sourceKeys: [] },
      ],
      note: 'Rows may not add up because of rounding.',
    },
  }
}

export function whyPeakLoad({ reckoning, shown }: WhyContext): Explanation {
  const { need, moments } = reckoning
  const { kg } = momentAt(reckoning, need.peakAt)
  return {
    title: `Heaviest load, ${placeText(need.peakAt, moments)}`,
    equation: 'A sum',
    says: 'Everything not worn, with food, fuel and water as they then are, and rubbish since the last bin. Without the pack.',
    inputs: sharesByName(kg).map(part => ({ label: part.name, value: shown.kg(part.amount) })),
    result: { value: kg.total, text: shown.kg(kg.total) },
    range: { bounds: [], note: '' },
    instead: null,
    sourceKeys: [],
    ignores: 'rain and sweat soaked up on the way.',
    others: {
      title: 'With its likely error',
      list: [
        {
          label: 'at most, in 9 of 10 cases',
          value: need.peakLoadSafeKg,
          text: shown.kg(need.peakLoadSafeKg),
          sourceKeys: ['gum-2008'],
        },
      ],
      note: 'Rows may not add up because of rounding.',
    },
  }
}
