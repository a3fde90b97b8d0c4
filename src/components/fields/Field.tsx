// A field of what is edited, by its path: its row among the fields says what it is, what it is called and what it may
// hold; who puts it on a screen says only what is otherwise there.

import { choicesOf, fieldOf } from '../../plan'
import { ChoiceField, type Option, SelectField, TextField, ToggleField, YesNoField } from './fields'
import { QuantityField } from './QuantityField'
import { useEdited } from './useField'

interface FieldProps {
  path: string
  /** Goes on after the label: ", for one night". */
  also?: string
  /** What counts while nothing is said, where it depends, and where that comes from ('': it is said elsewhere). */
  usual?: number | string | boolean | undefined
  usualFrom?: string | undefined
  hint?: string | undefined
  /** The choices on offer, in this order; all of them if none are named. */
  only?: readonly string[]
  /** Those of a text that can only be one of what is there. */
  options?: readonly Option[]
}

export function Field({ path, also = '', only, options, ...here }: FieldProps) {
  const { inTrip } = useEdited()
  const row = fieldOf(inTrip ? inTrip(path) : path)
  const { hint = row.hint } = here
  const usual = here.usual ?? (row.tacit ? undefined : row.usual)
  const said = typeof usual === 'string' ? usual : ''
  const all = { path, label: `${row.label ?? ''}${also}`, hint }
  if (options) return <SelectField {...all} options={options} usual={said} />
  if (row.as === 'amount') {
    const { kind, fine, origin, steps } = row
    const counts = typeof usual === 'number' ? usual : undefined
    const from = here.usualFrom ?? origin
    return <QuantityField {...all} {...{ kind, fine, steps }} limit={row} usual={counts} usualFrom={from} />
  }
  if (row.as === 'choice') {
    const Several = row.opens ? SelectField : ChoiceField
    return <Several {...all} options={choicesOf(row, only)} usual={said} />
  }
  if (row.as === 'truth')
    return typeof usual === 'boolean' ? <ToggleField {...all} usual={usual} /> : <YesNoField {...all} />
  return <TextField {...all} />
}
