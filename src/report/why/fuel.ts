// Why a night's cooking takes so much fuel, and at what temperature water boils there.
// Source keys: isa-1975, iapws-if97, water-heats, fuel-enthalpies, our-judgement.

import {
  altitudeRanges,
  boilingPointC,
  fuelG,
  fuelKinds,
  fuelMargin,
  heatToBoilKj,
  heatToMeltKj,
  snow,
} from '../../equations'
import { fieldPath, type Plan } from '../../plan'
import { given } from '../given'
import type { Explanation, WhyContext, WhyOther } from './types'
import { numberText } from './words'

const KIND_NAMES = {
  gas: 'gas, 80 % isobutane with 20 % propane',
  'white-gas': 'white gas',
  ethanol: 'ethanol',
  methanol: 'methanol',
  tablet: 'solid tablets',
} as const

/** Fuel for one night, kg; null for an item whose mass is typed. */
export function fuelKgOf({ gear }: Plan, id: string): number | null {
  const fuel = gear.find(each => each.id === id)?.fuel
  return fuel ? given(fuelG(fuel)) / 1000 : null
}

/** None for an item whose mass is typed. */
export function whyFuel(context: WhyContext, id: string): Explanation[] {
  const { plan, formats } = context
  const item = plan.gear.find(each => each.id === id)
  if (!item?.fuel) return []
  const { fuel } = item
  const { kind, boilLitres, startC, meltLitres, altitudeM } = fuel
  const { lowerHeatingMjPerKg, efficiency: usual } = fuelKinds[kind]
  const at = (field: string) => fieldPath('gear', id, 'fuel', field)
  const boilsAtC = given(boilingPointC({ altitudeM }))
  const kg = (use: typeof fuel) => given(fuelG(use)) / 1000
  const result = kg(fuel)
  const boilKj = given(heatToBoilKj({ litres: boilLitres, startC, endC: boilsAtC }))
  const meltKj = given(heatToMeltKj({ litres: meltLitres, ...snow }))
  const part = (label: string, value: number): WhyOther => ({
    label,
    value,
    text: formats.gear(value),
    sourceKeys: [],
  })
  const own: Explanation = {
    title: `${item.name || 'Fuel'} for one night`,
    equation: 'Heat for the water by the heat in the fuel',
    says: 'Heat to boil the water and melt snow. Divided by the heat in the fuel and the share that reaches the water. A margin covers wind, lighting and spills.',
    inputs: [
      { label: 'Fuel', value: KIND_NAMES[kind], path: at('kind') },
      { label: 'Water brought to the boil', value: formats.litres(boilLitres), path: at('boilLitres') },
      { label: 'It starts at', value: formats.degreesFine(startC), path: at('startC') },
      { label: 'It boils at', value: formats.degreesFine(boilsAtC), path: at('altitudeM') },
      { label: 'Heat to boil it', value: `${numberText(boilKj, 0)} kJ` },
      { label: 'Water melted from snow', value: formats.litres(meltLitres), path: at('meltLitres') },
      { label: 'Heat to melt it', value: `${numberText(meltKj, 0)} kJ` },
      { label: 'Heating value', value: `${numberText(lowerHeatingMjPerKg, 1)} MJ/kg` },
      {
        label: 'Heat that reaches the water',
        value:
          formats.percent(fuel.efficiency ?? usual) + (fuel.efficiency === null ? ', our judgement' : ''),
        path: at('efficiency'),
      },
      { label: 'Margin', value: `${numberText(fuelMargin, 2)} times, our judgement` },
    ],
    result: { value: result, text: formats.gear(result) },
    range: { bounds: [], note: 'The ranges of the fields are ours; all inputs are inside.' },
    instead: null,
    sourceKeys: ['water-heats', 'fuel-enthalpies', 'our-judgement'],
    ignores: `simmering, priming, cold cartridges; snow counts as ${formats.degrees(snow.snowC)} and is melted to ${formats.degrees(snow.endC)}.`,
    others: {
      title: 'Of it',
      list: [
        part('for boiling', kg({ ...fuel, meltLitres: 0 })),
        part('for melting snow', kg({ ...fuel, boilLitres: 0 })),
      ],
      note: 'In strong wind a pot without shelter may take twice as much (our judgement).',
    },
  }
  return [own, whyBoiling(context, { altitudeM, boilsAtC, path: at('altitudeM') })]
}

function whyBoiling(
  { formats }: WhyContext,
  { altitudeM, boilsAtC, path }: { altitudeM: number; boilsAtC: number; path: string },
): Explanation {
  const { min, max } = altitudeRanges.altitudeM
  return {
    title: 'Boiling point of water',
    equation: 'Standard atmosphere, then the IAPWS saturation equation',
    says: 'Air pressure by altitude, and the temperature at which water boils under it.',
    inputs: [{ label: 'Altitude', value: formats.metres(altitudeM), path }],
    result: { value: boilsAtC, text: formats.degreesFine(boilsAtC) },
    range: { bounds: [], note: `From ${formats.metres(min)} to ${formats.metres(max)}: inside.` },
    instead: null,
    sourceKeys: ['isa-1975', 'iapws-if97'],
    ignores: 'the weather, worth a degree or so, and salt in the water.',
    others: null,
  }
}
