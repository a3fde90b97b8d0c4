// Ways to find a thing's litres at home: what to read off, and what the readings come to.
// The equations are those of equations/measuring.ts, which names their sources.

import {
  boxLitres,
  cylinderLitres,
  displacedLitres,
  filledBoxLitres,
  girthLitres,
  type Measured,
  measuringRanges,
  type Outcome,
  readingHalfWidths,
  softSqueeze,
} from '../../equations'
import type { Limit } from '../../plan'

type Key = 'lengthCm' | 'widthCm' | 'heightCm' | 'diameterCm' | 'girthCm' | 'riseLitres'
type Readings = Readonly<Record<string, number>>

export interface Reading {
  key: Key
  label: string
  kind: 'length' | 'volume'
  limit: Limit
}

export interface Method {
  id: string
  label: string
  /** How to do it, in a sentence. */
  how: string
  readings: Reading[]
  /** What the litres then count as. */
  litresFrom: 'dimensions' | 'filled'
  measure: (readings: Readings, thing: { soft: boolean }) => Outcome<Measured>
}

const reading = (key: Key, label: string): Reading => ({
  key,
  label,
  kind: key === 'riseLitres' ? 'volume' : 'length',
  limit: measuringRanges[key],
})

const tape = `Each reading is taken to be good to ± ${readingHalfWidths.tapeCm * 10} mm.`
const of = (readings: Readings) => readings as Record<Key, number>

export const methods: readonly Method[] = [
  {
    id: 'roll',
    label: 'Roll',
    how: `For a stuffed sack or a rolled mat: the tape once around it, and its length. ${tape} A soft roll adds ± ${softSqueeze * 100} % for how hard it is squeezed.`,
    readings: [reading('girthCm', 'Around it'), reading('lengthCm', 'Length')],
    litresFrom: 'dimensions',
    measure: (readings, { soft }) => girthLitres({ ...of(readings), squeezeShare: soft ? softSqueeze : 0 }),
  },
  {
    id: 'box',
    label: 'Box',
    how: `For a thing with corners, or one laid flat: its three sides. ${tape}`,
    readings: [reading('lengthCm', 'Length'), reading('widthCm', 'Width'), reading('heightCm', 'Height')],
    litresFrom: 'dimensions',
    measure: readings => boxLitres(of(readings)),
  },
  {
    id: 'cylinder',
    label: 'Cylinder',
    how: `For a hard round thing, as a pot or a bottle: across it, and its length. ${tape}`,
    readings: [reading('diameterCm', 'Across'), reading('lengthCm', 'Length')],
    litresFrom: 'dimensions',
    measure: readings => cylinderLitres(of(readings)),
  },
  {
    id: 'filled',
    label: 'Filled box',
    how: 'Lay it in a box, press it as in the pack, and read how high it stands. Base good to ± 3 mm, height to ± 10 mm.',
    readings: [
      reading('lengthCm', 'Length of the box, inside'),
      reading('widthCm', 'Width of the box, inside'),
      reading('heightCm', 'Height it reaches'),
    ],
    litresFrom: 'filled',
    measure: readings => filledBoxLitres(of(readings)),
  },
  {
    id: 'water',
    label: 'In water',
    how: `Push it under water in a tight bag with the air let out, and read by how many litres the water rises. Good to ± ${readingHalfWidths.riseLitres} L.`,
    readings: [reading('riseLitres', 'The water rises by')],
    litresFrom: 'filled',
    measure: readings => displacedLitres(of(readings)),
  },
]
