// Several people on screen: each one's line, how fair it is, and what could hurt, as far as it is known.

import type { PartyPlan } from '../../plan'
import type { PartyReckoning } from '../../reckon'
import { listText } from '../../units'
import { belongsAtAnswer, type Caution } from '../caution'
import type { Formats } from '../formats'
import { type PartyCaution, partyCautions } from './cautions'
import { childrenFirst, fairnessLines, loadLine, nameIn } from './words'

export interface PartyTold {
  people: { id: string; name: string; load: string }[]
  /** Whether the limits of those under 18 are kept. */
  young: string[]
  /** How fair it is; empty where it was not shared out as things are. */
  fair: string[]
  /** What cannot be told, and what is missing for it. */
  unknown: string[]
  /** Who drinks and owns nothing that holds water; null: nobody. */
  bottles: string | null
  /** What stands beside the answer, and what waits behind it. */
  cautions: { first: Caution[]; others: Caution[] }
}

export interface Known {
  plan: PartyPlan
  party: PartyReckoning
  /** Ids of those whose body mass nobody has said. */
  withoutMass: readonly string[]
  /** What the search said of this very choice; null: things are carried otherwise than it found. */
  proof: PartyReckoning['split'] | null
}

export function partyTold({ plan, party, withoutMass, proof }: Known, formats: Formats): PartyTold {
  const isUnknown = (id: string) => withoutMass.includes(id)
  // Of whom nothing is known, no limit can be told.
  const known = {
    ...plan,
    people: plan.people.map(person => (isUnknown(person.id) ? { ...person, ageYears: null } : person)),
  }
  const names = plan.people.flatMap(({ id }, who) => (isUnknown(id) ? [nameIn(plan, who)] : []))
  const proven = proof && {
    ...party,
    split: { ...party.split, proven: proof.proven, boundStrain: proof.boundStrain },
  }
  const cautions = partyCautions(plan, party, formats).map(named)
  const drinking = plan.people.flatMap(({ id, waterShare }, who) =>
    waterShare > 0 && party.people[who]!.need.waterCarryLitres > 0 && !holdsWater(plan, id)
      ? [nameIn(plan, who)]
      : [],
  )
  return {
    people: party.people.map((person, who) => ({
      id: person.id,
      name: nameIn(plan, who),
      load: isUnknown(person.id)
        ? `${formats.kg(person.carriedKg)} ${person.pack ? 'with the pack' : 'without a pack'}; can’t tell if that is too much`
        : loadLine(plan, person, formats),
    })),
    young: childrenFirst(known, proven ?? party, formats, proven !== null),
    fair: proven ? [...fairnessLines(known, proven, formats), ...unevenLines(plan, proven, withoutMass)] : [],
    unknown:
      names.length > 0
        ? [
            `Can’t tell yet how much ${listText(names)} may carry: give the body mass. Until then everybody gets the same mass, and a child may get too much.`,
          ]
        : [],
    bottles:
      drinking.length > 0
        ? `No bottle yet for ${listText(drinking)}: all the water that is needed is counted as carried. Add bottles, or say whose they are.`
        : null,
    cautions: {
      first: cautions.filter(belongsAtAnswer),
      others: cautions.filter(caution => !belongsAtAnswer(caution)),
    },
  }
}

/** By more than this of a limit somebody has room. */
const ROOM = 0.05

/** The largest strain is made least, and no other: who else is over the limit while somebody has room is told. */
function unevenLines(plan: PartyPlan, { people }: PartyReckoning, withoutMass: readonly string[]): string[] {
  if (plan.split.by !== 'limit' || withoutMass.length > 0) return []
  const shares = people.map(({ limitShare }) => limitShare)
  const worst = shares.indexOf(Math.max(...shares))
  const least = shares.indexOf(Math.min(...shares))
  return shares.flatMap((share, who) =>
    who === worst || share <= 1 || share - shares[least]! <= ROOM
      ? []
      : [
          `${nameIn(plan, worst)} is strained most, and that is made as little as can be. ${nameIn(plan, who)} is over the limit too while ${nameIn(plan, least)} has room: give ${nameIn(plan, least)} more by hand.`,
        ],
  )
}

const holdsWater = ({ gear }: PartyPlan, id: string) =>
  gear.some(
    ({ owner, holdsWaterLitres, count, atHome }) => owner === id && !atHome && holdsWaterLitres * count > 0,
  )

/** With the name of whom it concerns; its figures are asked for where that one is shown. */
function named({ name, caution: { asks: _asks, ...caution } }: PartyCaution): Caution {
  return name === null ? caution : { ...caution, text: `${name}: ${caution.text}` }
}
