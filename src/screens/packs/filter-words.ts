// The filters that are on, in words, each with what takes it away. Those that a count on top shows are not among them.

import { AS_LISTED, BOUND_NAMES, BOUNDS, type View } from './view'

export interface FilterWord {
  words: string
  off: Partial<View>
}

export function filterWords(view: View): FilterWord[] {
  const { sought, fabric, frame, sealed, has, aside, tag, texts } = view
  const word = (isOn: boolean, words: string, off: Partial<View>) => (isOn ? [{ words, off }] : [])
  return [
    ...word(sought.trim() !== '', `“${sought.trim()}”`, { sought: '' }),
    ...word(frame !== null, frame === 'framed' ? 'with a frame' : 'without a frame', { frame: null }),
    ...word(sealed, 'waterproof', { sealed: false }),
    ...word(fabric.trim() !== '', `fabric ${fabric.trim()}`, { fabric: '' }),
    ...word(has === 'wanted', 'wanted', { has: null }),
    ...word(aside, 'set aside', { aside: false }),
    ...word(tag !== null, `tag ${tag}`, { tag: null }),
    ...BOUND_NAMES.flatMap(name =>
      word(texts[name].trim() !== '', `${BOUNDS[name].short} ${texts[name].trim()}`, {
        texts: { ...texts, [name]: '' },
      }),
    ),
  ]
}

/** All filters off; the order stays. */
export const allShown = ({ order, mixed }: View): View => ({ ...AS_LISTED, order, mixed })
