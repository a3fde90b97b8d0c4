// A thing by its name and what is asked or said of it: one tap leads to its field.

import { focusField, type Go } from './focus-field'

interface ToFieldProps {
  name: string
  path: string
  says: string
  onGo: Go
}

export function ToField({ name, path, says, onGo }: ToFieldProps) {
  return (
    <button
      type="button"
      class="quiet"
      onClick={() => {
        onGo(path)
        focusField(path)
      }}
    >
      <bdi class="name">{name}</bdi> <span class="facts-line">{says}</span>
    </button>
  )
}
