// What to ask for in a shop: the requirement of one trip or of several, as rows of a name, a figure and a word on it.

import type { Plan } from '../../plan'
import { type Reckoning, type Requirement, requirementOf } from '../../reckon'
import type { Shown } from '../shown'

export interface Asked {
  /** Main body in about half of all cases enough. */
  likelyLitres: number
  packKg: number
  wanted: Requirement
}

/** What a trip asks of a pack that weighs `packKg`; without one, of a pack as heavy as the plan takes it for energy. */
export function askedByTrip(plan: Plan, reckoning: Reckoning, packKg = plan.settings.packKgForEnergy): Asked {
  return { likelyLitres: reckoning.need.bodyLitres, packKg, wanted: requirementOf(plan, reckoning, packKg) }
}

/** The same asked of a pack of another mass; whether it takes a frame stays as it was. */
export function askedWithPack(asked: Asked, packKg: number): Asked {
  const { wanted } = asked
  return { ...asked, packKg, wanted: { ...wanted, ratedKg: wanted.contentsKg + packKg } }
}

interface AskedRow {
  name: string
  figure: string
  note: string
}

export function requirementRows({ likelyLitres, packKg, wanted }: Asked, shown: Shown): AskedRow[] {
  const { litresUp, kg, gear, cm } = shown
  const rows: (AskedRow | null)[] = [
    {
      name: 'Main body',
      figure: litresUp(wanted.bodyLitresSafe),
      note: `is enough in about 9 of 10 cases; ${litresUp(likelyLitres)} is likely.`,
    },
    {
      name: 'Rated load',
      figure: kg(wanted.ratedKg),
      note: `with a pack of ${gear(packKg)}; ${kg(wanted.contentsKg)} where the rating is for the contents alone.`,
    },
    {
      name: 'Frame',
      figure: wanted.frame ? 'Yes' : 'Not needed',
      note: wanted.frame
        ? 'it is more than your ceiling without one.'
        : 'it stays under your ceiling without one.',
    },
    wanted.outsideLitres > 0
      ? {
          name: 'Pockets',
          figure: litresUp(wanted.outsideLitres),
          note: 'for what is meant to ride in them.',
        }
      : null,
    wanted.innerHeightCm === null
      ? null
      : { name: 'Height inside', figure: cm(wanted.innerHeightCm), note: 'for the longest rigid thing.' },
    wanted.innerWidthCm === null
      ? null
      : { name: 'Width inside', figure: cm(wanted.innerWidthCm), note: 'for the widest rigid thing.' },
  ]
  return rows.filter(row => row !== null)
}
