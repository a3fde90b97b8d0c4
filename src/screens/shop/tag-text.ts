// What has been typed of a tag, as text, and what it says.

import { type Asked, askedFor, type Reading, readQuantity, textForm } from '../../components/fields'
import { type Amount, FIELDS, isWithin, mainBodyOf, readRating, type Tag } from '../../plan'
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

export const { toDetail, fromDetail } = textForm(EMPTY, {
  gives: ['body', 'total'],
  frame: ['framed', 'frameless'],
  covers: ['contents-and-pack', 'contents'],
  sealed: ['', 'yes'],
})

const { pack, setup } = FIELDS
const ask = ({ kind, fine, ...limit }: Amount, label: string): Asked => ({ kind, label, limit, fine })

/** What is asked of a tag, in words. */
export const ASKED = {
  body: ask(pack.bodyLitres, pack.bodyLitres.label),
  total: ask(pack.bodyLitres, 'Total'),
  pockets: ask(pack.outsideLitres, pack.outsideLitres.label),
  mass: ask(setup.massKg, 'Pack mass'),
  rated: ask(setup.ratedKg, setup.ratedKg.label),
  price: ask(pack.price, pack.price.label),
}

export interface ReadTag {
  tag: Tag
  /** How each field was understood. */
  reads: Record<keyof typeof ASKED, Reading>
  /** How the main body came about, or why it is not known, where the tag gives a total. */
  bodyNote: string | null
}

export function readTag(text: TagText, system: System): ReadTag {
  const read = (key: keyof typeof ASKED) => readQuantity(text[key], { ...ASKED[key], system })
  const reads: ReadTag['reads'] = {
    body: read('body'),
    total: read('total'),
    pockets: read('pockets'),
    mass: read('mass'),
    rated: ratedReading(text.rated, system),
    price: read('price'),
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
    const litres = Math.min(pack.bodyLitres.max, Math.max(pack.bodyLitres.min, body.litres))
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
  const { limit, label } = ASKED.rated
  const show = (kg: number) =>
    formatQuantity('mass', kg, { system, unit: system === 'us' ? 'lb' : 'kg', digits: 1 })
  if (!isWithin(read.kg, limit)) return { message: askedFor(label, limit, show) }
  if (read.range) {
    const { lowKg, highKg } = read.range
    return { value: lowKg, said: `From ${show(lowKg)} to ${show(highKg)}: the lower end counts.` }
  }
  return { value: read.kg, said: read.echo ? `= ${show(read.kg)}` : undefined }
}
