// A thing by its name and what is asked or said of it: one tap leads to its field.

import { toField } from './focus-field'

interface ToFieldProps {
  name: string
  path: string
  says: string
}

export function ToField({ name, path, says }: ToFieldProps) {
  return (
    <button type="button" class="quiet" onClick={() => toField(path)}>
      <bdi class="name">{name}</bdi> <span class="facts-line">{says}</span>
    </button>
  )
}
