// The least that any program must do for the figures: walk its input once, in flat rows of numbers, with nothing told of
// how sure they are, of energy, reach or verdicts. One floor walks every item, the other the items already added up.

import { type Figures, STREAMS, type Told } from './figures'

/** Sums over the items for one unit of each stream, left and used by turns. */
export interface Groups {
  kg: Float64Array
  rigidLitres: Float64Array
  softLitres: Float64Array
  /** Of each container in turn. */
  insideLitres: Float64Array
}

const WAYS = 2 * STREAMS.length

export function groupsOf({ rows, roomLitres }: Told): Groups {
  const kg = new Float64Array(WAYS)
  const rigidLitres = new Float64Array(WAYS)
  const softLitres = new Float64Array(WAYS)
  const insideLitres = new Float64Array(WAYS * roomLitres.length)
  for (const row of rows) {
    const left = 2 * row.stream
    const used = left + 1
    const mass = row.massKg * row.count
    kg[left]! += mass
    kg[used]! += mass * row.leaves
    rigidLitres[left]! += row.rigidLitres
    rigidLitres[used]! += row.rigidLitres * row.leaves
    softLitres[left]! += row.softLitres
    softLitres[used]! += row.softLitres * row.leaves
    if (row.container < 0) continue
    insideLitres[WAYS * row.container + left]! += row.insideLitres
    insideLitres[WAYS * row.container + used]! += row.insideLitres * row.leaves
  }
  return { kg, rigidLitres, softLitres, insideLitres }
}

/** Another mass for one of the rows, in the row and in the sums that it is part of. */
export function changeMass({ kg }: Groups, row: Told['rows'][number], massKg: number) {
  const more = (massKg - row.massKg) * row.count
  kg[2 * row.stream]! += more
  kg[2 * row.stream + 1]! += more * row.leaves
  row.massKg = massKg
}

/** The figures from the sums: each moment and each set-up once. */
export function walkGroups(groups: Groups, told: Told): Figures {
  const { moments, setups, perRigidLitre, perSoftLitre } = told
  const loadKg: number[] = []
  const bodyLitres: number[] = []
  let mostKg = 0
  let mostLitres = 0
  for (const { units, waterKg, waterSoftLitres, wantedKg } of moments) {
    let kg = waterKg
    let rigid = 0
    let soft = waterSoftLitres + overflow(groups, told, units)
    for (let way = 0; way < WAYS; way++) {
      const n = units[way]!
      kg += n * groups.kg[way]!
      rigid += n * groups.rigidLitres[way]!
      soft += n * groups.softLitres[way]!
    }
    const litres = Math.max(
      rigid * perRigidLitre[0] + soft * perSoftLitre[0],
      rigid * perRigidLitre[1] + soft * perSoftLitre[1],
    )
    loadKg.push(kg)
    bodyLitres.push(litres)
    mostKg = Math.max(mostKg, kg + wantedKg)
    mostLitres = Math.max(mostLitres, litres)
  }
  return {
    loadKg,
    bodyLitres,
    carriedKg: setups.map(({ massKg, linerKg }) => mostKg + linerKg + massKg),
    marginLitres: setups.map(setup => setup.bodyLitres - mostLitres),
  }
}

function overflow({ insideLitres }: Groups, { roomLitres }: Told, units: number[]): number {
  let over = 0
  for (let box = 0; box < roomLitres.length; box++) {
    let inside = 0
    for (let way = 0; way < WAYS; way++) inside += units[way]! * insideLitres[WAYS * box + way]!
    if (inside > roomLitres[box]!) over += inside - roomLitres[box]!
  }
  return over
}
