// Why so much water leaves a source, and why a leg takes what it takes where the hourly rate is the hiker's own.

import { FIELDS, fieldPath } from '../../plan'
import type { DryCamp, WaterCarry } from '../../reckon'
import { marginText } from '../formats'
import { originOf } from './origins'
import { sumOf, told, type Unshown } from './sum'
import type { Explanation, WhyContext, WhyInput } from './types'
import { airPath, legName, legPath } from './words'

/** The stretch from a source to the next: its legs, its dry camps and the reserve. */
export function whyCarry(context: WhyContext, carry: WaterCarry): Explanation {
  const { plan, reckoning, formats, stopIds } = context
  const { stops, water } = plan.trip
  const { stop, to, needLitres, carriedLitres, shortLitres } = carry
  const legs = Array.from({ length: to - stop }, (_, i): Unshown => {
    const leg = stop + i
    const { hours, waterLitres, litresPerHour } = reckoning.legs[leg]!
    return {
      label: `to ${legName(context, leg)}: ${formats.hours(hours)} at ${formats.flow(litresPerHour)}`,
      value: waterLitres,
      path: water.litresPerHour === 'from-heat' ? airPath(context, leg, 'airC') : 'trip/water/litresPerHour',
    }
  })
  const camps = stops.slice(stop + 1, to).flatMap((camp, i): Unshown[] => {
    if (camp.nights === 0) return []
    const id = stopIds[stop + 1 + i]
    return [
      {
        label: `${camp.nights === 1 ? 'a dry night' : `${camp.nights} dry nights`} at ${camp.name}`,
        value: camp.nights * water.campLitres,
        path: id === undefined ? undefined : fieldPath('trip', 'stops', id, 'water'),
      },
    ]
  })
  const reserve = { label: 'reserve', value: water.reserveLitres, path: 'trip/water/reserveLitres' }
  const short =
    shortLitres > 0
      ? `The bottles hold ${formats.water(carriedLitres)}, so ${formats.water(carriedLitres)} are carried and it falls short by ${marginText(shortLitres, formats.water)}.`
      : null
  return sumOf({
    title: `Water out of ${stops[stop]!.name}, to ${stops[to]!.name}`,
    says: 'What is drunk until the next water source, nights included, and a reserve. Room to carry, not a drinking target.',
    kind: 'volume',
    system: formats.system,
    show: formats.water,
    text: formats.water(needLitres),
    parts: [...legs, ...camps, reserve],
    inputs: [
      wayInput(context, carry),
      ...rateInputs(context),
      habitInput(context, 'campLitres'),
      habitInput(context, 'reserveLitres'),
    ],
    instead: short,
    sourceKeys: ['common-practice', 'our-judgement'],
  })
}

function wayInput({ reckoning: { moments }, formats }: WhyContext, { stop, to }: WaterCarry): WhyInput {
  const from = moments.find(moment => moment.stop === stop && moment.phase === 'depart')!
  const until = moments.find(moment => moment.stop === to && moment.phase === 'arrive')!
  return {
    label: 'Its legs together',
    value: `${formats.km(until.km - from.km)}, ${formats.hours(until.hours - from.hours)}`,
  }
}

/** What water at a dry camp would save: the trip is reckoned anew with the camp as a source. */
export function whyCamps(context: WhyContext, stop: number, camps: readonly DryCamp[]): Explanation[] {
  const { plan, reckoning, formats } = context
  const carry = reckoning.carries.find(each => each.stop === stop)
  if (!carry) return []
  const { peakLoadFullWaterKg } = reckoning.need
  return camps.map(({ stop: camp, savesCarryLitres, savesPeakKg, leavesShortLitres }) =>
    sumOf({
      title: `With water at ${plan.trip.stops[camp]!.name}`,
      says: 'The whole trip is calculated again with that camp as a water source: this much less is carried out at the most.',
      kind: 'volume',
      system: formats.system,
      show: formats.water,
      parts: [
        { label: 'carried out now', value: carry.carriedLitres },
        { label: 'the most carried out then', value: savesCarryLitres - carry.carriedLitres },
      ],
      inputs: [
        { label: 'Heaviest load now', value: formats.kg(peakLoadFullWaterKg) },
        { label: 'Heaviest load then', value: formats.kg(peakLoadFullWaterKg - savesPeakKg) },
        {
          label: savesPeakKg < 0 ? 'Added to the heaviest load' : 'Off the heaviest load',
          value: formats.kg(Math.abs(savesPeakKg)),
        },
        ...(leavesShortLitres > 0
          ? [{ label: 'Still short by', value: marginText(leavesShortLitres, formats.water) }]
          : []),
      ],
    }),
  )
}

/** The rate where it is the hiker's own. */
function rateInputs({ plan, formats }: WhyContext): WhyInput[] {
  const { litresPerHour } = plan.trip.water
  if (litresPerHour === 'from-heat') return []
  const row = FIELDS.water.litresPerHour
  return [
    {
      label: row.label,
      value: formats.flow(litresPerHour),
      from: originOf(litresPerHour, row),
      path: 'trip/water/litresPerHour',
    },
  ]
}

/** Litres that the hiker always reckons with, or the usual ones. */
function habitInput({ plan, formats }: WhyContext, field: 'campLitres' | 'reserveLitres'): WhyInput {
  const value = plan.trip.water[field]
  return {
    label: FIELDS.water[field].label,
    value: formats.water(value),
    from: originOf(value, FIELDS.water[field]),
    path: `trip/water/${field}`,
  }
}

/** The water of a leg at the hiker's own rate. */
export function whyOwnLegWater(context: WhyContext, leg: number): Explanation {
  const { reckoning, formats } = context
  const { hours, waterLitres } = reckoning.legs[leg]!
  return told({
    title: `Water on the way to ${legName(context, leg)}`,
    says: 'The hours of the leg at your hourly rate. Room to carry, not a drinking target.',
    inputs: [
      { label: 'Walking time', value: formats.hours(hours), path: legPath(context, leg, 'hours') },
      ...rateInputs(context),
    ],
    result: { value: waterLitres, text: formats.water(waterLitres) },
  })
}
