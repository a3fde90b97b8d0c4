// What each part of the help is given.

import type { Formats } from '../../report'
import type { Example } from '../../report/help'

export interface ContentsProps {
  example: Example
  formats: Formats
}
