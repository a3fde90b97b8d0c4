// One cell as the value of its field.

import { CAPS } from '../../plan'
import type { Unit } from '../../units'
import { readAmount } from './amount'
import { type CellRead, type Field, unitIn } from './catalogue'
import { choiceWords, chosenBy, truthOf } from './choices'
import type { Decimal } from './decimal'
import { lineOf, linesOf } from './texts'

interface Around {
  unit: Unit | null
  decimal: Decimal
}

/** Reads cells, the same one only once: in long tables few figures differ, and reading them is most of the work. */
export function cellReader<F extends string>(
  fields: Readonly<Record<F, Field>>,
): (text: string, name: F, around: Around) => CellRead {
  const read = new Map<string, CellRead>()
  return (text, name, around) => {
    const asked = `${name}\n${around.unit}\n${around.decimal}\n${text}`
    const known = read.get(asked) ?? readCell(text, { name, ...fields[name] }, around)
    if (text.length <= LONGEST_KEPT) read.set(asked, known)
    return known
  }
}

const LONGEST_KEPT = 20

/** Reads a cell that is not empty. `why` is half a sentence: no capital, no full stop. */
function readCell(text: string, field: Field & { name: string }, { unit, decimal }: Around): CellRead {
  const { name, reading, label } = field
  if (name === 'note') return { value: linesOf(text) }
  const line = lineOf(text)
  if (field.read) return field.read(line, decimal)
  switch (reading.as) {
    case 'text':
      return line.length > CAPS.nameLength
        ? { why: `it has ${line.length} characters: shorten it to ${CAPS.nameLength} or fewer` }
        : { value: line }
    case 'amount':
      return readAmount(
        line,
        { kind: reading.kind, limit: reading, unit: unit ?? unitIn(field, 'metric')! },
        decimal,
      )
    case 'choice': {
      const words = choiceWords(name, reading)
      const chosen = chosenBy(line, words)
      const known = Object.values(words).map(([first]) => first)
      return chosen === null ? { why: `write one of: ${known.join('; ')}` } : { value: chosen }
    }
    case 'truth': {
      // A mark of one's own in a column called so: "worn" under Worn.
      const truth = line.toLowerCase() === label.toLowerCase() ? true : truthOf(line)
      return truth === null ? { why: 'write yes or no' } : { value: truth }
    }
    case 'day':
      return isDay(line) ? { value: line } : { why: 'write the day as 2026-05-31' }
    default:
      return { value: line }
  }
}

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) &&
  !Number.isNaN(Date.parse(text)) &&
  new Date(text).toISOString().startsWith(text)
