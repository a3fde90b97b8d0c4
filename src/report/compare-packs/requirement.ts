// What to ask for in a shop: the requirement of one trip or of several, as rows of a name, a figure and a word on it.

import type { Plan } from '../../plan'
import { type Reckoning, type Requirement, requirementOfAll } from '../../reckon'
import type { Formats } from '../formats'
import { missingOf } from '../missing'

export interface Asked {
  /** Main body in about half of all cases enough. */
  likelyLitres: number
  packKg: number
  wanted: Requirement
  /** Of some things nobody has said the litres, or the mass: it is that much at least. */
  atLeast: { litres: boolean; mass: boolean }
}

/** Said where some things have no litres. */
export const ENOUGH_UNTOLD = 'some items have no litres yet, so how much is enough can’t be told.'

/**
 * The most that any of the trips asks of a pack that weighs `packKg`; without one, of a pack as heavy as the plans take
 * it for energy. Null without trips.
 */
export function askedBy(
  trips: readonly { plan: Plan; reckoning: Reckoning }[],
  packKg = Math.max(...trips.map(({ plan }) => plan.settings.packKgForEnergy)),
): Asked | null {
  const wanted = requirementOfAll(trips, packKg)
  if (!wanted) return null
  const missing = trips.map(({ plan }) => missingOf(plan))
  return {
    likelyLitres: Math.max(...trips.map(({ reckoning }) => reckoning.need.bodyLitres)),
    packKg,
    wanted,
    atLeast: {
      litres: missing.some(({ litres }) => litres.length > 0),
      mass: missing.some(({ mass }) => mass.length > 0),
    },
  }
}

/** The same in one line, only what is known: "46 L to be safe · frame · rated 17.0 kg". */
export function askedLine({ likelyLitres, wanted, atLeast }: Asked, { litresUp, kg }: Formats): string {
  const room = atLeast.litres
    ? `at least ${litresUp(likelyLitres)}`
    : `${litresUp(wanted.bodyLitresSafe)} to be safe`
  const frame = wanted.frame ? 'frame' : atLeast.mass ? '' : 'frame optional'
  return [room, frame, `rated ${atLeast.mass ? 'at least ' : ''}${kg(wanted.ratedKg)}`]
    .filter(Boolean)
    .join(' · ')
}

interface AskedRow {
  name: string
  figure: string
  note: string
}

export function requirementRows(
  { likelyLitres, packKg, wanted, atLeast }: Asked,
  formats: Formats,
): AskedRow[] {
  const { litresUp, kg, gear, cm } = formats
  const rows: (AskedRow | null)[] = [
    {
      name: 'Main body',
      ...(atLeast.litres
        ? {
            figure: `At least ${litresUp(likelyLitres)}`,
            note: ENOUGH_UNTOLD,
          }
        : {
            figure: litresUp(wanted.bodyLitresSafe),
            note: `is enough in about 9 of 10 cases; ${litresUp(likelyLitres)} expected.`,
          }),
    },
    {
      name: 'Rated load',
      figure: atLeast.mass ? `At least ${kg(wanted.ratedKg)}` : kg(wanted.ratedKg),
      note: `with a pack of ${gear(packKg)}; ${atLeast.mass ? 'at least ' : ''}${kg(wanted.contentsKg)} where the rating is for the contents alone.`,
    },
    {
      name: 'Frame',
      ...(wanted.frame
        ? { figure: 'Yes', note: 'the load is over the limit without one.' }
        : atLeast.mass
          ? { figure: 'Can’t tell yet', note: 'some items have no mass yet.' }
          : { figure: 'Optional', note: 'the load is under the limit without one.' }),
    },
    wanted.outsideLitres > 0
      ? {
          name: 'Pockets',
          figure: `${atLeast.litres ? 'At least ' : ''}${litresUp(wanted.outsideLitres)}`,
          note: 'for what is meant to go in them.',
        }
      : null,
    wanted.innerHeightCm === null
      ? null
      : { name: 'Height inside', figure: cm(wanted.innerHeightCm), note: 'for the longest rigid item.' },
    wanted.innerWidthCm === null
      ? null
      : { name: 'Width inside', figure: cm(wanted.innerWidthCm), note: 'for the widest rigid item.' },
  ]
  return rows.filter(row => row !== null)
}
