// What has been typed of a packing, as text; kept in the place the app remembers, so that it outlasts a reload and a
// look at another screen.

import { type Reading, readQuantity } from '../../components/fields'
import type { Said } from '../../plan/shelf'
import { type PackedWhen, packedLimits } from '../../report/confidence'
import type { System } from '../../units'

export interface FormText {
  /** The id of the trip it was typed for. */
  trip: string
  how: Said['how']
  when: PackedWhen
  /** The id of a pack of the trip; none: another pack. */
  pack: string
  body: string
  full: string
  over: string
  length: string
  width: string
  height: string
}

const EMPTY: FormText = {
  trip: '',
  how: 'full',
  when: 'start',
  pack: '',
  body: '',
  full: '',
  over: '',
  length: '',
  width: '',
  height: '',
}

const LONGEST = 200
const HOW = ['full', 'over', 'box'] as const

export function toDetail(form: FormText): string | null {
  const said = Object.entries(form).filter(([key, text]) => text !== EMPTY[key as keyof FormText])
  return said.some(([key]) => key !== 'trip') ? new URLSearchParams(said).toString() : null
}

/** Whatever a stored detail holds: what is no part of a packing, or of another trip’s, is passed over. */
export function fromDetail(detail: string | null, trip: string): FormText {
  const found = new URLSearchParams(detail ?? '')
  const stored = found.get('trip') === trip ? found : new URLSearchParams()
  const text = (key: keyof FormText) => (stored.get(key) ?? EMPTY[key]).slice(0, LONGEST)
  return {
    trip,
    how: HOW.find(how => how === text('how')) ?? 'full',
    when: text('when') === 'bare' ? 'bare' : 'start',
    pack: text('pack'),
    body: text('body'),
    full: text('full'),
    over: text('over'),
    length: text('length'),
    width: text('width'),
    height: text('height'),
  }
}

export interface ReadField {
  key: keyof FormText
  label: string
  kind: 'volume' | 'share' | 'length'
  text: string
  reading: Reading
}

const FIELDS = {
  body: { label: 'Main body', kind: 'volume', limit: packedLimits.bodyLitres },
  full: { label: 'How full', kind: 'share', limit: packedLimits.fullness },
  over: { label: 'Would not close by about', kind: 'volume', limit: packedLimits.overLitres },
  length: { label: 'Length of the box, inside', kind: 'length', limit: packedLimits.lengthCm },
  width: { label: 'Width of the box, inside', kind: 'length', limit: packedLimits.widthCm },
  height: { label: 'Height it reaches, pressed', kind: 'length', limit: packedLimits.heightCm },
} as const

export function readField(form: FormText, key: keyof typeof FIELDS, system: System): ReadField {
  const text = form[key]
  return { key, text, ...FIELDS[key], reading: readQuantity(text, { ...FIELDS[key], system }) }
}

const valueIn = ({ reading }: ReadField) => ('value' in reading ? reading.value : undefined)

/** What the form says, and in what; null while something of it is missing. */
export function readSaid(
  form: FormText,
  { packLitres, system }: { packLitres: number | undefined; system: System },
): { said: Said; bodyLitres: number } | null {
  const value = (key: keyof typeof FIELDS) => valueIn(readField(form, key, system))
  const bodyLitres = form.pack ? packLitres : value('body')
  if (form.how === 'box') {
    const [lengthCm, widthCm, heightCm] = [value('length'), value('width'), value('height')]
    if (lengthCm === undefined || widthCm === undefined || heightCm === undefined) return null
    // The box is measured itself.
    return { said: { how: 'box', lengthCm, widthCm, heightCm }, bodyLitres: 0 }
  }
  const amount = value(form.how)
  if (bodyLitres === undefined || amount === undefined) return null
  const said: Said =
    form.how === 'full' ? { how: 'full', fullness: amount } : { how: 'over', overLitres: amount }
  return { said, bodyLitres }
}
