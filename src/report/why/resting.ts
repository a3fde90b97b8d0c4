// Why a body at rest needs the energy it does. Source key: mifflin-1990.

import { bodyRanges, mifflinStudiedAges } from '../../equations'
import { ASSUMED_BODY, type Body } from '../../reckon'
import type { Explanation, WhyContext } from './types'
import { bound, kcalText } from './words'

export function whyResting({ plan, formats }: WhyContext, { restingKcal }: Body): Explanation {
  const { massKg, heightCm, ageYears, sex } = plan.carrier
  const tooShort = heightCm !== null && heightCm < bodyRanges.heightCm.min
  const height = heightCm === null || tooShort ? ASSUMED_BODY.heightCm : heightCm
  const age = ageYears ?? ASSUMED_BODY.ageYears
  const studied = bound('Age', age, { limit: mifflinStudiedAges })
  const notes = [
    studied.inside ? '' : 'The equation is used all the same at this age.',
    tooShort
      ? `A height under ${bodyRanges.heightCm.min} cm is replaced by ${ASSUMED_BODY.heightCm} cm.`
      : '',
  ].filter(Boolean)
  return {
    title: 'Resting energy of a day',
    equation: 'Mifflin and St Jeor, 1990',
    says: 'From body mass, height, age and sex; the mean of both sexes where none is given.',
    inputs: [
      { label: 'Body mass', value: formats.kg(massKg), path: 'carrier/massKg' },
      {
        label: 'Height',
        value: heightCm === null ? `${formats.cm(height)}, assumed` : formats.cm(heightCm),
        path: 'carrier/heightCm',
      },
      {
        label: 'Age',
        value: ageYears === null ? `${age} years, assumed` : `${age} years`,
        path: 'carrier/ageYears',
      },
      { label: 'Sex', value: sex ?? 'not given', path: 'carrier/sex' },
    ],
    result: { value: restingKcal, text: kcalText(restingKcal) },
    range: { bounds: [studied], note: '' },
    instead: notes.length ? notes.join(' ') : null,
    sourceKeys: ['mifflin-1990'],
    ignores: 'how much of the body is muscle, cold, altitude, pregnancy.',
    others: null,
  }
}
