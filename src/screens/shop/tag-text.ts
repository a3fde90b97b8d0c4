// What has been typed of a tag, as text; kept in the place the app remembers, so that it outlasts a reload and a look
// at another screen.

import { type Reading, readQuantity } from '../../components/fields'
import { LIMITS, mainBodyOf, readRating, type Tag } from '../../plan'
import { formatQuantity, type System } from '../../units'

export interface TagText {
  gives: 'body' | 'total'
  body: string
  total: string
  pockets: string
  mass: string
  rated: string
  frame: 'framed' | 'frameless'
  covers: 'contents-and-pack' | 'contents'
  sealed: '' | 'yes'
  price: string
  name: string
}

const EMPTY: TagText = {
  gives: 'body',
  body: '',
  total: '',
  pockets: '',
  mass: '',
  rated: '',
  frame: 'framed',
  covers: 'contents-and-pack',
  sealed: '',
  price: '',
  name: '',
}

const LONGEST = 200

export function toDetail(tag: TagText): string | null {
  const said = Object.entries(tag).filter(([key, text]) => text !== EMPTY[key as keyof TagText])
  return said.length ? new URLSearchParams(said).toString() : null
}

/** Whatever a stored detail holds: what is no part of a tag is passed over. */
export function fromDetail(detail: string | null): TagText {
  const stored = new URLSearchParams(detail ?? '')
  const text = (key: keyof TagText) => (stored.get(key) ?? EMPTY[key]).slice(0, LONGEST)
  return {
    gives: text('gives') === 'total' ? 'total' : 'body',
    body: text('body'),
    total: text('total'),
    pockets: text('pockets'),
    mass: text('mass'),
    rated: text('rated'),
    frame: text('frame') === 'frameless' ? 'frameless' : 'framed',
    covers: text('covers') === 'contents' ? 'contents' : 'contents-and-pack',
    sealed: text('sealed') === 'yes' ? 'yes' : '',
    price: text('price'),
    name: text('name'),
  }
}

export interface ReadTag {
  tag: Tag
  /** How each field was understood. */
  reads: Record<'body' | 'total' | 'pockets' | 'mass' | 'rated' | 'price', Reading>
  /** How the main body came about, or why it is not known, where the tag gives a total. */
  bodyNote: string | null
}

export function readTag(text: TagText, system: System): ReadTag {
  const { pack, setup } = LIMITS
  const litres = { kind: 'volume', limit: pack.bodyLitres, system } as const
  const reads: ReadTag['reads'] = {
    body: readQuantity(text.body, { ...litres, label: 'Main body' }),
    total: readQuantity(text.total, { ...litres, label: 'Total' }),
    pockets: readQuantity(text.pockets, { ...litres, label: 'Pockets', limit: pack.outsideLitres }),
    mass: readQuantity(text.mass, {
      kind: 'mass',
      label: 'Pack mass',
      limit: setup.massKg,
      system,
      fine: true,
    }),
    rated: ratedReading(text.rated, system),
    price: readQuantity(text.price, { kind: 'money', label: 'Price', limit: pack.price, system }),
  }
  const of = (reading: Reading) => ('value' in reading ? reading.value : undefined)
  const { litres: fromTotal, note } = bodyFromTotal(of(reads.total), of(reads.pockets), system)
  const byTotal = text.gives === 'total'
  const tag: Tag = {
    name: text.name.trim() || undefined,
    bodyLitres: byTotal ? fromTotal : of(reads.body),
    outsideLitres: of(reads.pockets),
    massKg: of(reads.mass),
    ratedKg: of(reads.rated),
    frame: text.frame,
    ratingCovers: text.covers,
    sealed: text.sealed === 'yes',
    price: of(reads.price),
  }
  return { tag, reads, bodyNote: byTotal ? note : null }
}

function bodyFromTotal(total: number | undefined, pockets: number | undefined, system: System) {
  const show = (amount: number) => formatQuantity('volume', amount, { system, unit: 'L' })
  const body = mainBodyOf(total, pockets)
  if (body.ok) {
    const litres = Math.min(LIMITS.pack.bodyLitres.max, Math.max(LIMITS.pack.bodyLitres.min, body.litres))
    return { litres, note: `Main body: ${show(total!)} − ${show(pockets!)} = ${show(body.litres)}.` }
  }
  const notes = {
    'no-total': null,
    'no-pockets':
      'What the pockets hold is missing: without it the main body is not known. No pockets: write 0.',
    'pockets-too-large': `The pockets, ${show(pockets ?? 0)}, leave nothing of a total of ${show(total ?? 0)}.`,
  }
  return { litres: undefined, note: notes[body.reason] }
}

/** A range counts with its lower end, and says so. */
function ratedReading(text: string, system: System): Reading {
  const read = readRating(text, system)
  if (!read.ok) return { message: read.message }
  if (read.kg === undefined) return { value: undefined }
  const { min, max } = LIMITS.setup.ratedKg
  const show = (kg: number) =>
    formatQuantity('mass', kg, { system, unit: system === 'us' ? 'lb' : 'kg', digits: 1 })
  if (read.kg < min || read.kg > max)
    return { message: `Rated load: write an amount from ${show(min)} to ${show(max)}.` }
  if (read.range) {
    const { lowKg, highKg } = read.range
    return { value: lowKg, said: `From ${show(lowKg)} to ${show(highKg)}: the lower end counts.` }
  }
  return { value: read.kg, said: read.echo ? `= ${show(read.kg)}` : undefined }
}
