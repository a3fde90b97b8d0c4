// What has been typed of a packing, as text, and what it says.

import { type Asked, type Reading, readQuantity, textForm } from '../../components/fields'
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

const FORM = textForm(EMPTY, { how: ['full', 'over', 'box'], when: ['start', 'bare'] })

/** Null where nothing is said but of which trip. */
export const toDetail = (form: FormText): string | null =>
  FORM.toDetail({ ...form, trip: EMPTY.trip }) && FORM.toDetail(form)

/** What was typed for another trip is passed over. */
export function fromDetail(detail: string | null, trip: string): FormText {
  const form = FORM.fromDetail(detail)
  return form.trip === trip ? form : { ...EMPTY, trip }
}

/** What is asked of a packing, in words. */
export const ASKED = {
  body: { label: 'Main body', kind: 'volume', limit: packedLimits.bodyLitres },
  full: { label: 'How full', kind: 'share', limit: packedLimits.fullness },
  over: { label: 'Would not close by about', kind: 'volume', limit: packedLimits.overLitres },
  length: { label: 'Length of the box, inside', kind: 'length', limit: packedLimits.lengthCm },
  width: { label: 'Width of the box, inside', kind: 'length', limit: packedLimits.widthCm },
  height: { label: 'Height it reaches, pressed', kind: 'length', limit: packedLimits.heightCm },
} as const satisfies Record<string, Asked>
type Key = keyof typeof ASKED

export const readField = (form: FormText, key: Key, system: System): Reading =>
  readQuantity(form[key], { ...ASKED[key], system })

/** What the form says, and in what; null while something of it is missing. */
export function readSaid(
  form: FormText,
  { packLitres, system }: { packLitres: number | undefined; system: System },
): { said: Said; bodyLitres: number } | null {
  const value = (key: Key) => {
    const reading = readField(form, key, system)
    return 'value' in reading ? reading.value : undefined
  }
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
