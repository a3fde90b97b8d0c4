import { type Formats, formatsIn } from '../../report'
import { useSystem } from './useField'

/** How figures are written in the units the hiker reads. */
export const useFormats = (): Formats => formatsIn(useSystem())
