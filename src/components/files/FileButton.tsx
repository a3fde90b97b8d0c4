// The button that chooses a file, and hands it on.

import { plainlyNamed } from './plainly-named'

interface FileButtonProps {
  label: string
  /** The kinds the system's dialog offers, as `accept` has them. */
  accept: string
  /** One of several things to do, not the first. */
  quiet?: boolean
  onFile: (file: File) => void
}

export function FileButton({ label, accept, quiet = false, onFile }: FileButtonProps) {
  return (
    <label class={quiet ? 'quiet file' : 'file'}>
      {label}
      <input
        type="file"
        class="unseen"
        accept={accept}
        onChange={event => {
          const input = event.currentTarget
          const file = input.files?.[0]
          // Emptied, so that choosing the same file again is a change again.
          input.value = ''
          if (file) onFile(plainlyNamed(file))
        }}
      />
    </label>
  )
}
