// Ways to find a thing's litres at home: what to read off, and what the readings come to.
// The equations are those of equations/measuring.ts, which names their sources.

import {
  boxLitres,
  cylinderLitres,
  displacedLitres,
  filledBoxLitres,
  girthLitres,
  type Measured,
  type MeasuredMat,
  matLitres,
  matRanges,
  matReadings,
  measuringRanges,
  type Outcome,
  readingHalfWidths,
  softSqueeze,
} from '../../equations'
import type { Item, Limit } from '../../plan'

type Key =
  | 'lengthCm'
  | 'widthCm'
  | 'heightCm'
  | 'diameterCm'
  | 'girthCm'
  | 'riseLitres'
  | 'thicknessCm'
  | 'coreCm'
type Readings = Readonly<Record<string, number>>

export interface Reading {
  key: Key
  label: string
  kind: 'length' | 'volume'
  limit: Limit
  /** What counts while it is left empty. */
  usual?: number
}

export interface Method {
  id: string
  label: string
  /** How to do it, in a sentence. */
  how: string
  readings: Reading[]
  /** What the litres then count as. */
  litresFrom: 'dimensions' | 'filled'
  measure: (readings: Readings, thing: { soft: boolean }) => Outcome<Measured & Partial<MeasuredMat>>
  /** The sizes it gives a rigid thing, by which it is told how the thing goes into a pack. */
  sizes?: (readings: Readings) => Sizes
}

type Sizes = Partial<Pick<Item, 'lengthCm' | 'diameterCm' | 'widthCm' | 'depthCm'>>

const reading = (key: keyof typeof measuringRanges & Key, label: string): Reading => ({
  key,
  label,
  kind: key === 'riseLitres' ? 'volume' : 'length',
  limit: measuringRanges[key],
})

const matReading = (key: keyof typeof matRanges & Key, label: string): Reading => ({
  key,
  label,
  kind: 'length',
  limit: matRanges[key],
})

const tape = `Each reading is taken to be good to ± ${readingHalfWidths.tapeCm * 10} mm.`
const of = (readings: Readings) => readings as Record<Key, number>

export const methods: readonly Method[] = [
  {
    id: 'roll',
    label: 'Roll',
    how: `For a stuffed sack or anything rolled up: the tape once around it, and its length. ${tape} A soft roll adds ± ${softSqueeze * 100} % for how hard it is squeezed.`,
    readings: [reading('girthCm', 'Around it'), reading('lengthCm', 'Length')],
    litresFrom: 'dimensions',
    measure: (readings, { soft }) => girthLitres({ ...of(readings), squeezeShare: soft ? softSqueeze : 0 }),
  },
  {
    id: 'box',
    label: 'Box',
    how: `For an item with corners, or one laid flat: its three sides. ${tape}`,
    readings: [reading('lengthCm', 'Length'), reading('widthCm', 'Width'), reading('heightCm', 'Height')],
    litresFrom: 'dimensions',
    measure: readings => boxLitres(of(readings)),
    sizes: readings => {
      const { lengthCm, widthCm, heightCm: depthCm } = of(readings)
      return { lengthCm, widthCm, depthCm }
    },
  },
  {
    id: 'cylinder',
    label: 'Cylinder',
    how: `For a hard round item, as a pot or a bottle: across it, and its length. ${tape}`,
    readings: [reading('diameterCm', 'Across'), reading('lengthCm', 'Length')],
    litresFrom: 'dimensions',
    measure: readings => cylinderLitres(of(readings)),
    sizes: readings => {
      const { lengthCm, diameterCm } = of(readings)
      return { lengthCm, diameterCm }
    },
  },
  {
    id: 'mat',
    label: 'Mat, laid out',
    how: `For a mat that is to be rolled, with the air let out: its sides laid out flat. Length and width good to ± ${readingHalfWidths.tapeCm * 10} mm, thickness to ± ${matReadings.thicknessHalfWidthCm * 10} mm. A soft one adds ± ${softSqueeze * 100} % for how tightly it is rolled.`,
    readings: [
      matReading('lengthCm', 'Length'),
      matReading('widthCm', 'Width'),
      matReading('thicknessCm', 'Thickness'),
      { ...matReading('coreCm', 'Open middle of the roll'), usual: matReadings.coreCm },
    ],
    litresFrom: 'dimensions',
    measure: (readings, { soft }) => matLitres({ ...of(readings), squeezeShare: soft ? softSqueeze : 0 }),
  },
  {
    id: 'filled',
    label: 'Filled box',
    how: 'Lay it in a box and press it as in the pack. Read how high it stands. Base good to ± 3 mm, height to ± 10 mm.',
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
    how: `Push it under water in a tight bag without air. Read by how many litres the water rises. Good to ± ${readingHalfWidths.riseLitres} L.`,
    readings: [reading('riseLitres', 'The water rises by')],
    litresFrom: 'filled',
    measure: readings => displacedLitres(of(readings)),
  },
]
