// Quantities of the report in the reader's units, at the precision that serves: loads to 0.1 kg, litres to 0.1 L.

import { formatQuantity, type System } from '../units'

export type Formats = ReturnType<typeof formattersFor>

/** Formatters for one unit system, the same object each time, so that drawings can be kept by it. */
export const formatsIn = (system: System): Formats => FORMATS[system]

// Pack room is told in litres in both systems: that is what pack labels say.
function formattersFor(system: System) {
  const mass = system === 'us' ? ({ unit: 'lb', digits: 1 } as const) : ({ unit: 'kg', digits: 1 } as const)
  return {
    system,
    kg: (kg: number) => formatQuantity('mass', kg, { system, ...mass }),
    /** A thing's own mass, to the gram or tenth of an ounce. */
    gear: (kg: number) => formatQuantity('mass', kg, { system }),
    litres: (litres: number) => formatQuantity('volume', litres, { system, unit: 'L', digits: 1 }),
    /** A need in whole litres, never rounded down. */
    litresUp: (litres: number) =>
      formatQuantity('volume', litres, { system, unit: 'L', digits: 0, round: 'up' }),
    litresWhole: (litres: number) => formatQuantity('volume', litres, { system, unit: 'L', digits: 0 }),
    water: (litres: number) =>
      formatQuantity('volume', litres, { system, unit: system === 'us' ? 'qt' : 'L', digits: 1 }),
    km: (km: number) => formatQuantity('distance', km, { system, digits: 1 }),
    metres: (m: number) => formatQuantity('climb', m, { system, digits: 0 }),
    cm: (cm: number) => formatQuantity('length', cm, { system }),
    hours: (hours: number) => formatQuantity('duration', hours, { system, unit: 'h min' }),
    flow: (litresPerHour: number) => formatQuantity('flow', litresPerHour, { system, digits: 2 }),
    /** Weather to whole degrees, which is finer than anybody knows it. */
    degrees: (celsius: number) => formatQuantity('temperature', celsius, { system, digits: 0 }),
    /** In a reason, so that a limit is seen to be passed. */
    degreesFine: (celsius: number) => formatQuantity('temperature', celsius, { system, digits: 1 }),
    percent: (share: number, digits = 0) => formatQuantity('share', share, { system, digits }),
    gramsPerLitre: (value: number) => formatQuantity('gramsPerLitre', value, { system }),
    gramsPerKg: (value: number) => formatQuantity('gramsPerKg', value, { system }),
    density: (value: number) => formatQuantity('density', value, { system }),
  }
}

const FORMATS: Record<System, Formats> = { metric: formattersFor('metric'), us: formattersFor('us') }

/** A figure without its unit, where the unit follows: "6.0" of "6.0 L". */
export const bareNumber = (figure: string): string => figure.replace(/\s\D+$/, '')

/** A margin that rounds to nothing is still a margin: "0.0 kg over" would contradict its own verdict. */
export function marginText(margin: number, format: (value: number) => string): string {
  const size = Math.abs(margin)
  return format(size) === format(0) && size > 0 ? `less than ${format(0.1)}` : format(size)
}

/** A share over a limit, with a digit more where rounding would make the two look alike. */
export function percentOver(share: number, limit: number, { percent }: Formats): string {
  return percent(share) === percent(limit) ? percent(share, 1) : percent(share)
}

/** A chance as a count out of ten, the form that people read right. */
export function chanceText(chance: number): string {
  if (chance < 0.05) return 'less than 1 chance in 20'
  if (chance >= 0.95) return 'more than 19 chances in 20'
  const tenths = Math.round(chance * 10)
  return `about ${tenths} ${tenths === 1 ? 'chance' : 'chances'} in 10`
}
