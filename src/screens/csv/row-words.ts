// What an item of a table is, in the words of the gear list.

import type { ReadItem } from '../../files/csv'
import { FIELDS, tableWord } from '../../plan'
import { type Kind, litresOfKind } from '../../plan/kinds'
import type { Formats } from '../../report'
import { rangeText } from '../../units'

/** The facts of a row as they would come in. */
export function factsOf({ item, inside, thing }: ReadItem, kind: Kind | null, formats: Formats): string[] {
  const { massKg, litres, litresRange, count = 1, stow, use, kcalPerKg, group, fuel } = item
  const each = count === 1 ? '' : ' each'
  const facts: (string | null | undefined | false)[] = [
    massKg === undefined ? !fuel && 'no mass' : formats.gear(massKg) + each,
    litres !== undefined && formats.litres(litres) + each,
    litresRange && `${range(litresRange as Range, formats)} by kind`,
    kind && `${range(litresOfKind(kind, item), formats)} typical of a ${kind.kind}`,
    stow && stow !== 'main-body' && tableWord(FIELDS.item.stow, stow),
    use && use !== 'kept' && tableWord(FIELDS.item.use, use),
    kcalPerKg !== undefined && `${Math.round(kcalPerKg / 10)} kcal/100 g`,
    fuel && 'fuel by the water it heats',
    item.holdsWaterLitres !== undefined && `holds ${formats.litres(item.holdsWaterLitres)} of water`,
    item.holdsLitres !== undefined && `holds ${formats.litres(item.holdsLitres)}`,
    inside && ('row' in inside ? `inside row ${inside.row}` : `inside ${inside.name}`),
    group,
    thing.retired && 'no longer in use',
    thing.weighedOn && `weighed on ${thing.weighedOn}`,
    thing.note && `note: ${thing.note.slice(0, 60)}`,
  ]
  return facts.filter(fact => typeof fact === 'string')
}

interface Range {
  low: number
  high: number
}

const range = ({ low, high }: Range, { system }: Formats) =>
  rangeText('volume', low, high, { system, unit: 'L', digits: high < 1 ? 2 : 1 })
