// What burns in the stove: a poison by name, and snow whose water is only there while the fuel lasts.

import { itemName, type Plan } from '../plan'
import { listText } from '../units'
import type { Caution } from './caution'

export function fuelCautions({ gear }: Plan): Caution[] {
  const taken = gear.filter(({ count, fuel }) => fuel !== null && count > 0)
  const methanol = taken.filter(({ fuel }) => fuel!.kind === 'methanol')
  const melting = taken.filter(({ fuel }) => fuel!.meltLitres > 0)
  const cautions: Caution[] = []
  if (methanol.length)
    cautions.push({
      signal: 'WARNING',
      about: 'fuel',
      short: 'Methanol is poisonous',
      text: `${listText(methanol.map(itemName))}: methanol is poisonous. A mouthful can blind or kill. So can its fumes, and what soaks through skin. Mark the bottle and keep it away from what you drink.`,
    })
  if (melting.length)
    cautions.push({
      signal: 'WARNING',
      about: 'fuel',
      short: 'No fuel, no water',
      text: 'You melt snow to drink. Where snow is the only water, no fuel means no water: carry some to spare and a second way to light it.',
    })
  return cautions
}
