// Why figures come out as they do that are found before they are part of a plan: a thing measured at home, a day's food
// mixed from its parts, the legs of a track. Source keys: gum-2008, elementary-geometry, din-33466, our-judgement.

import { counted, formatQuantity } from '../../units'
import type { Formats } from '../formats'
import { countsText } from '../measuring'
import { sumOf, told } from './sum'
import type { Explanation, FoundAbout, WhyInput } from './types'
import { climbRateText, speedText } from './words'

type Of<Kind extends FoundAbout['kind']> = Extract<FoundAbout, { kind: Kind }>

/** How the readings make litres, by the way of measuring. */
const FORMULAS: Readonly<Record<string, string>> = {
  roll: 'Girth squared by 4 π, times length',
  box: 'Length times width times height',
  cylinder: 'π by 4, times across squared, times length',
  mat: 'Length times width times thickness, with the open middle of the roll',
  filled: 'Length times width of the box, times the height it reaches',
  water: 'As many litres as the water rises',
}

export function whyMeasured({ method, readings, soft }: Of<'measured'>, { system }: Formats): Explanation[] {
  const outcome = method.measure(readings, { soft })
  if (!outcome.ok) return []
  const { litres, sigmaLitres, diameterCm, flatLitres } = outcome.value
  const show = (value: number) => formatQuantity('volume', value, { system, unit: 'L', digits: 2 })
  const rolled: WhyInput[] =
    diameterCm === undefined || flatLitres === undefined
      ? []
      : [
          { label: 'The roll is thick', value: formatQuantity('length', diameterCm, { system, digits: 0 }) },
          { label: 'Laid flat it takes', value: show(flatLitres) },
        ]
  return [
    told({
      title: 'Litres measured',
      equation: FORMULAS[method.id] ?? method.label,
      says: method.how,
      inputs: [
        ...method.readings.map(({ key, label, kind, usual }) => ({
          label,
          value: formatQuantity(kind, readings[key] ?? usual ?? 0, { system }),
        })),
        { label: 'Plus or minus, two times in three', value: show(sigmaLitres) },
        { label: 'In the plan', value: countsText(outcome.value, method) },
        ...rolled,
      ],
      result: { value: litres, text: show(litres) },
      sourceKeys: ['elementary-geometry', 'gum-2008', 'our-judgement'],
      ignores: 'dents, corners that are round, and how it is pressed later.',
    }),
  ]
}

export function whyDaysFood({ portions, packing }: Of<'days-food'>, formats: Formats): Explanation[] {
  const { system } = formats
  const litres = (value: number) => formatQuantity('volume', value, { system, unit: 'L', digits: 2 })
  const kcal = (value: number) => `${Math.round(value)} kcal`
  const massKg = portions.reduce((sum, portion) => sum + portion.massKg, 0)
  const energy = sumOf({
    title: 'Energy a day',
    says: 'Each food by its energy for 100 g.',
    kind: 'number',
    system,
    show: kcal,
    parts: portions.map(({ name, kcal: value }) => ({ label: name, value })),
  })
  return [
    sumOf({
      title: 'Mass a day',
      says: 'The foods of the day.',
      kind: 'mass',
      system,
      show: formats.gear,
      parts: portions.map(({ name, massKg: value }) => ({ label: name, value })),
    }),
    energy,
    sumOf({
      title: 'Packed a day',
      says: `Each food by its density, times ${packing} for bags that do not lie close.`,
      kind: 'volume',
      system,
      show: litres,
      parts: portions.map(({ name, litres: value }) => ({ label: name, value: packing * value })),
      sourceKeys: ['our-judgement'],
    }),
    told({
      title: 'Energy by mass',
      says: 'The energy of the day by its mass.',
      inputs: [
        { label: 'Energy a day', value: energy.result.text },
        { label: 'Mass a day', value: formats.gear(massKg) },
      ],
      result: {
        value: energy.result.value / massKg,
        text: formatQuantity('energyDensity', energy.result.value / massKg, { system, digits: 0 }),
      },
    }),
  ]
}

export function whyTrack({ legs, pace, days }: Of<'track'>, formats: Formats): Explanation[] {
  const { system, km, metres, hours } = formats
  const { flatKmh, climbMPerH, descendMPerH } = pace
  type Leg = (typeof legs)[number]
  const sum = (
    given: {
      title: string
      says: string
      kind: 'distance' | 'climb' | 'duration'
      show: (v: number) => string
    },
    of: (leg: Leg) => number | null,
  ) =>
    sumOf({
      ...given,
      system,
      parts: legs.map(leg => ({ label: `to ${leg.name}, at ${km(leg.atKm)}`, value: of(leg) ?? 0 })),
    })
  const walked = sum(
    {
      title: 'Walking time',
      says: 'Time along the flat and time for climb and descent; the larger counts whole, the smaller half. At this trip’s pace, without breaks.',
      kind: 'duration',
      show: hours,
    },
    leg => leg.hours,
  )
  return [
    {
      ...walked,
      inputs: [
        { label: 'On the flat', value: speedText(flatKmh, system), path: 'trip/pace/flatKmh' },
        { label: 'Climbing', value: climbRateText(climbMPerH, system), path: 'trip/pace/climbMPerH' },
        { label: 'Going down', value: climbRateText(descendMPerH, system), path: 'trip/pace/descendMPerH' },
        { label: 'An even day of it', value: hours(walked.result.value / days) },
      ],
      sourceKeys: ['din-33466'],
    },
    sum(
      { title: 'Way', says: 'Along the points of the track, on the ellipsoid.', kind: 'distance', show: km },
      leg => leg.km,
    ),
    sum(
      {
        title: 'Climb',
        says: 'Smoothed rises of the track; small ones do not count.',
        kind: 'climb',
        show: metres,
      },
      leg => leg.ascentM,
    ),
    sum(
      {
        title: 'Descent',
        says: 'Smoothed falls of the track; small ones do not count.',
        kind: 'climb',
        show: metres,
      },
      leg => leg.descentM,
    ),
  ]
}

/** What the hiker has noted beside what is calculated, line by line; the last is what it comes to. */
export const whyNoted = ({ title, says, lines }: Of<'noted'>): Explanation[] => [
  told({
    title,
    says,
    inputs: lines.slice(0, -1),
    result: { value: lines.length, text: lines.at(-1)?.value ?? '' },
  }),
]

export const whyCosts = ({ things }: Of<'costs'>): Explanation[] => [
  told({
    title: 'Each item by itself',
    says: 'The trip is calculated once more without the item; with it, if it is at home. Shown is the change in the heaviest load with all water, and in the likely litres. What a bottle held must still be carried. Two items together may save more or less than each by itself.',
    inputs: things.map(({ name, text }) => ({ label: name, value: text })),
    result: { value: things.length, text: counted(things.length, 'time') },
  }),
]

export const whySwaps = ({ name, things }: Of<'swaps'>): Explanation[] => [
  told({
    title: `Instead of ${name}`,
    says: 'The whole trip is calculated once more with each of them: the heaviest load with all the water wanted, the likely litres at the fullest moment and the answers of the packs, less those of the trip as it stands.',
    inputs: things.map(({ name, text }) => ({ label: name, value: text })),
    result: { value: things.length, text: counted(things.length, 'time') },
  }),
]
