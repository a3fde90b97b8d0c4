// A quantity that belongs to no trip: the text stays with whoever asked for it, read as it is typed, and told what is
// wrong with it only once the field is left.

import { useState } from 'preact/hooks'
import { QuantityInput, type Reading } from './QuantityInput'

interface LooseProps {
  label: string
  unit?: string | undefined
  text: string
  reading: Reading
  onText: (text: string) => void
  hint?: string | undefined
  /** Over the whole width, where it may have a lot to say. */
  wide?: boolean
}

export function LooseField(props: LooseProps) {
  const [isEditing, setEditing] = useState(false)
  return <QuantityInput {...props} isEditing={isEditing} onEditing={setEditing} />
}
